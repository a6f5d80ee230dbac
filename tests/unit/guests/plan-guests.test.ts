import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import { recompute, type Figure, type Working } from '../../../shared/figure';
import { planGuests, type GuestsPlan } from '../../../shared/guests';
import { isWordId } from '../../../shared/words';
import { eventOf, type TestWave } from './make-event';

const count = fc.integer({ min: 0, max: 14 });
const turnout = fc.oneof(
  fc.constant({ kind: 'known' }),
  fc.double({ min: 0, max: 1, noNaN: true }).map((share) => ({ kind: 'share', share })),
  fc.tuple(count, count, count).map(([low, more, most]) => ({ kind: 'range', low, likely: low + more, high: low + more + most })),
);
const waves: fc.Arbitrary<TestWave[]> = fc.array(fc.record({
  from: fc.integer({ min: 600, max: 1100 }), width: fc.integer({ min: 0, max: 120 }),
  adult: count, olderAdult: fc.integer({ min: 0, max: 4 }), age4to6: count, under1: fc.integer({ min: 0, max: 2 }), turnout,
  stay: fc.array(fc.integer({ min: 1, max: 240 }), { minLength: 3, maxLength: 3 }).map((s) => s.toSorted((a, b) => a - b)),
}), { minLength: 0, maxLength: 6 }).map((list) => list.map((w) => ({
  from: w.from, to: w.from + w.width, turnout: w.turnout, stay: [w.stay[0]!, w.stay[1]!, w.stay[2]!] as const,
  counts: { adult: w.adult, olderAdult: w.olderAdult, age4to6: w.age4to6, under1: w.under1 },
})));

const close = (a: number, b: number, slack = 1e-6): boolean => Math.abs(a - b) <= slack * Math.max(1, Math.abs(b));
const figuresOf = (p: GuestsPlan): Figure[] => [p.adults, p.children, p.planned, p.peak];

function everyWorking(f: Figure, seen: (f: Figure, w: Working) => void): void {
  const w = f.working();
  seen(f, w);
  for (const t of w.terms) if (t.figure !== undefined) everyWorking(t.figure, seen);
}

describe('people who come, are there and leave', () => {
  test('come in less go out is who is there, for 300 random events', () => {
    fc.assert(fc.property(waves, (list) => {
      const p = planGuests(eventOf(list));
      const { expected } = p.presence;
      let inside = 0;
      const wrong: number[] = [];
      for (let i = 0; i < expected.length; i += 1) {
        if (!close(expected[i]!, inside) || p.departures.values[i]! < 0) wrong.push(i);
        inside += p.arrivals.values[i]! - p.departures.values[i]!;
      }
      expect(wrong).toEqual([]);
      expect(close(expected.at(-1)!, 0)).toBe(true);
      const come = p.waves.reduce((n, w) => n + Object.values(w.expected).reduce((a, b) => a + b, 0), 0);
      expect(close(p.arrivals.values.reduce((a, b) => a + b, 0), come)).toBe(true);
      expect(close(p.departures.values.reduce((a, b) => a + b, 0), come)).toBe(true);
    }), { numRuns: 300 });
  });

  test('percentiles are in order, never negative, never above the invited', () => {
    fc.assert(fc.property(waves, (list) => {
      const p = planGuests(eventOf(list));
      const invited = p.adults.value + p.children.value;
      const { expected, p10, p90, planning } = p.presence;
      expect([p10.length, p90.length, planning.length]).toEqual([expected.length, expected.length, expected.length]);
      const wrong = expected.flatMap((mean, i) =>
        p10[i]! >= 0 && p10[i]! <= mean && p90[i]! >= mean && p90[i]! <= invited + 1e-9 && planning[i]! >= mean - 1e-9 ? [] : [i]);
      expect(wrong).toEqual([]);
      expect(p.planned.value).toBeLessThanOrEqual(invited + 1e-9);
    }), { numRuns: 300 });
  });

  test('a guest more never lowers any figure or series', () => {
    fc.assert(fc.property(waves.filter((l) => l.length > 0), fc.nat(), fc.constantFrom('adult', 'age4to6', 'under1'), (list, pick, band) => {
      const at = pick % list.length;
      const more = list.map((w, i) => (i === at ? { ...w, counts: { ...w.counts, [band]: (w.counts[band] ?? 0) + 1 } } : w));
      const [a, b] = [planGuests(eventOf(list)), planGuests(eventOf(more))];
      figuresOf(a).forEach((f, i) => expect(figuresOf(b)[i]!.value).toBeGreaterThanOrEqual(f.value - 1e-9));
      for (const side of ['expected', 'p10', 'p90'] as const) {
        const fallen = a.presence[side].filter((x, i) => !(b.presence[side][i]! >= x - 1e-9));
        expect(fallen).toEqual([]);
      }
    }), { numRuns: 200 });
  });

  test('every figure is what its working adds up to, down to named inputs', () => {
    fc.assert(fc.property(waves, (list) => {
      for (const top of figuresOf(planGuests(eventOf(list)))) {
        everyWorking(top, (f, w) => {
          expect(close(recompute(w), f.value, 1e-9) ? 'equal' : `${w.rule}: ${recompute(w)} is not ${f.value}`).toBe('equal');
          expect(w.terms.length).toBeGreaterThan(0);
          expect(isWordId(`rule.${w.rule}`)).toBe(true);
          for (const t of w.terms) {
            expect((t.origin === undefined) !== (t.figure === undefined)).toBe(true);
            expect('text' in t.label || isWordId(t.label.word) ? 'named' : t.label).toBe('named');
          }
        });
      }
    }), { numRuns: 200 });
  });
});

