import { describe, expect, test } from 'vitest';
import type { Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { planDay, type TimelinePlan } from '../../../shared/timeline';
import { plainEvent } from '../shelf/plain-kitchen';
import { starter, starterShelf } from '../shelf/starter';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const planOf = (d: TestDay): { plan: TimelinePlan; faults: string[] } => {
  const event = dayEvent(d);
  const day = planDay(event, inputsOf(d, event));
  return { plan: day, faults: faultsOf(event, day) };
};
/** The same event, with everybody there only from eight in the morning to ten at night of the day. */
const onTheDay = (event: Event): Event => ({ ...event, people: event.people.map((p) => ({ ...p, from: 480, to: 1320 })) });
const crew = [{ id: 'ben', roles: ['fryer'], from: 600, to: 1200 }, { id: 'ana', roles: ['cook'], from: 480, to: 1200 }];
const soak = { id: 'soak', active: 5, passive: 480, endsBefore: { earliest: 1440, latest: 720 } };

describe('a kidney-bean pot with helpers on the day only', () => {
  const event = onTheDay(plainEvent(starter('kidney-bean-pot'), 24));
  const { day } = plan(event);
  test('is soaked from the evening before: the five minutes are the first cook\u2019s, and nothing is overloaded', () => {
    expect(day.overloads).toEqual([]);
    const hands = day.tasks.find((t) => t.id === 'step/soak/dish')!;
    expect(hands.who).toEqual([event.people[0]!.id]);
    expect(hands.note?.id).toBe('timeline.note.household');
    expect(hands.start).toBeLessThan(0);
    expect(hands.start).toBeGreaterThanOrEqual(-1440 + 7 * 60);
    expect(hands.end).toBeLessThanOrEqual(-120);
    const alone = day.tasks.find((t) => t.id === 'step/soak/dish/by-itself')!;
    expect([alone.start, alone.end - alone.start, alone.who]).toEqual([hands.end, 480, []]);
  });
  test('is shopped for before the beans go into the water', () => {
    const soaked = day.tasks.find((t) => t.id === 'step/soak/dish')!.start;
    for (const t of day.tasks.filter((x) => x.kind === 'shop')) expect(t.end).toBeLessThanOrEqual(soaked);
  });
  test('keeps people and things apart', () => expect(faultsOf(event, day)).toEqual([]));
});

describe('every recipe of the starter shelf with helpers on the day only', () => {
  test.each(starterShelf.recipes.map((r) => [r.id, r] as const))('%s: what begins on a day before lies outside nobody\u2019s hours', (_id, r) => {
    const { day } = plan(onTheDay(plainEvent(r, 24)));
    const before = new Set(day.tasks.filter((t) => t.start < 0).map((t) => t.id));
    expect(day.overloads.filter((o) => before.has(o.task))).toEqual([]);
  });
});

const beansAt = (at: number): TestDay => ({ people: crew, dishes: [{ id: 'beans', at, steps: [soak] }] });

describe('a step that may begin on a day before', () => {
  test('is begun as late as its window and the evening allow, never at night', () => {
    // Served at 12:00: done by 00:00, so begun at 15:55 the day before. Served at 20:00: done by 08:00, begun before ten at night.
    expect(planOf(beansAt(720)).plan.tasks.find((t) => t.id === 'step/soak/beans')).toMatchObject({ start: -485, who: ['ana'] });
    expect(planOf(beansAt(1200)).plan.tasks.find((t) => t.id === 'step/soak/beans')).toMatchObject({ start: -125, end: -120, who: ['ana'] });
  });
  test('follows the household\u2019s own evening', () => {
    const d = beansAt(1200);
    const event = { ...dayEvent(d), houseFigures: [{ figure: 'day.householdTo', value: 1260, unit: 'min', why: 'Early nights.' }] };
    expect(planDay(event, inputsOf(d, event)).tasks.find((t) => t.id === 'step/soak/beans')).toMatchObject({ end: -180 });
  });
  test('two of them are not done in the same minutes', () => {
    const { plan: day, faults } = planOf({ people: crew.map((p) => ({ ...p, to: 1320 })), dishes: ['a', 'b'].map((id) => ({ id, at: 1200, steps: [soak] })) });
    expect(day.tasks.filter((t) => t.attention > 0 && t.kind === 'step').map((t) => [t.start, t.end])).toEqual([[-130, -125], [-125, -120]]);
    expect([faults, day.overloads]).toEqual([[], []]);
  });
  test('is a helper\u2019s when one is there the day before', () => {
    const { plan: day } = planOf({ people: [...crew, { id: 'zoe', roles: ['cook'], from: -600, to: 1200 }], dishes: [{ id: 'beans', at: 720, steps: [soak] }] });
    expect(day.tasks.find((t) => t.id === 'step/soak/beans')).toMatchObject({ who: ['zoe'] });
    expect(day.tasks.find((t) => t.id === 'step/soak/beans')!.note).toBeUndefined();
  });
  test('that has to be done on the day itself still says that nobody is there', () => {
    const late = { ...soak, passive: 30, endsBefore: { earliest: 420, latest: 400 } };
    const { plan: day } = planOf({ people: crew, dishes: [{ id: 'beans', at: 720, steps: [late] }] });
    expect(day.overloads.map((o) => o.message.id)).toEqual(['timeline.overload.outside']);
  });
  test('without anybody in the list is named with the rest', () => {
    expect(planOf({ ...beansAt(720), people: [] }).plan.overloads.map((o) => o.message.id)).toEqual(['timeline.overload.noHelpers']);
  });
});
