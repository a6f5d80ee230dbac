import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountOf, baseFactor, fullSet, handMeasureIds, handMeasures, kitchenAmount, measureVolume, mostOff, parseAmount, type HandMeasureId, type OnHand } from '../../../shared/measure';

const text = (ml: number, onHand: OnHand, system: 'metric' | 'us' = 'metric'): string => measureVolume(amountOf(ml, 'ml'), system, onHand)?.parts.map((p) => `${p.text} ${p.unit}`).join(' + ') ?? 'nothing';
const read = (parts: readonly { readonly text: string; readonly unit: Parameters<typeof baseFactor>[0] }[]): number => parts.reduce((sum, p) => sum + (parseAmount(p.text)?.toNumber() ?? Number.NaN) * baseFactor(p.unit).toNumber(), 0);
const size = (id: HandMeasureId, cup: 'cup' | 'metricCup'): number => baseFactor(handMeasures[id].unit === 'cup' ? cup : handMeasures[id].unit).times(handMeasures[id].part).toNumber();
const jug50 = { ...fullSet, jugStepMl: 50 };

describe('a volume in what there is to measure with', () => {
  it.each([[5, '1 tsp'], [30, '2 tbsp'], [55, '55 ml'], [240, '240 ml'], [1234, '1.2 L']] as const)('%d ml with everything: %s', (ml, expected) => expect(text(ml, fullSet)).toBe(expected));
  it.each([[55, '50 ml + 1 tsp'], [237, '200 ml + 2½ tbsp'], [500, '500 ml'], [1265, '1.3 L'], [30, '2 tbsp']] as const)('%d ml with a jug marked every 50 ml: %s', (ml, expected) => expect(text(ml, jug50)).toBe(expected));
  it('without a jug goes by cups and spoons, without those by the jug, without either not at all', () => {
    expect(text(500, { ...fullSet, jugStepMl: null })).toBe('2 metricCup');
    expect(text(4560, { ...fullSet, jugStepMl: null }, 'us')).toBe('19 cup');
    expect(text(7, { ...jug50, measures: [] })).toBe('50 ml');
    expect(measureVolume(amountOf(500, 'ml'), 'metric', { scaleStepG: 1, measures: [], jugStepMl: null })).toBeNull();
  });
  it('a US kitchen with everything has the printed measures', () => {
    for (const cups of ['0.5', '1.5', '3.25', '9', '70']) expect(measureVolume(amountOf(cups, 'cup'), 'us', fullSet)?.parts).toEqual(kitchenAmount(amountOf(cups, 'cup'), 'us'));
  });

  const measuresOf = fc.subarray([...handMeasureIds]);
  const jugs = fc.constantFrom(null, 5, 10, 25, 50, 100, 250);
  it('asks for nothing that is not there, is off by no more than the nearest way, and says by how much', () => {
    fc.assert(fc.property(fc.double({ min: 0.3, max: 20_000, noNaN: true }), measuresOf, jugs, (asked, measures, jugStepMl) => {
      const found = measureVolume(amountOf(new Big(asked.toFixed(4)), 'ml'), 'metric', { scaleStepG: 1, measures, jugStepMl });
      expect(found === null).toBe(measures.length === 0 && jugStepMl === null);
      if (found === null) return;
      const units = new Set<string>([...measures.map((id) => (handMeasures[id].unit === 'cup' ? 'metricCup' : handMeasures[id].unit)), ...(jugStepMl === null ? [] : ['ml', 'L'])]);
      expect(found.parts.filter((p) => !units.has(p.unit))).toEqual([]);
      const marks = found.parts.filter((p) => p.unit === 'ml' || p.unit === 'L').map((p) => read([p]) / (jugStepMl ?? 1));
      for (const mark of marks) expect(Math.abs(mark - Math.round(mark))).toBeLessThan(1e-6);
      const shown = read(found.parts);
      expect(shown).toBeGreaterThan(0);
      // Read back from printed fractions: thirds and eighths are three decimals there.
      expect(shown / (asked * (1 + found.off))).toBeCloseTo(1, 2);
      // Half a mark of the jug, half the smallest scoop, one scoop at least, our own steps of 5 %: whichever is there and most.
      const least = Math.min(...measures.map((id) => size(id, 'metricCup')), jugStepMl ?? Number.POSITIVE_INFINITY);
      expect(Math.abs(shown - asked)).toBeLessThanOrEqual(Math.max(0.051 * asked, least / 2, least - asked) + 0.006 * asked + 0.01);
    }), { numRuns: 1000 });
  });

  it('the same in a US kitchen: spoons, cups, and the jug for cups that are not there', () => {
    fc.assert(fc.property(fc.double({ min: 0.3, max: 20_000, noNaN: true }), measuresOf, fc.constantFrom(null, 5), (asked, measures, jugStepMl) => {
      const found = measureVolume(amountOf(new Big(asked.toFixed(4)), 'ml'), 'us', { scaleStepG: 1, measures, jugStepMl });
      expect(found === null).toBe(measures.length === 0 && jugStepMl === null);
      if (found === null) return;
      const units = new Set<string>([...measures.map((id) => handMeasures[id].unit), ...(jugStepMl === null ? [] : ['cup', 'quart', 'gallon'])]);
      expect(found.parts.filter((p) => !units.has(p.unit))).toEqual([]);
      const least = Math.min(...measures.map((id) => size(id, 'cup')), jugStepMl === null ? Number.POSITIVE_INFINITY : size('quarterCup', 'cup'));
      expect(Math.abs(read(found.parts) - asked)).toBeLessThanOrEqual(Math.max(0.066 * asked, least / 2, least - asked) + 0.006 * asked + 0.4);
    }), { numRuns: 1000 });
  });

  it('the bound told in the kitchen is not passed by any amount from 30 ml on', () => {
    fc.assert(fc.property(fc.double({ min: 30, max: 6000, noNaN: true }), measuresOf, jugs, (ml, measures, jugStepMl) => {
      const onHand = { scaleStepG: 1, measures, jugStepMl };
      const bound = mostOff('metric', onHand).poured;
      const found = measureVolume(amountOf(new Big(ml.toFixed(3)), 'ml'), 'metric', onHand);
      expect(found === null).toBe(bound === null);
      // 200 amounts are tried for it, each 2.7 % above the one before.
      expect(Math.abs(found?.off ?? 0)).toBeLessThanOrEqual((bound ?? 0) * 1.03 + 0.03);
    }), { numRuns: 120 });
    expect(mostOff('metric', fullSet).poured).toBeLessThan(0.07);
    expect(mostOff('us', fullSet).weighed).toBeLessThan(0.07);
    expect(mostOff('metric', { ...fullSet, scaleStepG: null }).weighed).toBeNull();
  });
});
