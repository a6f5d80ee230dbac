import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { addOwnJob, changeJob, changeOwnJob, holdJobs, letGoOfPrinted, removeOwnJob, removePerson, type EditResult } from '../../../shared/edit';
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
