import { describe, expect, it } from 'vitest';
import { evaluate, recompute, termValues, type Figure, type Working } from '../../../shared/figure';
import { batchCount } from '../../../shared/frying/totals';
import { fry, fryEvent, gasRing, roundPan } from './fry-event';

const load = (change: Parameters<typeof fryEvent>[0] = {}) => fry(fryEvent(change)).frying.loads[0]!;
const value = (w: Working, key: string): number => {
  const found = w.terms.find((t) => t.key === key)?.value;
  if (typeof found !== 'number') throw new Error(`no ${key}`);
  return found;
};
/** What the sum says when the number tried is another, with the falls or rims of the true one. */
const withTried = (f: Figure, change: Record<string, number>): number => evaluate(f.working().sum, { ...termValues(f.working()), ...change });

describe('the limit by cooling', () => {
  const limit = load().limits.dip;
  const w = limit.working();

  it('shows the fall with so many pieces, within the 15 K allowed, and with one more, beyond it', () => {
    expect(value(w, 'tried')).toBe(limit.value);
    expect(value(w, 'this')).toBeLessThanOrEqual(value(w, 'allowed'));
    expect(value(w, 'next')).toBeGreaterThan(value(w, 'allowed'));
  });
  it('works each fall out from its own inputs: in closed form, recomputed here with plain numbers', () => {
    for (const key of ['this', 'next']) {
      const fall = w.terms.find((t) => t.key === key)!.figure!.working();
      const [n, mass, heat, power, capacity, tau, minutes] = ['pieces', 'mass', 'heat', 'power', 'capacity', 'tau', 'fryTime'].map((k) => value(fall, k));
      // Heat goes in as peak × e^(−t ÷ tau); the oil cools until that equals what the burner gives.
      const peak = (n! * mass! * heat!) / (tau! * (1 - Math.exp((-60 * minutes!) / tau!)));
      const at = tau! * Math.log(peak / power!);
      expect(at).toBeGreaterThan(0);
      expect(value(w, key)).toBeCloseTo((peak * tau! * (1 - Math.exp(-at / tau!)) - power! * at) / capacity!, 9);
    }
  });
  it('could be wrong: a number too small or too large does not recompute to itself', () => {
    const allowed = value(w, 'allowed');
    expect(withTried(limit, { tried: 20, this: allowed - 4, next: allowed - 2 })).toBeGreaterThan(20);
    expect(withTried(limit, { tried: 20, this: allowed + 1, next: allowed + 3 })).toBeLessThan(20);
    expect(withTried(limit, { power: 0, capacity: 0 })).toBe(limit.value);
  });
  it('is none for a burner that gives less than the pan loses', () => {
    const { frying } = fry(fryEvent({ burners: [{ ...gasRing, ratedW: 300 }] }));
    expect(frying.loads).toEqual([]);
  });
});

describe('the limit by the rim and by room', () => {
  it('keeps the rim and the fill with so many pieces, and loses one of them with one more', () => {
    const limit = load({ pans: [{ ...roundPan, oilLitres: 3.6 }] }).limits.rim;
    const w = limit.working();
    expect(value(w, 'rim')).toBeGreaterThanOrEqual(1000 * value(w, 'least'));
    expect(value(w, 'share')).toBeLessThanOrEqual(value(w, 'fill'));
    expect(value(w, 'rimNext') < 1000 * value(w, 'least') || value(w, 'shareNext') > value(w, 'fill')).toBe(true);
    expect(limit.value).toBeGreaterThan(0);
    expect(recompute(w)).toBe(limit.value);
  });
  it('is none, not below, where the oil alone is too high', () => {
    const limit = load({ pans: [{ ...roundPan, oilLitres: 6 }] }).limits.rim;
    expect(limit.value).toBe(0);
    expect(recompute(limit.working())).toBe(0);
  });
  it('has room for the pieces whose packing fits and not for one more', () => {
    const tight = load().limits.space.working().terms.find((t) => t.key === 'tight')!.figure!.working();
    expect(value(tight, 'this')).toBeLessThanOrEqual(value(tight, 'ratio'));
    expect(value(tight, 'next')).toBeGreaterThan(value(tight, 'ratio'));
  });
});

describe('the number of batches and bowls', () => {
  it('is shown beside what full ones could not go below', () => {
    const { frying } = fry(fryEvent({ adults: 40 }));
    const w = frying.batchCount.working();
    const pieces = frying.batches.reduce((n, b) => n + b.pieces, 0);
    expect(value(w, 'full0')).toBe(Math.ceil(pieces / frying.loads[0]!.pieces.value));
    expect(frying.batchCount.value).toBeGreaterThanOrEqual(value(w, 'full0'));
    expect(evaluate(w.sum, { ...termValues(w), full0: 999 })).toBe(999);
  });
  it('is none without batches, and says so with an empty list', () => {
    const none = batchCount([], []);
    expect([none.value, recompute(none.working())]).toEqual([0, 0]);
  });
  it('halves the burner for two pans, counted from the pans that name it', () => {
    const shared = load({ pans: [roundPan, { ...roundPan, id: 'pan-2' }] });
    const net = shared.limits.heat.working().terms.find((t) => t.key === 'power')!.figure!.working();
    const sharing = net.terms.find((t) => t.key === 'sharing')!.figure!;
    expect([sharing.value, recompute(sharing.working())]).toEqual([2, 2]);
    expect(sharing.working().terms[0]!.origin).toEqual({ kind: 'entered', path: 'kitchen.pans[0].oilLitres, kitchen.pans[1].oilLitres' });
  });
});

const heatAt = (altitudeM: number): number => value(load({ kitchen: { altitudeM } }).limits.heat.working(), 'heat');

describe('heat for the batter high up', () => {
  it('goes to the boiling point there, not to that at the sea', () => {
    // Water boils near 93.4 °C at 2000 m: 6.6 degrees less of warming for 0.62 kg water and 0.38 kg solids in each kilogram.
    expect(heatAt(0) - heatAt(2000)).toBeCloseTo(6.6 * (0.62 * 4.19 + 0.38 * 1.7), 0);
  });
});
