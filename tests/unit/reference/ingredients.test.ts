import { describe, expect, it } from 'vitest';
import { allergenIds, dietIds } from '../../../shared/event';
import { dimensionOf, unitIds, type UnitId } from '../../../shared/measure';
import table from '../../../shared/reference/ingredients.json';
import { ingredient, ingredients, sections, sourceTitle, type Ingredient } from '../../../shared/reference';

const isUnit = (u: string): u is UnitId => unitIds.some((x) => x === u);
const dimension = (u: string) => (isUnit(u) ? dimensionOf(u) : 'no unit');
const statuses = ['seen', 'seen (secondary)', 'derived', 'from memory', 'common practice, no source', 'definition'];
/** Ids of the ingredients for which something is wrong. */
const wrong = (test: (i: Ingredient) => boolean) => ingredients.filter(test).map((i) => i.id);
const lacking = ({ f }: { readonly f: Readonly<Record<'low' | 'value' | 'high', number> & Record<'status' | 'source', string>> }) =>
  [f.low, f.value, f.high].some((n) => !Number.isFinite(n)) || f.status === '' || f.source === '';
const figuresOf = (i: Ingredient) => Object.values(i.figures);

describe('the ingredient table', () => {
  it('has at least 180 ingredients with unique kebab-case ids and names', () => {
    expect(ingredients.length).toBeGreaterThanOrEqual(180);
    expect(new Set(ingredients.map((i) => i.id)).size).toBe(ingredients.length);
    expect(new Set(ingredients.map((i) => i.name)).size).toBe(ingredients.length);
    expect(wrong((i) => !/^[a-z]+(-[a-z]+)*$/.test(i.id))).toEqual([]);
  });

  it('uses known sections, allergens and diets', () => {
    expect(wrong((i) => !sections.some((s) => s.id === i.section))).toEqual([]);
    expect(wrong((i) => i.allergens.some((a) => !allergenIds.some((x) => x === a)))).toEqual([]);
    expect(wrong((i) => i.against.some((d) => !dietIds.some((x) => x === d)))).toEqual([]);
  });

  it('has at least 100 ingredients with a figure seen in or derived from a named table', () => {
    const published = ingredients.filter((i) => figuresOf(i).some((f) => ['seen', 'seen (secondary)', 'derived'].includes(f.status)));
    expect(published.length).toBeGreaterThanOrEqual(100);
  });

  it('writes low, typical and high, a status and a source into every figure of the file', () => {
    const rows = table.ingredients.flatMap((i) => i.figures.map((f) => ({ what: `${i.id}/${f.of}`, f })));
    expect(rows.length).toBeGreaterThan(700);
    expect(rows.filter(lacking).map((r) => r.what)).toEqual([]);
    // The rule finds a row without: one in which the range or the source was left out.
    expect(lacking({ f: { low: Number.NaN, value: 1, high: 2, status: 'seen', source: 'SR26' } })).toBe(true);
    expect(lacking({ f: { low: 1, value: 1, high: 2, status: 'seen', source: '' } })).toBe(true);
  });

  it('says of every range whether it is printed or a habit of the kitchen', () => {
    expect(wrong((i) => figuresOf(i).some((f) => f.spread !== 'printed' && f.spread !== 'habit'))).toEqual([]);
    expect(wrong((i) => figuresOf(i).some((f) => f.spread === 'printed' && (f.source === 'common-practice' || f.source === 'from-memory')))).toEqual([]);
  });

  it('keeps the other tables where they disagree, and says why one was chosen', () => {
    const disputed = ingredients.flatMap((i) => figuresOf(i).filter((f) => f.other.length > 0).map((f) => ({ id: i.id, f })));
    expect(disputed.length).toBeGreaterThanOrEqual(40);
    expect(disputed.filter(({ f }) => f.note === undefined || f.note.length < 20).map((d) => d.id)).toEqual([]);
    expect(disputed.flatMap(({ f }) => f.other).filter((o) => sourceTitle(o.source) === undefined || !statuses.includes(o.status))).toEqual([]);
    // A figure outside the range must belong to another state of the food, which is named.
    const outside = disputed.filter(({ f }) => f.other.some((o) => o.value < f.low || o.value > f.high));
    expect(outside.filter(({ f }) => f.conditions === undefined).map((d) => d.id)).toEqual([]);
    expect(ingredient('cauliflower')?.figures.ep?.other.map((o) => o.value).sort()).toEqual([39, 83.3]); // whole head with leaves; trimmed and cored
  });

  it('tells bunches from bags', () => {
    expect(ingredient('spinach')?.figures.ep?.conditions).toMatch(/bunch/);
    expect(ingredient('spinach-bagged')?.epPercent).toBe(97);
  });

  it('says for what state of the food a cooked weight holds', () => {
    const cooked = ingredients.filter((i) => i.figures.cooked !== undefined && i.figures.cooked.source !== 'common-practice');
    expect(cooked.length).toBeGreaterThanOrEqual(10);
    expect(['basmati-rice', 'brown-rice', 'chickpeas-dry', 'brown-lentils', 'black-gram', 'kidney-beans-dry', 'spinach', 'potato'].filter((id) => ingredient(id)?.figures.cooked?.conditions === undefined)).toEqual([]);
  });

  it('has positive figures inside their ranges', () => {
    expect(wrong((i) => figuresOf(i).some((f) => !(f.value > 0) || f.value < f.low || f.value > f.high))).toEqual([]);
    expect(wrong((i) => i.epPercent <= 0 || i.epPercent > 100)).toEqual([]);
  });

  it('names a status and a known source for every figure', () => {
    expect(wrong((i) => figuresOf(i).some((f) => !statuses.includes(f.status)))).toEqual([]);
    expect(wrong((i) => figuresOf(i).some((f) => sourceTitle(f.source) === undefined))).toEqual([]);
  });

  it('never dresses memory or habit up as a published figure', () => {
    expect(wrong((i) => figuresOf(i).some((f) => (f.status === 'from memory') !== (f.source === 'from-memory')))).toEqual([]);
    expect(wrong((i) => figuresOf(i).some((f) => (f.status === 'common practice, no source') !== (f.source === 'common-practice')))).toEqual([]);
  });

  it.each(['metric', 'us'] as const)('sells everything but tap water in %s packs of the unit it is bought in', (side) => {
    expect(wrong((i) => (i.packs[side].length === 0) !== (i.section === 'tap'))).toEqual([]);
    expect(wrong((i) => !isUnit(i.buyUnit[side]))).toEqual([]);
    expect(wrong((i) => i.packs[side].some((p) => !(Number(p.amount) > 0) || dimension(p.unit) !== dimension(i.buyUnit[side])))).toEqual([]);
    expect(wrong((i) => dimension(i.buyUnit[side]) === 'count' && i.packs[side].some((p) => p.unit !== i.buyUnit[side]))).toEqual([]);
  });

  it('knows the mass of what is bought by the piece, the bunch or the litre', () => {
    expect(wrong((i) => i.buyUnit.metric === 'piece' && i.gramsPer.piece === undefined)).toEqual([]);
    expect(wrong((i) => i.buyUnit.metric === 'bunch' && i.gramsPer.bunch === undefined)).toEqual([]);
    expect(wrong((i) => dimension(i.buyUnit.metric) === 'volume' && i.gramsPerMl === null)).toEqual([]);
  });

  it('holds known values', () => {
    expect(ingredient('chickpea-flour')?.gramsPerMl).toBe(0.389); // USDA SR26, NDB 16157
    expect(ingredient('spinach')?.epPercent).toBe(72); // USDA SR26, NDB 11457
    expect(ingredient('basmati-rice')?.cookedFactor).toBe(2.8); // USDA SR26, water balance
    expect(ingredient('garlic')?.gramsPer.clove).toBe(3); // USDA SR26, NDB 11215
    expect(ingredient('water')?.gramsPerMl).toBe(1);
    expect(ingredient('no-such-food')).toBeUndefined();
  });

  it('knows what breaks a diet', () => {
    expect(ingredient('sesame-seed')?.allergens).toEqual(['sesame']);
    expect(ingredient('wheat-flour-whole')?.against).toEqual(['glutenFree']);
    expect(ingredient('milk-whole')?.against).toEqual(['vegan', 'lactoseFree']);
    expect(ingredient('spring-onion')?.against).toEqual(['noOnionGarlic']);
    expect(ingredient('pearl-barley')?.allergens).toEqual(['gluten']);
    // Ready mixes that usually hold onion or garlic are closed to those who avoid them; the label may open them.
    for (const id of ['stock-powder', 'ketchup', 'chilli-blend', 'garlic-powder', 'leek', 'shallot', 'chives']) expect(ingredient(id)?.against).toContain('noOnionGarlic');
  });

  it('never lets an allergen and its diet come apart', () => {
    // A wheat, barley or oat row with only one of the two would let a dish through.
    expect(wrong((i) => i.allergens.includes('gluten') !== i.against.includes('glutenFree'))).toEqual([]);
    expect(wrong((i) => i.allergens.some((a) => a === 'milk' || a === 'eggs' || a === 'fish') && !i.against.includes('vegan'))).toEqual([]);
    expect(wrong((i) => i.against.includes('vegetarian') && !i.against.includes('vegan'))).toEqual([]);
    expect(wrong((i) => i.allergens.some((a) => a === 'nuts' || a === 'peanuts') && !i.against.includes('nutFree'))).toEqual([]);
  });
});
