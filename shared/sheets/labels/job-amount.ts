import type { Amount } from '../../measure';
import type { AheadJob } from '../lists/ahead';
import type { KeptThing } from './kept-things';

/** The boxes a job fills, or works on again: those of its dish, its place and its foods. Null for a job whose result goes on to the next. */
export function thingOfJob({ dish, step }: AheadJob, things: readonly KeptThing[]): KeptThing | null {
  if (dish === undefined || step?.keeps === undefined) return null;
  return things.find((thing) => thing.dish.id === dish.id && thing.steps.includes(step.id)) ?? null;
}

/** What a job leaves: what is in its boxes; else the whole dish for a job that makes it, and nothing for one that keeps a part of it. */
export function jobAmount(job: AheadJob, things: readonly KeptThing[]): { readonly amount: Amount | null; readonly thing: KeptThing | null } {
  const thing = thingOfJob(job, things);
  if (thing !== null) return { amount: thing.amount, thing };
  return { amount: job.dish === undefined ? null : job.dish.total, thing: null };
}
