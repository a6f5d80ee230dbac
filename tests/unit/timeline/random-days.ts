import * as fc from 'fast-check';
import type { TestDay, TestStep } from './make-day';

const person = fc.record({
  roles: fc.subarray(['cook', 'fryer', 'tea', 'runner', 'aunt'], { minLength: 1 }), from: fc.integer({ min: 300, max: 700 }), hours: fc.integer({ min: 120, max: 840 }),
});
const step = fc.record({
  active: fc.integer({ min: 0, max: 150 }), passive: fc.integer({ min: 0, max: 90 }), passiveAttention: fc.constantFrom(0, 0.1, 0.3, 1),
  by: fc.constantFrom(undefined, 'cook', 'runner', 'baker'), thing: fc.constantFrom('burner', 'pot', 'counter', 'oven', 'none'), count: fc.integer({ min: 1, max: 2 }),
  after: fc.array(fc.nat(5), { maxLength: 2 }), latest: fc.integer({ min: 0, max: 120 }), width: fc.integer({ min: 0, max: 400 }), window: fc.boolean(),
});
const dish = fc.record({ at: fc.integer({ min: 700, max: 1000 }), kg: fc.integer({ min: 1, max: 20 }), steps: fc.array(step, { maxLength: 5 }) });
const station = fc.record({
  on: fc.integer({ min: 600, max: 760 }), heat: fc.integer({ min: 8, max: 25 }), cycle: fc.constantFrom(5, 5.5, 6), gaps: fc.array(fc.integer({ min: 0, max: 30 }), { maxLength: 25 }),
});
/** Any kitchen with any people, steps, oil, bowls and rounds. */
export const anyDay: fc.Arbitrary<TestDay> = fc.record({
  people: fc.array(person, { maxLength: 6 }), burners: fc.integer({ min: 1, max: 5 }), pots: fc.integer({ min: 1, max: 4 }), counterPlaces: fc.integer({ min: 1, max: 4 }),
  dishes: fc.array(dish, { minLength: 1, maxLength: 6 }), stations: fc.array(station, { maxLength: 2 }),
  bowls: fc.array(fc.integer({ min: 620, max: 1000 }), { maxLength: 6 }), rounds: fc.array(fc.integer({ min: 620, max: 1000 }), { maxLength: 4 }),
  fills: fc.array(fc.record({ at: fc.integer({ min: 700, max: 1000 }), trips: fc.integer({ min: 1, max: 4 }) }), { maxLength: 4 }),
}).map((d) => ({
  ...d,
  people: d.people.map((p, i) => ({ id: `h${i}`, roles: p.roles, from: p.from, to: p.from + p.hours })),
  dishes: d.dishes.map((x, i) => ({
    id: `d${i}`, at: x.at, kg: x.kg,
    steps: x.steps.map((s, k): TestStep => ({
      id: `s${k}`, active: s.active, passive: s.passive, passiveAttention: s.passiveAttention,
      ...(s.by === undefined ? {} : { by: s.by }), needs: s.thing === 'none' ? [] : [{ thing: s.thing, count: s.count }],
      after: [...new Set(s.after.filter((a) => a < k).map((a) => `s${a}`))],
      ...(s.window ? { endsBefore: { earliest: s.latest + s.width, latest: s.latest } } : {}),
    })),
  })),
  stations: d.stations.map((s) => {
    const drops: number[] = [];
    let at = s.on + s.heat;
    for (const gap of s.gaps) {
      drops.push(at + gap);
      at += gap + s.cycle;
    }
    return { on: s.on, ready: s.on + s.heat, off: at + 5, drops, cycle: s.cycle };
  }),
  bowls: d.bowls.map((mixAt) => ({ mixAt, readyAt: mixAt + 8 })),
  rounds: d.rounds.map((startAt) => ({ startAt, readyAt: startAt + 35 })),
}));