describe('the headcount', () => {
  const list: TestWave[] = [
    { from: 700, to: 760, counts: { adult: 20, age7to9: 5 } },
    { from: 800, to: 860, counts: { adult: 10, olderAdult: 10, age1to3: 5 } },
  ];
  test('is spread over waves and bands and adds up exactly', () => {
    const p = planGuests(eventOf(list, {}, { adults: 90, children: 21 }));
    expect(p.adults.value).toBe(90);
    expect(p.children.value).toBe(21);
    expect(p.waves.map((w) => [w.counts.adult, w.counts.olderAdult])).toEqual([[45, 0], [22, 23]].map((x, i) => (i === 1 ? [23, 22] : x)));
    expect(p.waves.map((w) => w.children)).toEqual([11, 10]);
  });
  test('leaves the waves alone where it is not set', () => {
    const p = planGuests(eventOf(list, {}, { adults: null, children: 0 }));
    expect(p.adults.value).toBe(40);
    expect(p.children.value).toBe(0);
  });
  test('goes to the first wave when the waves name nobody', () => {
    const p = planGuests(eventOf([{ from: 700, to: 760, counts: {} }, { from: 800, to: 830, counts: {} }], {}, { adults: 30, children: 8 }));
    expect(p.waves[0]!.counts).toMatchObject({ adult: 30, age7to9: 8 });
    expect(p.waves[1]!.adults).toBe(0);
  });
  test('any headcount is spread without losing anybody', () => {
    fc.assert(fc.property(waves.filter((l) => l.length > 0), fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 0, max: 900 }), (random, adults, children) => {
      const p = planGuests(eventOf(random, {}, { adults, children }));
      expect(p.adults.value).toBe(adults);
      expect(p.children.value).toBe(children);
      for (const w of p.waves) for (const n of Object.values(w.counts)) expect(Number.isInteger(n) && Number(n) >= 0).toBe(true);
    }), { numRuns: 60 });
  });
});

const one = (kind: unknown, counts: Record<string, number> = { adult: 60, age4to6: 20 }, cover = 0.9) =>
  planGuests(eventOf([{ from: 700, to: 760, counts, turnout: kind }], { preferences: { cover } }));

