import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { eventSchema, type DayChanges, type Event } from '../../../shared/event';
import { planDay, type TimelinePlan } from '../../../shared/timeline';
import { sayMessage } from '../../../shared/words';
import { formatsFor } from '../../../shared/event';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const crew = [{ id: 'ana', roles: ['cook'], from: 420, to: 1200 }, { id: 'ben', roles: ['runner'], from: 420, to: 1200 }];
const rice: TestDay = {
  people: crew,
  dishes: [{ id: 'rice', at: 780, steps: [{ id: 'wash', active: 10, by: 'runner' }, { id: 'boil', active: 5, passive: 30, needs: [{ thing: 'burner', count: 1 }, { thing: 'pot', count: 1 }], after: ['wash'] }, { id: 'fluff', active: 5, after: ['boil'] }] }],
};
const withDay = (d: TestDay, part: { ownJobs?: unknown[]; changes?: unknown[] }): Event => eventSchema.parse({ ...dayEvent(d), dayJobs: part });
const planned = (d: TestDay, part: { ownJobs?: unknown[]; changes?: unknown[] } = {}): TimelinePlan => { const event = withDay(d, part); return planDay(event, inputsOf(d, event)); };
const task = (day: TimelinePlan, id: string) => { const found = day.tasks.find((t) => t.id === id); if (found === undefined) throw new Error(`no ${id}`); return found; };
const clash = (day: TimelinePlan, id: string) => day.overloads.find((o) => o.task === id);

describe('a job that is pinned', () => {
  test('stands at its minute, and what comes before and after goes round it', () => {
    const day = planned(rice, { changes: [{ job: 'step/boil/rice', at: 640 }] });
    expect([task(day, 'step/boil/rice').start, task(day, 'step/boil/rice').held]).toEqual([640, 'pinned']);
    expect(task(day, 'step/wash/rice').end).toBeLessThanOrEqual(640);
    expect(task(day, 'step/fluff/rice').start).toBeGreaterThanOrEqual(675);
    expect(day.overloads).toEqual([]);
  });
  test('too late for what waits for it stays, and says for which job', () => {
    const day = planned(rice, { changes: [{ job: 'step/boil/rice', at: 760 }] });
    expect(task(day, 'step/boil/rice').start).toBe(760);
    const told = clash(day, 'step/boil/rice');
    expect(told?.message.id).toBe('timeline.pin.after');
    expect(told?.also).toEqual(['step/fluff/rice']);
  });
  test('at the same minute as another pinned job of the only helper names that job', () => {
    const alone = { ...rice, people: [crew[0]!] };
    const day = planned(alone, { ownJobs: [{ id: 'call', name: 'Call the bakery', minutes: 20 }], changes: [{ job: 'own/call', at: 640 }, { job: 'step/boil/rice', at: 640 }] });
    const told = day.overloads.find((o) => o.message.id === 'timeline.pin.nobody');
    expect(told).toBeDefined();
    const [a = '', b = ''] = [told?.task, told?.also[0]];
    expect([a, b].toSorted()).toEqual(['own/call', 'step/boil/rice']);
    expect(task(day, 'own/call').start).toBe(640);
    expect(task(day, 'step/boil/rice').start).toBe(640);
    // True clash: without one of the two the other is done.
    expect(planned(alone, { changes: [{ job: 'step/boil/rice', at: 640 }] }).overloads).toEqual([]);
  });
  test('for somebody who is not there says their hours, and somebody else does it', () => {
    const day = planned(rice, { ownJobs: [{ id: 'call', name: 'Call', minutes: 20 }], changes: [{ job: 'own/call', at: 640, who: 'late' }, { job: 'step/wash/rice', at: 650, who: 'nobody-known' }] });
    expect(task(day, 'own/call').who).not.toEqual([]);
    const people = [...crew, { id: 'late', roles: ['cook'], from: 900, to: 1200 }];
    const other = planned({ ...rice, people }, { ownJobs: [{ id: 'call', name: 'Call', minutes: 20 }], changes: [{ job: 'own/call', at: 640, who: 'late' }] });
    expect(clash(other, 'own/call')?.message).toEqual({ id: 'timeline.pin.away', params: { held: 'pinned', at: 640, person: 'late', from: 900, to: 1200 } });
    expect(task(other, 'own/call').who).toHaveLength(1);
  });
  test('needing a burner that is taken names what takes it', () => {
    const one = { ...rice, burners: 1, dishes: [...(rice.dishes ?? []), { id: 'soup', at: 780, steps: [{ id: 'heat', active: 5, passive: 20, needs: [{ thing: 'burner', count: 1 }] }] }] };
    const day = planned(one, { changes: [{ job: 'step/boil/rice', at: 640 }, { job: 'step/heat/soup', at: 650 }] });
    const told = day.overloads.find((o) => o.message.id === 'timeline.pin.thing');
    expect(told?.task).toBe('step/heat/soup');
    expect(told?.also.some((id) => id.startsWith('step/boil/rice'))).toBe(true);
  });
});

describe('a job that is given to somebody', () => {
  test('is theirs, whatever its role', () => {
    for (const who of ['ana', 'ben']) {
      const day = planned(rice, { changes: [{ job: 'step/fluff/rice', who }, { job: 'set-up/tables', who }] });
      expect(task(day, 'step/fluff/rice').who).toEqual([who]);
      expect(task(day, 'set-up/tables').who).toEqual([who]);
      expect(task(day, 'step/fluff/rice').given).toBe(true);
    }
  });
  test('and cannot be done by them in its time says so', () => {
    const people = [...crew, { id: 'late', roles: ['cook'], from: 1000, to: 1200 }];
    const day = planned({ ...rice, people }, { changes: [{ job: 'step/fluff/rice', who: 'late' }] });
    expect(clash(day, 'step/fluff/rice')?.message.id).toBe('timeline.pin.assignedAway');
    expect(task(day, 'step/fluff/rice').who).toHaveLength(1);
  });
});

