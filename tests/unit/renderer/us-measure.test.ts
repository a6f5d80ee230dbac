import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usMeasure, type StoredUnit } from '../../../src-renderer/parts/us-measure';

const kinds: readonly StoredUnit[] = ['mm', 'L', 'kg', '°C', 'm'];

describe('kitchen measures in US units', () => {
  it('are stored by the exact definitions', () => {
    expect(usMeasure('mm').kept(16)).toBe(406.4);
    expect(usMeasure('mm').shown(254)).toBe(10);
    expect(usMeasure('L').kept(4)).toBe(3.785411784);
    expect(usMeasure('kg').kept(2)).toBe(0.90718474);
    expect(usMeasure('m').kept(5000)).toBe(1524);
    expect(usMeasure('°C').kept(212)).toBe(100);
    expect(usMeasure('°C').kept(41)).toBe(5);
    expect(usMeasure('°C').shown(-40)).toBe(-40);
    expect(usMeasure('°C').shown(21)).toBe(69.8);
  });

  it('name their unit', () => {
    expect(kinds.map((kind) => usMeasure(kind).unit)).toEqual(['in', 'qt', 'lb', '°F', 'ft']);
  });

  it('what is entered comes back as it was entered', () => {
    for (const kind of kinds) {
      const { shown, kept, decimals } = usMeasure(kind);
      fc.assert(fc.property(fc.integer({ min: -4000, max: 400_000 }), (n) => {
        const entered = Number((n / 100).toFixed(decimals)) + 0;
        expect(Number(shown(kept(entered)).toFixed(decimals))).toBe(entered);
      }), { numRuns: 200 });
    }
  });

  it('more is more in both', () => {
    for (const kind of kinds) {
      const { shown } = usMeasure(kind);
      fc.assert(fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), fc.double({ min: 0.001, max: 100, noNaN: true }), (value, more) => {
        expect(shown(value + more)).toBeGreaterThan(shown(value));
      }));
    }
  });
});
