import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fryingSchema } from '../../../shared/event';
import { boilOffFactor, heatOfBatter, waterLostAt, waterLostTold, type OfRecipe } from '../../../shared/frying';
import { figuresIn, fry, fryEvent, wordFaults, workingFaults } from './fry-event';

const event = fryEvent();
const of: OfRecipe = (key, word, value, unit) => ({ key, label: { word }, value, unit, origin: { kind: 'recipe', recipe: 'fritters' } });
const at = (targetC: number, more: Record<string, unknown> = {}) => fryingSchema.parse({ pieceBatterG: 25, fryMinutes: 4, waterFraction: 0.62, waterLostKgPerKg: 0.18, batterC: 20, targetC, ...more });
const heat = (targetC: number, more: Record<string, unknown> = {}): number => heatOfBatter(event, at(targetC, more), of).value;

describe('heat into a kilogram of batter', () => {
  it('at the usual 177 °C is that of the reference: 666 kJ (62 % water, 0.18 kg lost, from 20 °C)', () => expect(heat(177)).toBeCloseTo(666, 0));
  it('follows the oil: by hand at 187 °C', () => {
    // 0.18 × (187 − 100) ÷ (177 − 100) = 0.2034 kg; warming 259.5, boiling off 459.0, crust 0.38 × 1.7 × 0.4 × 10 = 2.6 kJ.
    expect(waterLostAt(event, at(187), of).value).toBeCloseTo(0.20338, 5);
    expect(heat(187)).toBeCloseTo(0.62 * 4.19 * 80 + 0.38 * 1.7 * 80 + 0.20338 * 2257 + 0.38 * 1.7 * 0.4 * 10, 0);
  });
  it('rises with the oil temperature, and boils off no more water than there is', () => {
    fc.assert(fc.property(fc.integer({ min: 140, max: 199 }), fc.double({ min: 0.01, max: 0.5, noNaN: true }), (targetC, waterLostKgPerKg) => {
      expect(heat(targetC + 1, { waterLostKgPerKg })).toBeGreaterThan(heat(targetC, { waterLostKgPerKg }));
    }), { numRuns: 50 });
    expect(waterLostAt(event, at(200, { waterFraction: 0.3, waterLostKgPerKg: 0.29 }), of).value).toBe(0.3);
  });
  it('stays in the published span of fritters, 0.43 to 0.94 MJ/kg, from 165 to 190 °C', () => {
    for (const targetC of [165, 170, 177, 185, 190]) {
      expect(heat(targetC)).toBeGreaterThan(430);
      expect(heat(targetC)).toBeLessThan(940);
    }
  });
  it('loads fewer pieces into hotter oil, where heat is what limits', () => {
    const [usual, hot] = [177, 195].map((targetC) => fry(fryEvent({ frying: { targetC } })).frying.loads[0]!);
    expect(hot!.limits.heat.value).toBeLessThan(usual!.limits.heat.value);
  });
  it('told for the usual oil and worked out again is what was measured', () => {
    const measured = waterLostAt(event, at(190), of);
    expect(waterLostTold(event, at(190), of, measured).value).toBeCloseTo(0.18, 12);
    expect(waterLostTold(event, at(177), of, measured)).toBe(measured);
    expect(boilOffFactor(event, at(177))).toBe(1);
  });
  it('shows figures that recompute, with words', () => {
    const all = figuresIn([heatOfBatter(event, at(165), of), waterLostTold(event, at(165), of, waterLostAt(event, at(165), of))]);
    expect(all.flatMap((f) => [...workingFaults(f), ...wordFaults(f)])).toEqual([]);
    expect(all.map((f) => f.working().rule)).toEqual(expect.arrayContaining(['fry.heatOfBatter', 'fry.energyPerKgBatter', 'fry.waterLost', 'fry.crustHeat', 'fry.waterLostTold']));
  });
});