describe('length, parts, switched off', () => {
  test('takes as long as the cook says; what runs by itself stays', () => {
    const day = planned(rice, { changes: [{ job: 'step/boil/rice', minutes: 25 }] });
    const boil = task(day, 'step/boil/rice');
    const rest = task(day, 'step/boil/rice/by-itself');
    expect([boil.end - boil.start, rest.end - rest.start]).toEqual([25, 30]);
  });
  test('in parts: minutes add up, what waited waits for all of them, each part can be given away', () => {
    const cut: TestDay = { people: crew, dishes: [{ id: 'slaw', at: 780, steps: [{ id: 'cut', active: 50 }, { id: 'dress', active: 5, after: ['cut'] }] }] };
    const day = planned(cut, { changes: [{ job: 'step/cut/slaw', parts: 3 }, { job: 'step/cut/slaw/part2', who: 'ben' }] });
    const parts = day.tasks.filter((t) => t.id.startsWith('step/cut/slaw/part'));
    expect(parts.map((t) => t.end - t.start).toSorted((a, b) => a - b)).toEqual([16, 17, 17]);
    expect(task(day, 'step/cut/slaw/part2').who).toEqual(['ben']);
    for (const p of parts) expect(p.end).toBeLessThanOrEqual(task(day, 'step/dress/slaw').start);
  });
  test('switched off is gone, said plainly, and the rest keeps its order', () => {
    const day = planned(rice, { changes: [{ job: 'step/boil/rice', off: true }] });
    expect(day.tasks.some((t) => t.id.startsWith('step/boil'))).toBe(false);
    expect(day.off.map((o) => [o.job, o.message.id])).toEqual([['step/boil/rice', 'timeline.off.step']]);
    expect(task(day, 'step/fluff/rice').after).toEqual(['step/wash/rice']);
    const event = dayEvent(rice);
    expect(sayMessage(formatsFor(event.preferences, event.day), day.off[0]!.message)).toContain('rice: boil');
  });
  test('a change of a job that is not there changes nothing', () => {
    expect(planned(rice, { changes: [{ job: 'step/none/rice', at: 600, off: true }] }).tasks).toEqual(planned(rice).tasks);
  });
});

describe('a job of the cook\u2019s own', () => {
  test('is done in its window by its role, with its things', () => {
    const day = planned(rice, { ownJobs: [{ id: 'ice', name: 'Fetch ice', minutes: 25, role: 'runner', from: 600, to: 660, needs: [{ thing: 'counter', count: 1 }] }] });
    const ice = task(day, 'own/ice');
    expect(ice.kind).toBe('own');
    expect(ice.start).toBeGreaterThanOrEqual(600);
    expect(ice.end).toBeLessThanOrEqual(660);
    expect([ice.who, ice.needs]).toEqual([['ben'], [{ thing: 'counter', count: 1 }]]);
  });
  test('on a day before is the household\u2019s; with only an end it is done just in time', () => {
    const day = planned(rice, { ownJobs: [{ id: 'a', name: 'Borrow chairs', minutes: 60, from: -600, to: -300 }, { id: 'b', name: 'Light candles', minutes: 10, to: 715 }] });
    expect([task(day, 'own/a').who, task(day, 'own/a').note?.id]).toEqual([['ana'], 'timeline.note.household']);
    expect(task(day, 'own/b').end).toBeLessThanOrEqual(715);
    expect(task(day, 'own/b').end).toBeGreaterThan(660);
  });
});

describe('whatever the cook lays down', () => {
  const change = fc.record({
    job: fc.constantFrom('step/wash/rice', 'step/boil/rice', 'step/fluff/rice', 'set-up/tables', 'clean/kitchen', 'own/x', 'rest/ana/meal', 'check/doors'),
    at: fc.option(fc.integer({ min: -400, max: 1300 }), { nil: undefined }), who: fc.option(fc.constantFrom('ana', 'ben'), { nil: undefined }),
    minutes: fc.option(fc.integer({ min: 1, max: 120 }), { nil: undefined }), parts: fc.option(fc.integer({ min: 2, max: 4 }), { nil: undefined }), off: fc.option(fc.boolean(), { nil: undefined }),
  });
  test('nobody and nothing is booked twice, pins stand, and the same day comes out again', () => {
    fc.assert(fc.property(fc.uniqueArray(change, { selector: (c) => c.job, maxLength: 6 }), (raw) => {
      const changes: DayChanges['changes'] = JSON.parse(JSON.stringify(raw));
      const part = { ownJobs: [{ id: 'x', name: 'Own', minutes: 30 }], changes };
      const event = withDay(rice, part);
      const day = planDay(event, inputsOf(rice, event));
      // Order may be broken only by what is pinned against it, and that is told.
      const pinned = changes.some((c) => c.at !== undefined);
      const faults = faultsOf(event, day).filter((f) => !(pinned && f.includes(' starts before ')) && !(pinned && f.includes('outside the hours')));
      expect(faults).toEqual([]);
      // A job in parts stands at no minute of its own; each part can.
      const whole = changes.filter((c) => c.at !== undefined && c.off !== true && c.parts === undefined);
      const starts = whole.flatMap((c) => { const own = day.tasks.filter((t) => t.job === c.job); return own.length === 0 ? [] : [[c.job, c.at, Math.min(...own.map((t) => t.start))]]; });
      expect(starts.filter(([, at, start]) => at !== start)).toEqual([]);
      expect(JSON.stringify(planDay(event, inputsOf(rice, event)))).toBe(JSON.stringify(day));
    }), { numRuns: 120 });
  });
});
