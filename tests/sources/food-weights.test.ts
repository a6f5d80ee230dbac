/**
 * The ingredient table against the tables its figures name, row by row.
 * - Weights of cups and spoons: USDA National Nutrient Database for Standard Reference, Release 26 (file WEIGHT), record numbers beside each.
 * - Edible share: the same (refuse column), and the armed forces' factors for vegetables and fruit (A-6, A-7) as reproduced.
 * - Cooked weight: dry matter before and after cooking from the water columns of the same database; federal recipes where they print both weights.
 */
import { describe, expect, it } from 'vitest';
import { baseFactor, parseAmount, type UnitId } from '../../shared/measure';
import { ingredient, type IngredientFigure } from '../../shared/reference';
import data from './data/food-weights.json';

const spoons: Readonly<Record<string, UnitId>> = { cup: 'cup', tbsp: 'tbsp', tsp: 'tsp' };
const figure = (id: string, of: 'density' | 'ep' | 'cooked'): IngredientFigure => {
  const found = ingredient(id)?.figures[of];
  if (found === undefined) throw new Error(`${id} has no ${of}`);
  return found;
};
/** Every value the row keeps: the chosen one, the ends of its range, the other tables. */
const kept = (f: IngredientFigure): readonly number[] => [f.value, f.low, f.high, ...f.other.map((o) => o.value)];

describe('weights of measures (SR26)', () => {
  it.each(data.measures.map((m) => [m.ingredient, m.measure, m.grams, m] as const))('%s: %s weighs %d g', (id, measure, grams) => {
    const [count = '', spoon = ''] = measure.split(' ');
    const unit = spoons[spoon];
    if (unit === undefined) throw new Error(`no such spoon: ${measure}`);
    const ml = Number(parseAmount(count)) * baseFactor(unit).toNumber();
    // Three decimals of grams per millilitre are kept: up to 1 % on the lightest leaf.
    expect(Math.abs((figure(id, 'density').value * ml) / grams - 1)).toBeLessThanOrEqual(0.01);
  });

  it('reads its rows from the table, not the table from its rows: a wrong weight is found', () => {
    expect(Math.abs((figure('sugar', 'density').value * 236.588) / 220 - 1)).toBeGreaterThan(0.01); // packed brown sugar's weight
  });
});

describe('edible share (SR26, AFRS-A6, AFRS-A7)', () => {
  it.each(data.edible.map((e) => [e.ingredient, e.printed] as const))('%s: every printed share is kept', (id, printed) => {
    const values = kept(figure(id, 'ep'));
    for (const p of printed) expect(values, p.record).toContain(p.percent);
  });

  it.each(data.edible.map((e) => [e.ingredient, e.printed.map((p) => p.percent)] as const))('%s: the share planned with lies among the printed ones', (id, percents) => {
    const { value } = figure(id, 'ep');
    expect(value).toBeGreaterThanOrEqual(Math.min(...percents) - 0.05);
    expect(value).toBeLessThanOrEqual(Math.max(...percents) + 0.05);
  });
});

/** Cooked / raw from the water before and after, in percent, when nothing dissolves. */
const dryMatter = (record: string): number => {
  const [before = Number.NaN, after = Number.NaN] = [...record.matchAll(/([\d.]+) %/g)].map((m) => Number(m[1]));
  return (100 - before) / (100 - after);
};
const balances = data.cooked.flatMap((c) => c.printed.filter((p) => p.record.startsWith('dry-matter') || p.record.startsWith('water ')).map((p) => [c.ingredient, p.record, p.factor] as const));

describe('cooked weight', () => {
  it.each(balances)('%s: %s gives %d', (_id, record, factor) => expect(dryMatter(record)).toBeCloseTo(factor, 1));

  it.each([
    // USDA-CR: 3 lb 10 oz brown rice gives 8 lb 4 oz; USDA-RVC: 1 lb 11 oz gives 4 lb; 3 lb 2 oz gives 6 lb 11 oz.
    [58, 132, 2.28], [27, 64, 2.37], [50, 107, 2.14],
  ])('brown rice in federal recipes: %d oz give %d oz', (raw, cooked, factor) => {
    expect(cooked / raw).toBeCloseTo(factor, 2);
    const { low, high, other } = figure('brown-rice', 'cooked');
    expect(other.map((o) => o.value)).toContain(factor);
    expect(cooked / raw).toBeGreaterThanOrEqual(low - 0.005);
    expect(cooked / raw).toBeLessThanOrEqual(high);
  });

  it.each(data.cooked.map((c) => [c.ingredient, c.printed] as const))('%s: every printed factor is kept, and what is planned with is within 20 %% of one', (id, printed) => {
    const f = figure(id, 'cooked');
    for (const p of printed) expect(kept(f), p.record).toContain(p.factor);
    expect(Math.min(...printed.map((p) => Math.abs(f.value / p.factor - 1)))).toBeLessThan(0.2);
  });
});
