import { readFileSync } from 'node:fs';
import { assert, constantFrom, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeSchema, type Recipe } from '../../../shared/event';
import { recompute, type Figure } from '../../../shared/figure';
import { parseShelf } from '../../../shared/household';
import { massBalance, ratioRows, usualBase, weightOf } from '../../../shared/menu';
import { ingredient, sourceTitle } from '../../../shared/reference';
import { opened, unused } from '../plan/workings';

const shelf = ((): readonly Recipe[] => {
  const read = parseShelf(readFileSync('assets/app/shelf/starter.brimful-shelf', 'utf8'));
  if (!read.ok) throw new Error('expected the starter shelf');
  return read.shelf.recipes;
})();
const recipe = (made: object, lines: readonly (readonly [string, string, string])[], more: object = {}): Recipe =>
  recipeSchema.parse({ id: 'r', name: 'R', role: 'plain', yield: { amount: made, portions: 4 }, ingredients: lines.map(([food, amount, unit]) => ({ ingredient: food, amount: { amount, unit } })), ...more });
const onions = (amount: string, unit: string, grams: number): Recipe => recipe({ amount, unit }, [['onion', String(grams), 'g']]);
const beans = (kg: number): string => massBalance(recipe({ amount: String(kg), unit: 'kg' }, [['kidney-beans-dry', '1', 'kg']], { role: 'pulse' })).verdict;
const figuresOf = (one: Recipe): Figure[] => {
  const { inside, promised } = massBalance(one);
  return [inside, ...(promised === null ? [] : [promised]), ...ratioRows(one, usualBase(one)).flatMap((row) => [row.grams, row.percent].filter((x) => x !== null))];
};

describe('the mass balance', () => {
  it('says when the yield promises more than goes in, or much less', () => {
    const more = massBalance(onions('3.1', 'kg', 2400));
    expect([more.verdict, more.inside.value, more.promised?.value]).toEqual(['more', 2400, 3100]);
    expect(massBalance(onions('2.5', 'kg', 2400)).verdict).toBe('fits');
    expect(massBalance(onions('1', 'kg', 2400)).verdict).toBe('less');
    expect(massBalance(onions('2.4', 'L', 2400)).verdict).toBe('fits');
    expect(massBalance(onions('12', 'piece', 2400))).toMatchObject({ verdict: 'unknown', promised: null });
  });

  it('weighs fried pieces by their batter', () => {
    const fried = recipe({ amount: '40', unit: 'piece' }, [['chickpea-flour', '1', 'kg']], { role: 'friedSnack', frying: { pieceBatterG: 25, fryMinutes: 4 } });
    expect(massBalance(fried)).toMatchObject({ verdict: 'fits' });
    expect(massBalance(fried).promised?.value).toBe(1000);
  });

  it('says nothing of more while something cannot be weighed', () => {
    expect(massBalance(recipe({ amount: '9', unit: 'kg' }, [['onion', '100', 'g'], ['moon-root', '2', 'piece']]))).toMatchObject({ verdict: 'fits', unweighed: ['moon-root'] });
    expect(massBalance(recipe({ amount: '9', unit: 'kg' }, [['moon-root', '2', 'piece']]))).toMatchObject({ verdict: 'unknown' });
  });

  it('weighs what the table does not know when it is given by weight', () => {
    expect(weightOf({ ingredient: 'moon-root', amount: { amount: '1', unit: 'lb' } })?.toString()).toBe('453.59237');
    expect(weightOf({ ingredient: 'moon-root', amount: { amount: '1', unit: 'cup' } })).toBeNull();
  });

  it('lets dry beans take up water, and no more than they do', () => {
    const most = ingredient('kidney-beans-dry')?.cookedFactor ?? 0;
    expect(most).toBeGreaterThan(1.5);
    expect([beans(1), beans(most), beans(Number((most * 1.2).toFixed(3)))]).toEqual(['fits', 'swells', 'more']);
  });

  it('has no complaint that a recipe of the starter shelf makes more than goes in', () => {
    expect(shelf.filter((one) => massBalance(one).verdict === 'more').map((one) => one.id)).toEqual([]);
  });
});

describe('the ratio', () => {
  it('tells every ingredient in percent of the base by weight', () => {
    const fritters = shelf.find((one) => one.id === 'greens-fritters');
    if (fritters === undefined) throw new Error('expected the fritters');
    expect(usualBase(fritters)).toBe('chickpea-flour');
    const rows = ratioRows(fritters, 'chickpea-flour');
    expect(rows.find((row) => row.ingredient === 'chickpea-flour')?.percent?.value).toBe(100);
    expect(rows.find((row) => row.ingredient === 'water')?.percent?.value).toBeCloseTo(80, 6);
  });

  it('adds lines of one food up, and tells no percent of what cannot be weighed', () => {
    const mixed = recipe({ amount: '1', unit: 'kg' }, [['onion', '100', 'g'], ['salt', '5', 'g'], ['onion', '0.1', 'kg'], ['moon-root', '1', 'piece']]);
    expect(ratioRows(mixed, 'onion').map((row) => [row.ingredient, row.grams?.value ?? null, row.percent?.value ?? null])).toEqual([['onion', 200, 100], ['salt', 5, 2.5], ['moon-root', null, null]]);
    expect(ratioRows(mixed, 'moon-root').every((row) => row.percent === null)).toBe(true);
  });

  it('the base is 100 whatever the recipe, and the size of the recipe changes nothing', () => {
    assert(property(constantFrom(...shelf), integer({ min: 1, max: 500 }), (one, n) => {
      const base = usualBase(one);
      const grown = { ...one, ingredients: one.ingredients.map((line) => ({ ...line, amount: { ...line.amount, amount: String(Number((Number(line.amount.amount) * n).toFixed(6))) } })) };
      const [before, after] = [ratioRows(one, base), ratioRows(grown, base)];
      expect(before.find((row) => row.ingredient === base)?.percent?.value).toBeCloseTo(100, 9);
      const rounded = (rows: typeof before) => rows.map((row) => row.percent?.value.toPrecision(6) ?? null);
      expect(rounded(after)).toEqual(rounded(before));
    }), { numRuns: 200 });
  });
});

describe('the workings of a recipe by itself', () => {
  const all = shelf.flatMap((one) => figuresOf(one).flatMap((figure, at) => opened(`${one.id}[${at}]`, figure).map((working) => ({ ...working, figure }))));
  it('every one recomputes, its own and those under it', () => {
    expect(all.length).toBeGreaterThan(1000);
    for (const figure of shelf.flatMap(figuresOf)) expect(Math.abs(recompute(figure.working()) - figure.value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(figure.value)));
    for (const { where, working } of all) {
      const inner = working.terms.flatMap((term) => (term.figure === undefined ? [] : [{ term, again: recompute(term.figure.working()) }]));
      for (const { term, again } of inner) expect(again, where).toBeCloseTo(Number(term.value), 6);
    }
  });
  it('shows no input it does not use, and none from a table nobody knows', () => {
    expect(all.flatMap(unused)).toEqual([]);
    const sources = new Set(all.flatMap(({ working }) => working.terms.flatMap((term) => (term.origin?.kind === 'table' ? [term.origin.source] : []))));
    expect(sources.size).toBeGreaterThan(2);
    expect([...sources].filter((id) => sourceTitle(id) === undefined)).toEqual([]);
    expect(all.filter(({ working }) => working.terms.length === 0)).toEqual([]);
  });
});
