import { dayOf, type Event, type JobChange } from '../event';
import type { Message } from '../words';
import { lengthOf, type Job, type Stretch } from './job';
import type { OffJob } from './types';

/** Jobs as the cook has changed them, and those she has switched off. */
export interface ChangedJobs {
  readonly jobs: readonly Job[];
  readonly off: readonly OffJob[];
}

/** The role every helper has who is the only one asked for a job. */
export const personRole = (person: string): string => `person:${person}`;

/** The event with that role for each helper, so that a job can be given to one of them. */
export const withPersonRoles = (event: Event): Event => ({ ...event, people: event.people.map((p) => ({ ...p, roles: [...p.roles, personRole(p.id)] })) });

/** Jobs at hot oil are the fry plan's, whatever a file says; bowls, rounds and fills keep their minute. */
const ofOil = new Set<Job['kind']>(['heatOil', 'watchOil', 'fry']);
const ofPlan = new Set<Job['kind']>(['bowl', 'brew', 'fill']);

function offMessage(job: Job, event: Event): Message {
  const name = job.stretches[0]?.name ?? { id: 'timeline.task.serve' };
  if (job.kind === 'rest') {
    const person = event.people.find((p) => job.roles.includes(personRole(p.id)))?.name ?? '';
    return { id: 'timeline.off.rest', params: { job: name, person } };
  }
  const by = job.kind === 'check' ? 'timeline.off.check' : job.kind === 'shop' ? 'timeline.off.shop' : ofPlan.has(job.kind) && job.kind !== 'bowl' ? 'timeline.off.brew'
    : job.kind === 'clean' || job.kind === 'wash' || job.kind === 'store' || job.kind === 'oilAway' ? 'timeline.off.clean' : job.kind === 'serve' ? 'timeline.off.serve' : 'timeline.off.step';
  return { id: by, params: { job: name } };
}

/** Stretches with the minutes of work set; what runs by itself takes as long as before. */
function lasting(stretches: readonly Stretch[], minutes: number): Stretch[] {
  const hands = stretches.findIndex((s) => s.attention > 0);
  return stretches.map((s, at) => (at === (hands < 0 ? 0 : hands) ? { ...s, minutes } : s));
}

/** A job in equal parts of whole minutes, each a job of its own, and what runs by itself after the last of them. */
function inParts(job: Job, parts: number): Job[] {
  const [first, ...rest] = job.stretches;
  if (first === undefined || first.attention === 0 || first.minutes < parts) return [job];
  const tail = rest.reduce((n, s) => n + s.minutes, 0);
  const pieces = Array.from({ length: parts }, (_, k): Job => {
    const id = `${job.id}/part${k + 1}`;
    const minutes = Math.floor(first.minutes / parts) + (k < first.minutes % parts ? 1 : 0);
    return { ...job, id, stretches: [{ ...first, id, minutes, name: { id: 'timeline.task.part', params: { job: first.name, part: k + 1, parts } } }], latest: job.latest - tail, notDoneBefore: job.notDoneBefore - tail };
  });
  return rest.length === 0 ? pieces : [...pieces, { ...job, id: `${job.id}/rest`, stretches: rest, after: pieces.map((p) => p.id) }];
}

/** A job that stands at its minute, given to whom it is given to. */
function laidDown(job: Job, change: JobChange, event: Event): Job {
  const at = ofPlan.has(job.kind) ? undefined : change.at;
  const who = event.people.some((p) => p.id === change.who) ? change.who : undefined;
  if (at === undefined && who === undefined) return job;
  return {
    ...job, roles: who === undefined ? job.roles : [personRole(who)],
    laid: { held: change.held ?? 'pinned', roles: job.roles, ...(at === undefined ? {} : { at }), ...(who === undefined ? {} : { who }) },
  };
}

/**
 * Jobs with everything the cook has laid down: those switched off are gone and what waited for them waits for what they waited for; lengths
 * and parts are hers; pins and names are noted for the placing. A change of a job that is not there says nothing.
 */
export function changedJobs(event: Event, jobs: readonly Job[]): ChangedJobs {
  const changes = new Map(dayOf(event).changes.map((c) => [c.job, c]));
  if (changes.size === 0) return { jobs, off: [] };
  const off: OffJob[] = [];
  /** What a job that waited for this one waits for now. */
  const instead = new Map<string, readonly string[]>();
  const cut = jobs.flatMap((job): Job[] => {
    const change = changes.get(job.id);
    if (change === undefined || ofOil.has(job.kind)) return [job];
    if (change.off === true) {
      off.push({ job: job.id, name: job.stretches[0]?.name ?? { id: 'timeline.task.serve' }, message: offMessage(job, event) });
      instead.set(job.id, job.after);
      return [];
    }
    const long = change.minutes === undefined || ofPlan.has(job.kind) ? job : { ...job, stretches: lasting(job.stretches, change.minutes) };
    const fits = { ...long, latest: Math.max(long.latest, job.kind === 'step' ? long.latest : long.earliest + lengthOf(long)) };
    const pieces = change.parts === undefined || ofPlan.has(job.kind) ? [fits] : inParts(fits, change.parts);
    if (pieces.length > 1) instead.set(job.id, pieces.some((p) => p.id === `${job.id}/rest`) ? [`${job.id}/rest`] : pieces.map((p) => p.id));
    return pieces.map((piece) => laidDown(piece, pieces.length > 1 ? { job: piece.id, ...(change.who === undefined ? {} : { who: change.who }), ...changes.get(piece.id) } : change, event));
  });
  const waits = (id: string, seen: readonly string[]): readonly string[] => {
    const now = instead.get(id);
    return now === undefined || seen.includes(id) ? [id] : now.flatMap((next) => waits(next, [...seen, id]));
  };
  return { jobs: instead.size === 0 ? cut : cut.map((job) => ({ ...job, after: [...new Set(job.after.flatMap((id) => waits(id, [])))] })), off };
}
