import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { addOwnJob, changeJob, changeOwnJob, holdJobs, letGoOfPrinted, removeOwnJob, removePerson, takeDayOrder, takeRemedy, type EditResult } from '../../../shared/edit';
import { dayOf, eventSchema, parseEvent, serialiseEvent, type Event } from '../../../shared/event';

const lantern = eventSchema.parse(JSON.parse(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8')));
const done = (answer: EditResult): Event => { if ('problem' in answer) throw new Error(answer.problem.id); return answer.event; };
const problem = (answer: EditResult) => ('problem' in answer ? answer.problem.id : null);
const rice = { key: 'step/boil/rice', name: 'Boil rice' };

describe('own jobs', () => {
  test('are added, changed and taken out, and nothing stays behind', () => {
    const added = done(addOwnJob(lantern, { id: 'job-1', name: 'Fetch ice', minutes: 20 }));
    expect(dayOf(added).ownJobs).toEqual([{ id: 'job-1', name: 'Fetch ice', minutes: 20, needs: [] }]);
    const pinned = done(changeJob(done(changeOwnJob(added, 'job-1', { from: 600, role: 'runner' })), { key: 'own/job-1', name: 'Fetch ice' }, { at: 610 }));
    expect(dayOf(pinned).changes).toHaveLength(1);
    const gone = done(removeOwnJob(pinned, 'job-1'));
    expect(serialiseEvent(gone)).toBe(serialiseEvent(lantern));
  });
  test('have a name of their own and at least a minute', () => {
    const added = done(addOwnJob(lantern, { id: 'job-1', name: 'Fetch ice' }));
    expect(problem(addOwnJob(added, { id: 'job-1', name: 'Twice' }))).toBe('event.twice');
    expect(problem(changeOwnJob(added, 'job-1', { minutes: 0 }))).not.toBeNull();
    expect(problem(changeOwnJob(added, 'job-2', { minutes: 5 }))).toBe('edit.gone');
  });
});

describe('what is laid down about a job', () => {
  test('gathers in one row, and the row goes when it says nothing more', () => {
    const both = done(changeJob(done(changeJob(lantern, rice, { at: 680 })), rice, { who: 'cook', minutes: 8 }));
    expect(dayOf(both).changes).toEqual([{ job: 'step/boil/rice', at: 680, who: 'cook', minutes: 8 }]);
    const free = done(changeJob(done(changeJob(both, rice, { at: undefined, who: undefined })), rice, { minutes: undefined }));
    expect(serialiseEvent(free)).toBe(serialiseEvent(lantern));
    expect(done(changeJob(done(changeJob(lantern, rice, { off: true })), rice, { off: undefined })).dayJobs).toBeUndefined();
  });
  test('survives the file', () => {
    const laid = done(changeJob(lantern, rice, { at: 680, parts: 2 }));
    const again = parseEvent(serialiseEvent(laid));
    expect(again.ok && dayOf(again.event)).toEqual(dayOf(laid));
  });
  test('leaves the hot oil alone, and keeps the minutes of bowls, rounds and fills', () => {
    for (const key of ['heat/deep-pan/1', 'watch/deep-pan/1/1', 'fry/3']) expect(problem(changeJob(lantern, { key, name: 'x' }, { off: true }))).toBe('day.edit.oilStays');
    for (const key of ['bowl/1', 'brew/2', 'fill/tea/1']) {
      expect(problem(changeJob(lantern, { key, name: 'x' }, { at: 600 }))).toBe('day.edit.planStays');
      expect(problem(changeJob(lantern, { key, name: 'x' }, { who: 'runner' }))).toBeNull();
    }
  });
  test('goes with the helper it was given to', () => {
    const laid = done(changeJob(done(changeJob(lantern, rice, { who: 'runner', at: 680 })), { key: 'clean/kitchen', name: 'Clean' }, { who: 'runner' }));
    expect(dayOf(done(removePerson(laid, 'runner'))).changes).toEqual([{ job: 'step/boil/rice', at: 680 }]);
    expect(problem(changeJob(lantern, rice, { who: 'stranger' }))).toBe('edit.gone');
  });
});

describe('holding what is printed', () => {
  test('leaves pins as they are, and lets go of the rest only', () => {
    const pinned = done(changeJob(lantern, rice, { at: 680 }));
    const held = done(holdJobs(pinned, [{ job: 'step/boil/rice', at: 677 }, { job: 'clean/kitchen', at: 1140 }], 'printed'));
    expect(dayOf(held).changes).toEqual([{ job: 'step/boil/rice', at: 680 }, { job: 'clean/kitchen', at: 1140, held: 'printed' }]);
    expect(serialiseEvent(done(letGoOfPrinted(held)))).toBe(serialiseEvent(pinned));
  });
});

const kitchen = (at: number) => [{ job: 'clean/kitchen', at }];
const jobs = (count: number) => Array.from({ length: count }, (_, n) => ({ job: `own/job-${n}`, at: n }));
describe('holding what is under way', () => {
  test('stands above the paper, and what stands above it already stays', () => {
    const printed = done(holdJobs(lantern, kitchen(1140), 'printed'));
    const started = done(holdJobs(printed, kitchen(1151.6), 'started'));
    expect(dayOf(started).changes).toEqual([{ job: 'clean/kitchen', at: 1152, held: 'started' }]);
    for (const held of ['printed', 'started'] as const) expect(dayOf(done(holdJobs(started, kitchen(1100), held))).changes).toEqual(dayOf(started).changes);
    expect(dayOf(done(holdJobs(printed, kitchen(1130), 'printed'))).changes).toEqual([{ job: 'clean/kitchen', at: 1130, held: 'printed' }]);
    expect(dayOf(done(letGoOfPrinted(started))).changes).toEqual(dayOf(started).changes);
  });
  test('keeps what else is laid down about the job', () => {
    const laid = done(changeJob(lantern, rice, { who: 'cook', minutes: 8 }));
    expect(dayOf(done(holdJobs(laid, [{ job: rice.key, at: 700 }], 'started'))).changes).toEqual([{ job: rice.key, who: 'cook', minutes: 8, at: 700, held: 'started' }]);
  });
  test('holds a thousand jobs, and says so instead of dropping one more', () => {
    expect(dayOf(done(holdJobs(lantern, jobs(1000), 'printed'))).changes).toHaveLength(1000);
    expect(holdJobs(lantern, jobs(1001), 'printed')).toMatchObject({ problem: { id: 'day.edit.holdTooMany', params: { jobs: 1001, most: 1000 } } });
    const full = done(holdJobs(lantern, jobs(1000), 'printed'));
    expect(problem(holdJobs(full, [{ job: 'clean/kitchen', at: 1140 }], 'started'))).toBe('day.edit.holdTooMany');
  });
});

describe('ways out and better days', () => {
  const names = { helper: 'One more', ring: 'Ring', urn: 'Urn', pot: 'Pot' };
  const message = { id: 'timeline.remedy.borrow', params: { thing: 'ring' } } as const;
  test('a borrowed ring stands in the kitchen, named; the way taken names the step', () => {
    const answer = takeRemedy(lantern, { change: { kind: 'borrow', thing: 'ring' }, message }, names);
    if ('problem' in answer) throw new Error(answer.problem.id);
    expect(answer.event.kitchen.burners.map((b) => b.name)).toEqual([...lantern.kitchen.burners.map((b) => b.name), 'Ring']);
    expect(answer.name).toEqual({ id: 'day.edit.remedy', params: { remedy: message } });
    expect(parseEvent(serialiseEvent(answer.event)).ok).toBe(true);
  });
  test('a job is moved, hours lengthened, a helper added, a dish left off: each a sound event', () => {
    const [person] = lantern.people;
    const [dish] = lantern.menu.dishes;
    if (person === undefined || dish === undefined) throw new Error('the demo has helpers and dishes');
    const moved = done(takeRemedy(lantern, { change: { kind: 'move', job: rice.key, at: 660, own: false }, message }, names));
    expect(dayOf(moved).changes).toEqual([{ job: rice.key, at: 660, held: 'pinned' }]);
    expect(done(takeRemedy(lantern, { change: { kind: 'hours', person: person.id, from: 300, to: 1400 }, message }, names)).people[0]).toMatchObject({ from: 300, to: 1400 });
    expect(done(takeRemedy(lantern, { change: { kind: 'helper', roles: ['runner'], from: 600, to: 700 }, message }, names)).people.at(-1)).toMatchObject({ name: 'One more', roles: ['runner'], from: 600, to: 700 });
    const without = done(takeRemedy(lantern, { change: { kind: 'drop', dish: dish.id }, message }, names));
    expect(without.menu.dishes.map((d) => d.id)).not.toContain(dish.id);
    expect(parseEvent(serialiseEvent(without)).ok).toBe(true);
  });
  test('an order is kept beside own jobs and changes, and goes alone', () => {
    const pinned = done(changeJob(lantern, rice, { at: 680 }));
    const ordered = done(takeDayOrder(pinned, { setUpFirst: true, restsFirst: false, relief: 'late', nudges: [] }));
    expect(dayOf(ordered)).toMatchObject({ order: { setUpFirst: true, relief: 'late' }, changes: [{ job: rice.key, at: 680 }] });
    expect(serialiseEvent(done(takeDayOrder(ordered, null)))).toBe(serialiseEvent(pinned));
    const alone = done(changeJob(ordered, rice, { at: undefined }));
    expect(dayOf(alone)).toMatchObject({ order: { setUpFirst: true }, changes: [] });
    expect(serialiseEvent(done(takeDayOrder(alone, null)))).toBe(serialiseEvent(lantern));
    expect(problem(takeDayOrder(lantern, { setUpFirst: true, restsFirst: false, relief: 'late', nudges: [{ job: 'x', by: 5000 }] }))).not.toBeNull();
  });
});
