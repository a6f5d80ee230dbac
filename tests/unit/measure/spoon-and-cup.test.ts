import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountOf, baseFactor, convert, fullSet, handMeasureIds, handMeasures, kitchenAmount, parseAmount, spoonAndCup, weighsFromG, type HandMeasureId, type Measured } from '../../../shared/measure';

const ml = (m: Measured): number => m.parts.reduce((sum, p) => sum + (parseAmount(p.text)?.toNumber() ?? Number.NaN) * baseFactor(p.unit).toNumber(), 0);
const text = (m: Measured | null): string => m?.parts.map((p) => `${p.text} ${p.unit}`).join(' + ') ?? 'nothing';
const sizeMl = (id: HandMeasureId, cup: 'cup' | 'metricCup'): number => {
  const { unit, part } = handMeasures[id];
  return baseFactor(unit === 'cup' ? cup : unit).times(part).toNumber();
};

describe('spoons and cups that are there', () => {
  it.each([
    ['0.5', 'cup', '½ cup'], ['0.75', 'cup', '¾ cup'], ['1.5', 'cup', '1½ cup'], ['4', 'tsp', '1 tbsp + 1 tsp'], ['0.375', 'tsp', '3⁄8 tsp'], ['1.5', 'tbsp', '1½ tbsp'],
  ] as const)('%s %s with the full set: %s', (value, unit, expected) => expect(text(spoonAndCup(amountOf(value, unit), handMeasureIds, 'cup'))).toBe(expected));

  it('makes do with what there is', () => {
    expect(text(spoonAndCup(amountOf('0.75', 'cup'), ['halfCup', 'tbsp'], 'cup'))).toBe('½ cup + 4 tbsp');
    expect(text(spoonAndCup(amountOf('2', 'cup'), ['tbsp'], 'cup'))).toBe('32 tbsp');
    expect(text(spoonAndCup(amountOf('250', 'ml'), ['cup'], 'metricCup'))).toBe('1 metricCup');
    expect(spoonAndCup(amountOf('250', 'ml'), [], 'metricCup')).toBeNull();
  });

  it('never asks for a measure that is not there, and is off by at most 2 % or half the smallest', () => {
    fc.assert(fc.property(
      fc.double({ min: 0.05, max: 3700, noNaN: true }), fc.subarray([...handMeasureIds], { minLength: 1 }), fc.constantFrom('cup' as const, 'metricCup' as const),
      (asked, measures, cup) => {
        const found = spoonAndCup(amountOf(new Big(asked.toFixed(6)), 'ml'), measures, cup);
        if (found === null) throw new Error('nothing to measure with');
        const units = new Set<string>(measures.map((id) => (handMeasures[id].unit === 'cup' ? cup : handMeasures[id].unit)));
        expect(found.parts.every((p) => units.has(p.unit))).toBe(true);
        expect(ml(found)).toBeGreaterThan(0);
        const smallest = Math.min(...measures.map((id) => sizeMl(id, cup)));
        // Read back from printed fractions: thirds are exact there too.
        expect(Math.abs(ml(found) - asked)).toBeLessThanOrEqual(Math.max(0.02 * asked, smallest / 2, smallest - asked) + 0.003 * Math.max(asked, smallest) + 1e-6);
        expect(ml(found) / (asked * (1 + found.off))).toBeCloseTo(1, 2);
      },
    ), { numRuns: 1000 });
  });

  it('with the full set is off by at most 7 % from half a teaspoon on and 2 % from a tablespoon', () => {
    fc.assert(fc.property(fc.double({ min: 0.5, max: 700, noNaN: true }), (tsp) => {
      const { off } = spoonAndCup(amountOf(new Big(tsp.toFixed(6)), 'tsp'), handMeasureIds, 'cup') ?? { off: Number.NaN };
      expect(Math.abs(off)).toBeLessThanOrEqual(tsp >= 3 ? 0.0209 : 0.126);
    }), { numRuns: 1000 });
  });
});

describe('a scale with whole steps', () => {
  it.each([['774', 'g', 5, '770 g'], ['77', 'g', 10, '80 g'], ['33', 'g', 5, '35 g'], ['7.3', 'g', 5, '5 g'], ['3', 'g', 5, '3 g'], ['1.234', 'kg', 100, '1.2 kg']] as const)('%s %s with steps of %d g: %s', (value, unit, step, expected) => {
    expect(kitchenAmount(amountOf(value, unit), 'metric', step).map((p) => `${p.text} ${p.unit}`).join(' ')).toBe(expected);
  });

  it('rounds to the step and never by more than half of it, or half of our own step', () => {
    fc.assert(fc.property(fc.double({ min: 1, max: 50_000, noNaN: true }), fc.constantFrom(1, 2, 5, 10, 20, 50, 100), (g, step) => {
      const asked = amountOf(new Big(g.toFixed(3)), 'g');
      const [part] = kitchenAmount(asked, 'metric', step);
      const shown = convert({ amount: parseAmount(part?.text ?? '') ?? new Big(0), unit: part?.unit ?? 'g' }, 'g').amount.toNumber();
      expect(Math.abs(shown - g)).toBeLessThanOrEqual(Math.max(step / 2, 0.13 * g) + 0.01);
      expect(g < step || Math.abs(shown / step - Math.round(shown / step)) < 1e-6).toBe(true);
    }), { numRuns: 1000 });
  });

  it('is trusted from five steps on; without a scale nothing is weighed', () => {
    expect(weighsFromG(fullSet)).toBe(5);
    expect(weighsFromG({ ...fullSet, scaleStepG: 10 })).toBe(50);
    expect(weighsFromG({ ...fullSet, scaleStepG: null })).toBe(Number.POSITIVE_INFINITY);
  });
});
