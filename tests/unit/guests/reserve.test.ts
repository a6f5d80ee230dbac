import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { planGuests } from '../../../shared/guests';
import { binomial } from '../../../shared/guests/chance/counts';
import { betaQuantile } from '../../../shared/guests/chance/quantile';
import { addFamily, emptyCrowd, percentile } from '../../../shared/guests/crowd';
import { cumulantsOf, deviations, together } from '../../../shared/guests/moments';
import { exactUpTo, pool, quantilesOf } from '../../../shared/guests/pooled';
import { presentChance } from '../../../shared/guests/stay';
import { eventOf, type TestWave } from './make-event';

const singles = (n: number, share: number) => ({ kind: 'families' as const, sizes: Array.from({ length: n }, () => 1), share });
const half = { kind: 'share', share: 0.5 };
const family = 4;
const wave = (adult: number, age7to9: number, turnout: unknown = half): TestWave => ({ from: 720, to: 780, counts: { adult, age7to9 }, turnout });
const split = (waves: number, adult: number, children = 0, turnout: unknown = half): TestWave[] => Array.from({ length: waves }, () => wave(adult / waves, children / waves, turnout));
const planned = (waves: readonly TestWave[], cover = 0.9) => planGuests(eventOf(waves, { preferences: { cover } })).planned.value;
const p90 = (waves: readonly TestWave[]) => Math.max(...planGuests(eventOf(waves)).presence.p90);

/** The smallest number not exceeded on `level` of days when `families` of `size` each come with chance q: binomial over families, summed here. */
const exactly = (families: number, size: number, q: number, level: number): number => {
  let sum = 0;
  for (let k = 0; k <= families; k += 1) {
    sum += binomial(families, q)(k);
    if (sum >= level) return k * size;
  }
  return families * size;
};

describe('how a crowd is cut into waves makes no difference beyond one family', () => {
  test.each([[500, 0], [300, 0], [320, 160], [1000, 500], [240, 0], [160, 80]])('%i adults and %i children', (adults, children) => {
    const one = [planned(split(1, adults, children)), p90(split(1, adults, children))];
    for (const waves of [2, 5, 10, 20]) {
      const cut = [planned(split(waves, adults, children)), p90(split(waves, adults, children))];
      cut.forEach((v, i) => expect(Math.abs(v - one[i]!), `${waves} waves: ${v} and ${one[i]}`).toBeLessThanOrEqual(family));
    }
  });
  test('fifty waves of ten at one half: what one wave of five hundred plans (they once differed by 17)', () => {
    const [many, one] = [planned(split(50, 500)), planned(split(1, 500))];
    expect(many).toBeCloseTo(one, 9);
    expect(Math.abs(one - exactly(250, 2, 0.5, 0.9))).toBeLessThanOrEqual(2);
  });
});

describe('a large crowd agrees with the exact distribution within one family', () => {
  test.each([[500, 0.5], [500, 0.9], [600, 0.97], [2000, 0.8], [5000, 0.3]])('%i adults in pairs who come with chance %f', (adults, share) => {
    for (const cover of [0.5, 0.8, 0.9, 0.95, 0.99]) {
      const want = Math.max(adults * share, exactly(adults / 2, 2, share, cover));
      expect(Math.abs(planned([wave(adults, 0, { kind: 'share', share })], cover) - want)).toBeLessThanOrEqual(2);
    }
  });
  test('families of four, of two and of one together, summed exactly here', () => {
    const waves = [wave(151, 100, { kind: 'share', share: 0.8 }), wave(90, 11, { kind: 'share', share: 0.6 })];
    const crowd = emptyCrowd(352);
    for (let i = 0; i < 50; i += 1) addFamily(crowd, 4, 0.8);
    for (let i = 0; i < 25; i += 1) addFamily(crowd, 2, 0.8);
    addFamily(crowd, 1, 0.8);
    for (let i = 0; i < 5; i += 1) addFamily(crowd, 4, 0.6);
    addFamily(crowd, 3, 0.6);
    for (let i = 0; i < 39; i += 1) addFamily(crowd, 2, 0.6);
    for (const cover of [0.6, 0.9, 0.98]) expect(Math.abs(planned(waves, cover) - percentile(crowd, cover))).toBeLessThanOrEqual(family);
  });
  test('a range of people: the quantile of the PERT itself, beta 1 + 4 × 70/150 and 1 + 4 × 80/150', () => {
    const range = { low: 150, likely: 220, high: 300 };
    for (const cover of [0.8, 0.9, 0.95]) {
      const want = 150 + 150 * betaQuantile(1 + (4 * 70) / 150, 1 + (4 * 80) / 150, cover);
      expect(Math.abs(planned([wave(320, 0, { kind: 'range', ...range })], cover) - want)).toBeLessThanOrEqual(family);
    }
  });
});

