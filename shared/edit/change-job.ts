import { dayOf, jobChangeSchema, type Event, type JobChange } from '../event';
import type { Message } from '../words';
import { checkPart, patched, settled } from './check';
import { inDay } from './lists';
import { placeOfRow, setRow } from './set-row';
import type { EditResult, Patch } from './types';

/** A job of the plan: its key, and what the cook calls it. */
export interface JobRef {
  readonly key: string;
  readonly name: string;
}

/** Somebody must be at it whatever the cook would like: nobody leaves hot oil. */
const atOil = /^(heat|watch|fry)\//;
/** Its minute and length are those of the fry plan or the drinks plan. */
const elsewhere = /^(bowl|brew|fill)\//;

function refused({ key, name }: JobRef, patch: Patch<JobChange>): EditResult | null {
  const asked = Object.entries(patch).filter(([, value]) => value !== undefined).map(([field]) => field);
  if (atOil.test(key) && asked.length > 0) return { problem: { id: 'day.edit.oilStays', params: { name } }, path: 'dayJobs.changes' };
  if (elsewhere.test(key) && asked.some((field) => field !== 'who' && field !== 'off' && field !== 'why')) return { problem: { id: 'day.edit.planStays', params: { name } }, path: 'dayJobs.changes' };
  return null;
}

function nameOf({ name }: JobRef, patch: Patch<JobChange>): Message {
  if ('off' in patch) return { id: patch.off === true ? 'day.edit.off' : 'day.edit.on', params: { name } };
  if ('at' in patch) return patch.at === undefined ? { id: 'day.edit.free', params: { name } } : { id: 'day.edit.pin', params: { name, at: patch.at } };
  if ('who' in patch) return { id: patch.who === undefined ? 'day.edit.anybody' : 'day.edit.assign', params: { name } };
  if ('minutes' in patch) return { id: 'day.edit.minutes', params: { name, minutes: patch.minutes ?? null } };
  if ('parts' in patch) return { id: 'day.edit.parts', params: { name, parts: patch.parts ?? null } };
  return { id: 'day.edit.change', params: { name } };
}

/** Lays something down about a job: its minute, who does it, how long it takes, in how many parts, or that it is left out; what is patched to `undefined` is the plan's again. */
export function changeJob(event: Event, job: JobRef, patch: Patch<JobChange>): EditResult {
  const no = refused(job, patch);
  if (no !== null) return no;
  const { changes } = dayOf(event);
  const isIt = (c: JobChange): boolean => c.job === job.key;
  const next = patched(changes.find(isIt) ?? {}, patch);
  if (next['at'] === undefined) delete next['held'];
  if (next['off'] === false) delete next['off'];
  const name = nameOf(job, patch);
  if (Object.keys(next).every((key) => key === 'job')) return settled(inDay(event, { changes: setRow(changes, isIt, null) }), name);
  const checked = checkPart(jobChangeSchema, { ...next, job: job.key }, ['dayJobs', 'changes', placeOfRow(changes, isIt)]);
  if (!checked.ok) return checked.problem;
  if (checked.value.who !== undefined && !event.people.some((p) => p.id === checked.value.who)) return { problem: { id: 'edit.gone', params: { id: checked.value.who } }, path: 'dayJobs.changes' };
  return settled(inDay(event, { changes: setRow(changes, isIt, checked.value) }), name);
}
