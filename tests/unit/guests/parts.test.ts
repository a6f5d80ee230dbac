import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import { addCrowd, addFamily, emptyCrowd, familySizes, percentile } from '../../../shared/guests/crowd';
import { inProportion } from '../../../shared/measure';
import { planGuests } from '../../../shared/guests';
import { demo } from '../demo/demo';
import { pertSlices } from '../../../shared/guests/scenarios';
import { meanStay, minutesSpent, presentChance } from '../../../shared/guests/stay';
import { betaQuantile, gammaQuantile, normalQuantile, normalShare } from '../../../shared/guests/chance/quantile';
import { logGamma } from '../../../shared/guests/chance/gamma';

const stays = fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 3, maxLength: 3 }).map((s) => s.toSorted((a, b) => a - b)).map(([a, b, c]) => ({ shortest: a!, usual: b!, longest: c! }));

const totalOf = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);

describe('splitting in proportion (Webster)', () => {
  const cells = fc.array(fc.nat(500), { minLength: 1, maxLength: 20 }).filter((w) => w.some((x) => x > 0));

  test('adds up, gives nothing to a weight of nothing, and the weights themselves when their sum is asked for', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 5000 }), cells, (total, weights) => {
      const parts = inProportion(total, weights);
      expect(totalOf(parts)).toBe(total);
      expect(parts.filter((p, i) => p < 0 || (weights[i] === 0 && p > 0))).toEqual([]);
      expect(inProportion(totalOf(weights), weights)).toEqual(weights);
    }));
  });
  test('one more never takes one from anybody', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 600 }), cells, (total, weights) => {
      const [before, after] = [inProportion(total, weights), inProportion(total + 1, weights)];
      expect(after.filter((p, i) => p < before[i]!)).toEqual([]);
    }), { numRuns: 300 });
  });
  test('every part is fair: moving one from a part to another brings neither nearer to equal weight for each', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 600 }), cells, (total, weights) => {
      const parts = inProportion(total, weights);
      const next = Math.max(...weights.map((w, i) => w / (2 * parts[i]! + 1)));
      const last = Math.min(...weights.flatMap((w, i) => (parts[i]! > 0 ? [w / (2 * parts[i]! - 1)] : [])));
      expect(next).toBeLessThanOrEqual(last + 1e-9);
    }));
  });
  test('worked by hand: quotients 50/1, 30/1, 20/1, 50/3, 30/3, 50/5, 50/7, 20/3', () => {
    expect(inProportion(3, [50, 30, 20])).toEqual([1, 1, 1]);
    expect(inProportion(4, [50, 30, 20])).toEqual([2, 1, 1]);
    expect(inProportion(7, [50, 30, 20])).toEqual([4, 2, 1]);
    expect(inProportion(10, [1, 1, 1])).toEqual([4, 3, 3]);
    expect(inProportion(5, [0, 0])).toEqual([0, 0]);
  });
  test('where largest remainder gives 4, 4, 2 of ten and 5, 5, 1 of eleven, nobody loses', () => {
    expect(inProportion(10, [6, 6, 2])).toEqual([5, 4, 1]);
    expect(inProportion(11, [6, 6, 2])).toEqual([5, 5, 1]);
  });
});

describe.each(['lantern-evening', 'school-fair-stall'] as const)('the headcount of %s, one by one from 0 to 300', (name) => {
  test.each(['adults', 'children'] as const)('%s: no wave, no total and no peak ever falls', (who) => {
    const event = demo(name);
    const falls: string[] = [];
    let before: readonly number[] = [];
    for (let n = 0; n <= 300; n += 1) {
      const g = planGuests({ ...event, guests: { ...event.guests, headcount: { adults: 60, children: 20, [who]: n } } });
      const now = [g.adults.value, g.children.value, g.planned.value, g.peak.value, ...g.waves.flatMap((w) => [w.adults, w.children])];
      now.forEach((v, i) => { if (v < (before[i] ?? 0) - 1e-9) falls.push(`${n}: figure ${i} from ${before[i]} to ${v}`); });
      before = now;
    }
    expect(falls).toEqual([]);
  });
});