describe('from the exact distribution to its cumulants', () => {
  test('nobody is lost where one takes over from the other', () => {
    for (const share of [0.3, 0.6, 0.9]) {
      for (const cover of [0.5, 0.8, 0.9, 0.99]) {
        let before = 0;
        for (let adults = exactUpTo - 4; adults <= exactUpTo + 4; adults += 1) {
          const now = planned([wave(adults, 0, { kind: 'share', share })], cover);
          expect(now).toBeGreaterThanOrEqual(before - 1e-9);
          before = now;
        }
      }
    }
  });
  test('up to 240 people the pooled quantiles are those of the Poisson binomial, summed here one by one', () => {
    const people = [...Array.from({ length: 40 }, () => 0.2), ...Array.from({ length: 60 }, () => 0.7)];
    let chance = [1];
    for (const q of people) chance = Array.from({ length: chance.length + 1 }, (_, k) => (chance[k] ?? 0) * (1 - q) + (chance[k - 1] ?? 0) * q);
    const quantile = (level: number): number => { let sum = 0; return chance.findIndex((c) => (sum += c) >= level); };
    const pooled = pool([singles(40, 0.4), singles(60, 1)]);
    expect(quantilesOf(pooled, 100, 50, [0.5, 0.7], [0.1, 0.5, 0.9])).toEqual([0.1, 0.5, 0.9].map(quantile));
  });
  test('and those of the binomial check values', () => {
    const all: { model: string; inputs: { window: [number, number]; n: number; p: number; t: number; stay: string; meanStay: number; levels: number[] }; expected: { percentiles: number[] } }[] = JSON.parse(readFileSync('tests/sources/data/methods-checks.json', 'utf8'));
    const checks = all.filter((c) => c.model === 'presence.binomial');
    expect(checks.length).toBeGreaterThan(0);
    for (const { inputs, expected } of checks) {
      const [from, to] = inputs.window;
      // The checks name a stay by its mean; an exponential one is not a stay of this room, so its chance is taken from the closed form here.
      const spent = (u: number): number => (u <= 0 ? 0 : inputs.meanStay * (1 - Math.exp(-u / inputs.meanStay)));
      const fixed = { from, to, stay: { shortest: inputs.meanStay, usual: inputs.meanStay, longest: inputs.meanStay } };
      const present = inputs.stay === 'exp' ? (spent(inputs.t - from) - spent(inputs.t - to)) / (to - from) : presentChance(fixed, inputs.t);
      const pooled = pool([{ kind: 'families', sizes: Array.from({ length: inputs.n }, () => 1), share: inputs.p }]);
      expect(quantilesOf(pooled, Math.min(inputs.n, exactUpTo), inputs.n * inputs.p * present, [present], inputs.levels)).toEqual(expected.percentiles);
    }
  });
});

describe('cumulants', () => {
  test('of one pair at one half, by hand: mean 1, variance 1, third 0, fourth −2', () => {
    expect(cumulantsOf({ kind: 'families', sizes: [2], share: 0.5 })(1)).toEqual([1, 1, 0, -2]);
  });
  test('of a family of four at 0.2, by hand: 0.8; 16 × 0.16; 64 × 0.16 × 0.6; 256 × 0.16 × (1 − 0.96)', () => {
    const got = cumulantsOf({ kind: 'families', sizes: [4], share: 0.2 })(1);
    [0.8, 2.56, 6.144, 1.6384].forEach((want, i) => expect(got[i]).toBeCloseTo(want, 12));
  });
  test('of equally likely 10 and 20 who are all there, by hand: mean 15, variance 25, third 0, fourth 625 − 3 × 625', () => {
    expect(cumulantsOf({ kind: 'numbers', scenarios: [10, 20] })(1)).toEqual([15, 25, 0, -1250]);
  });
  test('of 2 or 4 in pairs, half of them there, against the chances counted out: 0, 2 and 4 with 3, 4 and 1 of 8', () => {
    const values = [[0, 3 / 8], [2, 4 / 8], [4, 1 / 8]] as const;
    const mean = values.reduce((s, [x, c]) => s + x * c, 0);
    const m = (n: number) => values.reduce((s, [x, c]) => s + (x - mean) ** n * c, 0);
    const got = cumulantsOf({ kind: 'numbers', scenarios: [2, 4] })(0.5);
    [mean, m(2), m(3), m(4) - 3 * m(2) ** 2].forEach((want, i) => expect(got[i]).toBeCloseTo(want, 12));
  });
  test('add up over crowds, and a sure crowd does not spread', () => {
    expect(together([[1, 2, 3, 4], [10, 20, 30, 40]])).toEqual([11, 22, 33, 44]);
    expect(deviations([5, 0, 0, 0], 0.9)).toBe(0);
    expect(deviations([5, 4, 0, 0], 0.9)).toBeCloseTo(1.2815515655, 8);
  });
});
