// What goes into the pan of the Lantern Evening at once, recomputed by hand line by line from the event's entries and the reference tables.
import { describe, expect, it } from 'vitest';
import { plan } from '../../../shared/plan';
import { demo } from '../demo/demo';

const { frying } = plan(demo('lantern-evening'));
const load = frying.loads.find((l) => l.dish === 'fritters')!;

/** On paper: 25 g of batter with 60 % water at 15 °C, 18 % of it boiled off; water boils at 99.8 °C 60 m above the sea. */
const heat = 0.6 * 4.19 * (99.8 - 15) + 0.4 * 1.7 * (99.8 - 15) + 0.18 * 2257;
/** 5 kW of gas of which 40 % reach the pan, less 1.6 W for each of 177 − 21 degrees. */
const net = 5 * 0.4 - (1.6 * (177 - 21)) / 1000;
/** 3 L × 0.92 kg/L of oil at 2.39 kJ/kgK, and 1.8 kg of steel at 0.49. */
const capacity = 3 * 0.92 * 2.39 + 1.8 * 0.49;
/** Fall with n pieces: they ask K at first, dying away over 100 s, in 240 s of frying; the lowest point is where they ask what the burner gives. */
function fall(n: number): number {
  const asked = n * 0.025 * heat;
  const peak = asked / (100 * (1 - Math.exp(-2.4)));
  const lowest = Math.min(240, 100 * Math.log(peak / net));
  return (peak * 100 * (1 - Math.exp(-lowest / 100)) - net * lowest) / capacity;
}

describe('one load of fritters', () => {
  it('takes 677 kJ for each kilogram of batter, and the burner gives 1.75 kW', () => {
    expect(heat).toBeCloseTo(677.1, 0);
    expect(net).toBeCloseTo(1.7504, 4);
    expect(capacity).toBeCloseTo(7.478, 3);
  });
  it('is 24 pieces: 24 cool the oil by less than the 15 degrees allowed, 25 by more', () => {
    expect(fall(24)).toBeLessThan(15);
    expect(fall(25)).toBeGreaterThan(15);
    expect(load.pieces.value).toBe(24);
    expect(load.limitedBy).toBe('dip');
    expect(load.dipC.value).toBeCloseTo(fall(24), 1);
  });
  it('could be 31 by the heat of the burner: 1.75 kW for 300 s over 16.9 kJ a piece', () => {
    expect(Math.floor((net * 300) / (0.025 * heat))).toBe(31);
    expect(load.limits.heat.value).toBe(31);
  });
  it('could be 31 by the oil: 2.76 kg, three and a half times 25 g for each', () => {
    expect(Math.floor(2.76 / (3.5 * 0.025))).toBe(31);
    expect(load.limits.oilRatio.value).toBe(31);
  });
  it('goes in every five minutes: four of frying and one of handling, and the burner has made up for it by then', () => {
    expect((24 * 0.025 * heat) / net).toBeLessThan(300);
    expect(load.cycleMinutes.value).toBe(5);
    expect(load.kgPerHour.value).toBeCloseTo(24 * 0.025 * 12, 9);
  });
  it('heats the oil in 10 minutes: 20 to 177 °C with 2.2 kJ/kgK in the mean, from 2 kW less the loss on the way', () => {
    const warm = 3 * 0.92 * (1.95 + (0.0025 * (20 + 177)) / 2) + 1.8 * 0.49;
    const seconds = (warm / 0.0016) * Math.log((2 - 0.0016 * (20 - 21)) / (2 - 0.0016 * (177 - 21)));
    expect(frying.oil[0]!.heatUpMinutes.value).toBeCloseTo(seconds / 60, 6);
    expect(Math.ceil(seconds / 60)).toBe(10);
  });
});

describe('the oil of the fritters', () => {
  const pieces = frying.batches.filter((b) => b.dish === 'fritters').reduce((sum, b) => sum + b.pieces, 0);
  it('goes out with the food: 14 g for each 100 g of batter, a litre weighing 920 g', () => {
    expect(frying.oil[0]!.uptakeLitres.value).toBeCloseTo((pieces * 0.025 * 0.14) / 0.92, 9);
  });
  it('is bought with a tenth more than goes out, for both pans together', () => {
    expect(frying.buyLitres.value).toBeCloseTo(5 + 1.1 * frying.uptakeLitres.value, 9);
  });
});
