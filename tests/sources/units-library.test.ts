/** Our units against an independent library (`convert`, used in tests only), every pair of units both know, over five powers of ten. */
import { convert as theirs } from 'convert';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountOf, convert, dimensionOf, unitIds, type UnitId } from '../../shared/measure';

const masses = { g: 'g', kg: 'kg', oz: 'oz', lb: 'lb' } as const;
const volumes = { ml: 'ml', L: 'L', tsp: 'tsp', tbsp: 'tbsp', floz: 'fl oz', cup: 'cup', pint: 'pint', quart: 'quart', gallon: 'gallon' } as const;
type Mass = keyof typeof masses;
type Volume = keyof typeof volumes;
const massUnits = ['g', 'kg', 'oz', 'lb'] as const satisfies readonly Mass[];
const volumeUnits = ['ml', 'L', 'tsp', 'tbsp', 'floz', 'cup', 'pint', 'quart', 'gallon'] as const satisfies readonly Volume[];
const value = fc.double({ min: 0.01, max: 10_000, noNaN: true });
const off = (ours: number, library: number): number => Math.abs(ours / library - 1);
const ours = (n: number, from: UnitId, to: UnitId): number => convert(amountOf(n, from), to).amount.toNumber();

describe('units against an independent library', () => {
  it.each(massUnits.flatMap((from) => massUnits.map((to) => [from, to] as const)))('%s to %s', (from, to) => {
    fc.assert(fc.property(value, (n) => { expect(off(ours(n, from, to), theirs(n, masses[from]).to(masses[to]))).toBeLessThan(1e-12); }), { numRuns: 50 });
  });

  it.each(volumeUnits.flatMap((from) => volumeUnits.map((to) => [from, to] as const)))('%s to %s', (from, to) => {
    fc.assert(fc.property(value, (n) => { expect(off(ours(n, from, to), theirs(n, volumes[from]).to(volumes[to]))).toBeLessThan(1e-12); }), { numRuns: 50 });
  });

  it('leaves out only what the library does not know: metric kitchen measures and counted things', () => {
    const checked: readonly string[] = [...massUnits, ...volumeUnits];
    const left = unitIds.filter((u) => !checked.includes(u));
    expect(left.filter((u) => dimensionOf(u) !== 'count')).toEqual(['metricCup', 'metricTbsp', 'metricTsp']);
  });
});
