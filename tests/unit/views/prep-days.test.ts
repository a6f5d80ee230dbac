import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEvent } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { isHouseholdDay, madeAhead } from '../../../shared/sheets';
import { jobsOf, keepsUntil, prepDays } from '../../../src-renderer/views/prep/prep-days';

const planned = (demo: string) => {
  const read = parseEvent(readFileSync(`assets/app/demo/${demo}.brimful`, 'utf8'));
  if (!read.ok) throw new Error('expected an event');
  return plan(read.event);
};

describe.each(['lantern-evening', 'school-fair-stall', 'freezer-sunday'])('prep of %s', (demo) => {
  const whole = planned(demo);
  const jobs = madeAhead(whole);

  it('has every recipe step before the doors open, and no other', () => {
    const ahead = whole.day.tasks.filter((task) => task.kind === 'step' && (isHouseholdDay(whole) || task.start < whole.event.opensAt)).map((task) => task.id).toSorted();
    expect(jobs.flatMap((job) => job.row.tasks.map((task) => task.id)).toSorted()).toEqual(ahead);
  });

  it('leaves no job out when they are put by day and place', () => {
    const grouped = prepDays(jobs).flatMap((day) => day.groups.flatMap((group) => group.jobs.map((job) => job.row.key)));
    expect(grouped.toSorted()).toEqual(jobs.map((job) => job.row.key).toSorted());
    for (const { groups } of prepDays(jobs)) for (const { place, jobs: own } of groups) for (const job of own) expect(job.step?.keeps?.place ?? 'on').toBe(place);
  });

  it('keeps a result from the end of its last part, as long as its recipe says', () => {
    for (const job of jobs) {
      const ends = Math.max(...job.row.tasks.map((task) => task.end));
      expect(keepsUntil(job)).toBe(job.step?.keeps === undefined ? null : ends + job.step.keeps.minutes);
    }
  });

  it('knows the step of each job', () => {
    for (const job of jobs) expect(job.step, job.task.id).toBeDefined();
  });

  it('gives one helper what that helper has a hand in', () => {
    for (const { id } of whole.event.people) for (const job of jobsOf(jobs, id)) expect(job.row.tasks.flatMap((task) => task.who)).toContain(id);
  });
});

it('a day with guests is no household day', () => {
  expect(isHouseholdDay(planned('lantern-evening'))).toBe(false);
  expect(isHouseholdDay(planned('freezer-sunday'))).toBe(true);
});
