/** Faults known in published tables: each listed one is found by a check of ours, here or in the file named. None may be listed without one. */
import { describe, expect, it } from 'vitest';
import { amountOf, convert } from '../../shared/measure';
import { bandFactors, parameters, rolePortions } from '../../shared/reference';
import data from './data/recipes-checks.json';
import { readPrinted } from './printed-amounts';

const column = (row: unknown, key: string): unknown => (typeof row === 'object' && row !== null ? Object.entries(row).find(([k]) => k === key)?.[1] : undefined);
const rowOf = (recipe: string, name: string): unknown => data.two_column_recipes.find((r) => r.id === recipe)?.ingredients.find((i) => i.name.startsWith(name));
/** How many times the small column goes into the large one, as printed. */
function times(recipe: string, name: string, kind: 'weight' | 'measure', small: string, large: string): number {
  const [a, b] = [small, large].map((c) => readPrinted(column(column(rowOf(recipe, name), c), kind)));
  if (a === null || a === undefined || b === null || b === undefined) throw new Error(`${recipe} ${name} cannot be read`);
  return convert(b, a.unit).amount.div(a.amount).toNumber();
}

/** True when the fault is there, or the table is not used. */
const checks: Readonly<Record<string, () => boolean>> = {
  'r04 rice water': () => times('r04', 'Water for rice', 'measure', '50', '100') === 1,
  'r05 onion': () => times('r05', 'Onion', 'weight', '50', '100') === 2 && times('r05', 'Onion', 'measure', '50', '100') === 1.5,
  // A compilation prints its fifty-serving amounts as a hundred: it is not among the recipes compared.
  'USDA-BBS': () => data.two_column_recipes.every((r) => r.source !== 'USDA-BBS'),
  // 32 fl oz over 12 is a third of a cup, not an eighth.
  'TX-MC scoop list': () => Math.abs(convert(amountOf(32, 'floz'), 'cup').amount.div(12).toNumber() - 1 / 3) < 1e-12,
  // The review's adult row of the American figures repeats the teenage values: no figure of ours may rest on it.
  'EFSA-W table': () => [...parameters.map((p) => p.source), ...bandFactors.map((b) => b.source), ...rolePortions.flatMap((r) => [r.piece, r.g, r.ml].flatMap((v) => v?.source ?? []))]
    .every((source) => !source.includes('EFSA')),
};
/** Checked where the card is: `hundred-portion-cards.test.ts`, by the number of the card. */
const onCards = ['c2 tea measure', 'c3 coffee line', 'c6 batter'];

describe('known faults of published tables', () => {
  it('each has its check', () => {
    expect(data.known_faults_in_published_tables.map((f) => f.where).toSorted()).toEqual([...Object.keys(checks), ...onCards].toSorted());
  });
  it.each(Object.keys(checks))('%s', (where) => { expect(checks[where]?.()).toBe(true); });
});