describe('turnout', () => {
  test('a sure list is planned as it is', () => {
    expect(one({ kind: 'known' }).planned.value).toBe(80);
  });
  test('a share plans for more than expected and less than invited, more for more days', () => {
    const [p80, p95] = [one({ kind: 'share', share: 0.7 }, undefined, 0.8), one({ kind: 'share', share: 0.7 }, undefined, 0.95)];
    expect(p80.planned.value).toBeGreaterThan(56);
    expect(p95.planned.value).toBeGreaterThan(p80.planned.value);
    expect(p95.planned.value).toBeLessThan(80);
    expect(Object.values(p95.waves[0]!.planned).reduce((a, b) => a + b, 0)).toBeCloseTo(p95.planned.value, 9);
  });
  test('single people: the exact binomial number is planned (70 invited, 80 % come: 60 on nine days of ten)', () => {
    // Pairs spread wider than single people: 35 pairs at 0.8, 31 pairs = 62 people.
    expect(one({ kind: 'share', share: 0.8 }, { adult: 70 }).planned.value).toBe(62);
    expect(one({ kind: 'share', share: 0.8 }, { adult: 1 }).planned.value).toBe(1);
  });
  test('a range expects the PERT mean and stays within it', () => {
    const p = one({ kind: 'range', low: 40, likely: 60, high: 70 });
    expect(Object.values(p.waves[0]!.expected).reduce((a, b) => a + b, 0)).toBeCloseTo((40 + 240 + 70) / 6, 9);
    expect(p.planned.value).toBeGreaterThan(60);
    expect(p.planned.value).toBeLessThanOrEqual(70);
  });
  test('uncertain waves are pooled: the reserve of two is less than twice the reserve of one', () => {
    const wave: TestWave = { from: 700, to: 760, counts: { adult: 60 }, turnout: { kind: 'share', share: 0.7 } };
    const reserve = (n: number): number => planGuests(eventOf(Array.from({ length: n }, () => wave))).planned.value - 42 * n;
    expect(reserve(2)).toBeLessThan(2 * reserve(1));
    expect(reserve(2)).toBeGreaterThan(reserve(1) - 1);
  });
});

describe('a range under a headcount set as a whole', () => {
  test.each([0, 30, 60])('headcount %i: the guess grows or shrinks with the wave and the working still adds up', (adults) => {
    const p = planGuests(eventOf([{ from: 700, to: 760, counts: { adult: 60 }, turnout: { kind: 'range', low: 40, likely: 50, high: 60 } }], {}, { adults, children: null }));
    expect(Object.values(p.waves[0]!.expected).reduce((a, b) => a + b, 0)).toBeCloseTo((50 * adults) / 60, 9);
    everyWorking(p.planned, (f, w) => expect(recompute(w)).toBeCloseTo(f.value, 9));
  });
});

describe('large crowds', () => {
  test('percentiles of 5,000 people lie where a normal curve puts them', () => {
    const p = planGuests(eventOf([{ from: 700, to: 760, counts: { adult: 4000, age4to6: 1000 }, turnout: { kind: 'share', share: 0.8 }, stay: [120, 180, 240] }]));
    const at = 780 - p.presence.fromMinute;
    expect(p.presence.expected[at]).toBeCloseTo(4000, 6);
    // 500 families of four, 1,500 couples: variance 0.16 × (500 × 16 + 1500 × 4) = 2240, deviation 47.3.
    expect(Math.abs(p.presence.p90[at]! - (4000 + 1.2816 * 47.3))).toBeLessThan(8);
    expect(Math.abs(p.presence.p10[at]! - (4000 - 1.2816 * 47.3))).toBeLessThan(8);
    expect(recompute(p.planned.working())).toBeCloseTo(p.planned.value, 6);
  });
  test('a headcount of 20,000 is planned in well under a second', () => {
    const start = performance.now();
    const p = planGuests(eventOf([{ from: 700, to: 760, counts: { adult: 5 }, turnout: { kind: 'share', share: 0.8 } }], {}, { adults: 20000, children: 0 }));
    expect(p.adults.value).toBe(20000);
    expect(performance.now() - start).toBeLessThan(500);
  });
});