describe('minutes spent', () => {
  test('is the sum of the chance to be still there, for every kind of triangle', () => {
    fc.assert(fc.property(stays, fc.integer({ min: 0, max: 400 }), (s, u) => {
      const survives = (x: number): number => {
        if (x < s.shortest) return 1;
        if (x >= s.longest) return 0;
        const spread = s.longest - s.shortest;
        return x < s.usual ? 1 - (x - s.shortest) ** 2 / (spread * (s.usual - s.shortest)) : (s.longest - x) ** 2 / (spread * (s.longest - s.usual));
      };
      let sum = 0;
      for (let i = 0; i < u * 20; i += 1) sum += survives((i + 0.5) / 20) / 20;
      expect(Math.abs(minutesSpent(s, u) - sum)).toBeLessThan(0.05);
    }), { numRuns: 100 });
  });
  test('grows, never past the mean stay nor past the time gone', () => {
    fc.assert(fc.property(stays, fc.integer({ min: 0, max: 400 }), (s, u) => {
      expect(minutesSpent(s, u)).toBeLessThanOrEqual(Math.min(u, meanStay(s)) + 1e-6);
      expect(minutesSpent(s, u + 1)).toBeGreaterThanOrEqual(minutesSpent(s, u) - 1e-6);
    }));
  });
  test('a fixed stay of 90 and arrivals over 60 minutes: half there at 30, all at 60, none at 150 (own arithmetic)', () => {
    const coming = { from: 0, to: 60, stay: { shortest: 90, usual: 90, longest: 90 } };
    expect([30, 60, 90, 120, 150].map((t) => 60 * presentChance(coming, t))).toEqual([30, 60, 60, 30, 0]);
  });
});

describe('crowds', () => {
  test('families: two adults with up to two children, and a guest more only adds', () => {
    expect(familySizes(5, 3)).toEqual([4, 3, 1]);
    expect(familySizes(0, 3)).toEqual([2, 1]);
    fc.assert(fc.property(fc.nat(40), fc.nat(40), (a, c) => {
      expect(familySizes(a, c).reduce((x, y) => x + y, 0)).toBe(a + c);
      const more = familySizes(a, c + 1);
      expect(familySizes(a, c).every((size, i) => (more[i] ?? 0) >= size)).toBe(true);
    }));
  });
  test('single people make the binomial percentiles of SciPy (70 at 0.8: 52, 56, 60)', () => {
    const crowd = emptyCrowd(70);
    for (let i = 0; i < 70; i += 1) addFamily(crowd, 1, 0.8);
    expect([0.1, 0.5, 0.9].map((level) => percentile(crowd, level))).toEqual([52, 56, 60]);
  });
  test('adding two crowds is adding their families', () => {
    const [all, a, b] = [emptyCrowd(9), emptyCrowd(9), emptyCrowd(9)];
    for (const [size, q] of [[4, 0.3], [2, 0.9]] as const) { addFamily(all, size, q); addFamily(a, size, q); }
    addFamily(all, 3, 0.5);
    addFamily(b, 3, 0.5);
    addCrowd(a, b);
    a.chance.forEach((x, k) => expect(x).toBeCloseTo(all.chance[k]!, 12));
    expect(a.chance.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 12);
  });
  test('slices of a PERT guess are in order, inside it, and about its mean', () => {
    const slices = pertSlices({ low: 40, likely: 60, high: 100 }, 20);
    expect(slices).toEqual(slices.toSorted((x, y) => x - y));
    expect(slices[0]!).toBeGreaterThan(40);
    expect(slices.at(-1)!).toBeLessThan(100);
    expect(slices.reduce((x, y) => x + y, 0) / 20).toBeCloseTo(63.333, 0);
    expect(pertSlices({ low: 5, likely: 5, high: 5 }, 3)).toEqual([5, 5, 5]);
  });
});

describe('chances', () => {
  test('log gamma of whole numbers is the log of a factorial', () => {
    let log = 0;
    for (let n = 1; n < 40; n += 1) {
      expect(logGamma(n + 1)).toBeCloseTo(log += Math.log(n), 9);
    }
  });
  test('quantiles: normal 97.5 % (1.959964), even beta, exponential', () => {
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963985, 7);
    expect(normalShare(-1.2815515655)).toBeCloseTo(0.1, 9);
    expect(betaQuantile(1, 1, 0.3)).toBeCloseTo(0.3, 9);
    expect(gammaQuantile(1, 2, 0.5)).toBeCloseTo(Math.LN2 / 2, 9);
  });
});
