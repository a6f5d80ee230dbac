import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import { recompute } from '../../../shared/figure';
import { planDay, type TimelinePlan } from '../../../shared/timeline';
import { atHome, faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';
import { anyDay } from './random-days';

const planOf = (day: TestDay): { plan: TimelinePlan; faults: string[] } => {
  const event = dayEvent(day);
  const plan = planDay(event, inputsOf(day, event));
  return { plan, faults: faultsOf(event, plan) };
};
const task = (plan: TimelinePlan, id: string) => plan.tasks.find((t) => t.id === id)!;

describe('any day', () => {
  test('an independent reader finds nobody and nothing over-booked and the order kept, for 250 random days', () => {
    fc.assert(fc.property(anyDay, (d) => {
      expect(planOf(d).faults).toEqual([]);
    }), { numRuns: 250 });
  });

  test('steps end inside their windows, or the day says which do not', () => {
    fc.assert(fc.property(anyDay, (d) => {
      const { plan } = planOf(d);
      const excused = new Set(plan.overloads.map((o) => o.task));
      for (const x of d.dishes ?? []) {
        for (const s of x.steps) {
          const own = plan.tasks.filter((t) => t.dish === x.id && t.kind === 'step' && t.id.startsWith(`step/${s.id}/`));
          const first = plan.tasks.filter((t) => t.kind === 'fry' && t.dish === x.id).map((t) => Number(t.start));
          const served = Math.floor(first.length > 0 ? Math.min(...first) : x.at);
          const end = Math.max(...own.map((t) => t.end));
          if (own.length === 0 || own.some((t) => excused.has(t.id))) continue;
          expect(end).toBeLessThanOrEqual(served - (s.endsBefore?.latest ?? 0) + 1e-6);
          expect(end).toBeGreaterThanOrEqual(served - (s.endsBefore?.earliest ?? 20160) - 1e-6);
        }
      }
    }), { numRuns: 150 });
  });

  test('a job without a person that needs one is named, one by one or together', () => {
    fc.assert(fc.property(anyDay, (d) => {
      const { plan } = planOf(d);
      const bare = plan.tasks.filter((t) => t.attention > 0 && t.who.length === 0 && t.kind !== 'shop' && t.kind !== 'oilAway');
      expect(bare.length === 0 || plan.overloads.length > 0).toBe(true);
      for (const o of plan.overloads) expect(plan.tasks.some((t) => t.id === o.task)).toBe(true);
    }), { numRuns: 150 });
  });

  test('the same day twice is the same plan; tasks are in order of start', () => {
    fc.assert(fc.property(anyDay, (d) => {
      const [a, b] = [planOf(d).plan, planOf(d).plan];
      expect(b.tasks).toEqual(a.tasks);
      expect(a.tasks.map((t) => t.start)).toEqual(a.tasks.map((t) => t.start).toSorted((x, y) => x - y));
    }), { numRuns: 40 });
  });

  test('busy minutes add up and lie within the hours; jobs without slack are the critical ones', () => {
    fc.assert(fc.property(anyDay, (d) => {
      const { plan } = planOf(d);
      for (const { person: id, minutes } of plan.busy) {
        const p = d.people.find((x) => x.id === id)!;
        expect(recompute(minutes.working())).toBeCloseTo(minutes.value, 9);
        const elsewhere = plan.tasks.filter((t) => atHome(t) && t.who.includes(id)).reduce((n, t) => n + t.end - t.start, 0);
        expect(minutes.value).toBeLessThanOrEqual(p.to - p.from + elsewhere + 1e-6);
      }
      expect(plan.critical).toEqual(plan.tasks.filter((t) => t.slack === 0).map((t) => t.id));
    }), { numRuns: 120 });
  });
});

const crew = [
  { id: 'ana', roles: ['cook'], from: 480, to: 1200 }, { id: 'ben', roles: ['fryer'], from: 600, to: 1200 },
  { id: 'cy', roles: ['tea'], from: 600, to: 1200 }, { id: 'di', roles: ['runner'], from: 540, to: 1200 },
];

const folding = (id: string) => ({ id, at: 780, steps: [{ id: 'fold', active: 60, endsBefore: { earliest: 0, latest: 0 } }] });

describe('a small day', () => {
  test('steps stand just in time before serving, in order, a little early where there is room', () => {
    const { plan, faults } = planOf({ people: crew, dishes: [{ id: 'rice', at: 780, steps: [
      { id: 'wash', active: 10, by: 'cook', endsBefore: { earliest: 300, latest: 0 } },
      { id: 'boil', active: 5, passive: 20, by: 'cook', needs: [{ thing: 'burner', count: 1 }], after: ['wash'], endsBefore: { earliest: 60, latest: 10 } },
    ] }] });
    expect(faults).toEqual([]);
    expect(plan.overloads).toEqual([]);
    expect(task(plan, 'step/boil/rice/by-itself')).toMatchObject({ start: 740, end: 760, who: [], attention: 0, needs: [{ thing: 'burner', count: 1 }], slack: 10 });
    expect(task(plan, 'step/boil/rice')).toMatchObject({ start: 735, end: 740, who: ['ana'] });
    expect(task(plan, 'step/wash/rice')).toMatchObject({ start: 720, end: 730, who: ['ana'], slack: 15 });
  });

  test('one burner: two pots follow each other', () => {
    const step1 = { id: 'boil', active: 5, passive: 30, needs: [{ thing: 'burner', count: 1 }], endsBefore: { earliest: 120, latest: 0 } };
    const { plan, faults } = planOf({ people: crew, burners: 1, dishes: [{ id: 'a', at: 780, steps: [step1] }, { id: 'b', at: 780, steps: [step1] }] });
    expect(faults).toEqual([]);
    expect(plan.overloads).toEqual([]);
    const [x, y] = [task(plan, 'step/boil/a/by-itself'), task(plan, 'step/boil/b/by-itself')];
    expect(Math.abs(x.end - y.end)).toBeGreaterThanOrEqual(35);
  });

  test('long work is cut into parts that helpers share', () => {
    const { plan } = planOf({ people: crew, dishes: [{ id: 'onions', at: 780, steps: [{ id: 'slice', active: 120, endsBefore: { earliest: 30, latest: 0 } }] }] });
    const parts = plan.tasks.filter((t) => t.kind === 'step');
    expect(parts.map((t) => t.end - t.start)).toEqual([60, 60]);
    expect(new Set(parts.flatMap((t) => t.who)).size).toBeGreaterThan(1);
  });

  test('the fryer stays at the oil from heat-on to heat-off and does nothing else; another mixes the bowls', () => {
    const { plan, faults } = planOf({
      people: crew, dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }],
      stations: [{ on: 700, ready: 715, off: 800, drops: [720, 730, 745], cycle: 5 }], bowls: [{ mixAt: 708, readyAt: 716 }, { mixAt: 735, readyAt: 743 }],
    });
    expect(faults).toEqual([]);
    const watch = plan.tasks.filter((t) => t.kind === 'watchOil');
    expect(watch).toHaveLength(1);
    expect(watch[0]).toMatchObject({ start: 700, end: 800, who: ['ben'], slack: 0, needs: [{ thing: 'burner:b0', count: 1 }] });
    expect(plan.tasks.filter((t) => t.kind === 'fry').map((t) => [t.start, t.end, t.who[0], t.attention + watch[0]!.attention])).toEqual([[720, 725, 'ben', 1], [730, 735, 'ben', 1], [745, 750, 'ben', 1]]);
    for (const t of plan.tasks.filter((x) => x.kind === 'bowl')) expect(t.who[0]).not.toBe('ben');
    const others = plan.tasks.filter((t) => t.who.includes('ben') && t.start < 800 && t.end > 700 && !['watchOil', 'fry', 'heatOil'].includes(t.kind));
    expect(others).toEqual([]);
  });

  test('when the fryer goes home the next one takes over between two batches', () => {
    const people = [{ id: 'eve', roles: ['fryer'], from: 600, to: 742 }, { id: 'fay', roles: ['fryer'], from: 700, to: 1200 }, ...crew.filter((p) => p.id !== 'ben')];
    const { plan, faults } = planOf({ people: people.map((p) => (p.id === 'fay' ? { ...p, from: 735 } : p)), dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }], stations: [{ on: 700, ready: 715, off: 800, drops: [720, 738, 750], cycle: 6 }] });
    expect(faults).toEqual([]);
    expect(plan.overloads).toEqual([]);
    expect(plan.tasks.filter((t) => t.kind === 'watchOil').map((t) => [t.who[0], t.start, t.end])).toEqual([['eve', 700, 738], ['fay', 738, 800]]);
    expect(plan.tasks.filter((t) => t.kind === 'fry').map((t) => t.who[0])).toEqual(['eve', 'fay', 'fay']);
  });

  test('nobody for the second station: it says so and gives the job to nobody', () => {
    const { plan, faults } = planOf({
      people: [{ id: 'ben', roles: ['fryer'], from: 600, to: 1200 }], dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }],
      stations: [{ on: 700, ready: 715, off: 800, drops: [720], cycle: 5 }, { on: 700, ready: 715, off: 800, drops: [720], cycle: 5 }],
    });
    expect(faults).toEqual([]);
    expect(plan.tasks.filter((t) => t.kind === 'watchOil').map((t) => t.who.length)).toEqual([1, 0]);
    expect(plan.overloads.find((o) => o.task === 'watch/pan1/1/1')?.message).toMatchObject({ id: 'timeline.overload.oil', params: { from: 700, to: 800, atOil: 1 } });
  });

  test('no helpers at all: one sentence, not one for each job', () => {
    const { plan } = planOf({ people: [], dishes: [{ id: 'rice', at: 780, steps: [{ id: 'wash', active: 10 }, { id: 'boil', active: 5 }] }] });
    expect(plan.overloads.map((o) => o.message.id)).toEqual(['timeline.overload.noHelpers']);
    expect(plan.tasks.some((t) => t.id === 'step/wash/rice')).toBe(true);
  });

  test('a thing the kitchen does not have is named with how many it lists', () => {
    const { plan } = planOf({ people: crew, dishes: [{ id: 'rice', at: 780, steps: [{ id: 'bake', active: 10, needs: [{ thing: 'oven', count: 3 }] }] }] });
    expect(plan.overloads[0]?.message).toMatchObject({ id: 'timeline.overload.thing', params: { thing: 'oven', wanted: 3, has: 1 } });
    expect(task(plan, 'step/bake/rice').needs).toEqual([]);
  });

  test('a busy hour: a job without anybody is not called late', () => {
    const only = [{ id: 'ana', roles: ['cook'], from: 600, to: 1200 }];
    const { plan, faults } = planOf({ people: only, dishes: ['a', 'b', 'c', 'd', 'e'].map(folding) });
    expect(faults).toEqual([]);
    expect(plan.overloads.some((o) => o.message.id === 'timeline.overload.early')).toBe(true);
    expect(plan.overloads.some((o) => o.message.id === 'timeline.overload.nobody')).toBe(true);
    expect(plan.overloads.filter((o) => o.message.id === 'timeline.overload.nobody' && o.lateMinutes > 0)).toEqual([]);
  });

  test('brewing: hands on, by itself on its burner until it has boiled, hands on; fills stand at their very minute, each with somebody', () => {
    const { plan, faults } = planOf({ people: crew, dishes: [{ id: 'rice', at: 780, steps: [] }], rounds: [{ startAt: 660, readyAt: 700 }], fills: [{ at: 700, trips: 2 }, { at: 700, trips: 1 }] });
    expect(faults).toEqual([]);
    expect(plan.tasks.filter((t) => t.kind === 'brew').map((t) => [t.start, t.end, t.attention, t.who[0]])).toEqual([[660, 665, 0.8, 'cy'], [665, 680, 0, undefined], [680, 695, 0, undefined], [695, 700, 0.8, 'cy']]);
    expect(plan.tasks.filter((t) => t.kind === 'brew').map((t) => t.needs.map((n) => n.thing))).toEqual([['pot:p2', 'burner:b3'], ['pot:p2', 'burner:b3'], ['pot:p2'], ['pot:p2']]);
    expect(plan.tasks.filter((t) => t.kind === 'fill').map((t) => [t.start, t.end, t.who[0]])).toEqual([[700, 706, 'cy'], [700, 703, 'di']]);
  });

  test('the oil is put away after it has stood, though everybody has gone home', () => {
    const { plan } = planOf({ people: crew, dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }], stations: [{ on: 700, ready: 715, off: 800, drops: [720], cycle: 5 }] });
    const away = plan.tasks.find((t) => t.kind === 'oilAway')!;
    expect(away.start).toBe(800 + 12 * 60);
    expect(away.note?.id).toBe('timeline.note.household');
    expect(plan.overloads.some((o) => o.task === away.id)).toBe(false);
  });
});
