import { stepMinutes } from '../cooking';
import { isMadeAhead } from '../drinks';
import type { Step } from '../event';
import { baseFactor, dimensionOf, type Amount } from '../measure';
import type { DishPlan } from '../menu';
import type { Job, Stretch } from './job';

/** Nothing of a recipe is started longer ago than this: two weeks. Unit: minutes. */
const longAgo = 20160;
/** Steps of one person longer than this are cut into equal parts, so that helpers can share them. */
const longStep = 75;
const partLength = 60;
/** A step whose minutes nobody wrote is still a job, or it would be missing from every sheet. Unit: minutes. */
const shortestStep = 1;
/** Minutes to be done early where the window allows: at the last step of a dish, and between steps. */
export const spare = { last: 10, between: 5 };

function kilograms(a: Amount): number {
  return dimensionOf(a.unit) === 'count' ? 0 : a.amount.times(baseFactor(a.unit)).toNumber() / 1000;
}

/** Weight of a dish: its total; for pieces the sum of its ingredients. A litre counts as a kilogram here. Unit: kg. */
export const dishKg = (dish: DishPlan): number =>
  dimensionOf(dish.total.unit) === 'count' ? dish.lines.reduce((n, l) => n + kilograms(l.amount), 0) : kilograms(dish.total);

/** What part of a dish a job is about: which cooking, which go, how much, in which pot. */
export type StepPart = Readonly<{ turn: number; turns: number; go: number; goes: number; amount: { readonly amount: string; readonly unit: string }; pot?: string }>;

/** A step for all of a dish or for a part of it: its minutes, the window of its end, the pot it stands in. */
export interface Piece {
  /** Behind the id of the step and the dish; empty for the first or only part. */
  readonly suffix: string;
  readonly active: number;
  readonly passive: number;
  readonly latest: number;
  readonly notDoneBefore: number;
  readonly earliest: number;
  readonly pot: string | null;
  readonly part: StepPart | null;
}

/** A step for so many kilograms in so many batches, to be done for `servedAt`. */
export function pieceOf(step: Step, kg: number, batches: number, servedAt: number): Piece {
  const [active, passive] = [stepMinutes(step.active, kg, batches), stepMinutes(step.passive, kg, batches)];
  return {
    suffix: '', active: active + passive === 0 ? shortestStep : active, passive, pot: null, part: null,
    latest: servedAt - (step.endsBefore?.latest ?? 0), notDoneBefore: servedAt - (step.endsBefore?.earliest ?? longAgo), earliest: servedAt - longAgo * 2,
  };
}

/** What is left out: frying and brewing have plans of their own. */
function ownPlan(dish: DishPlan, step: Step): boolean {
  if (dish.recipe.frying !== undefined) return step.does === 'fry' || step.does === 'serve';
  if (isMadeAhead(dish.recipe)) return step.does === 'brew' || step.does === 'serve';
  if (dish.recipe.brewing !== undefined) return step.does === 'brew' || step.does === 'serve' || step.does === 'boil' || step.does === 'simmer';
  return false;
}

/**
 * Jobs of a dish's recipe steps.
 * @param servedAt first minute its result is needed: first serving, first bowl, put-in or brew round. @param batches cooked at once (bowls for a fried dish). @param handsOn share of a person that work with the hands takes.
 */
export function stepJobs(dish: DishPlan, servedAt: number, batches: number, handsOn: number): Job[] {
  const kg = dishKg(dish);
  const steps = dish.recipe.steps;
  const kept = new Map(steps.filter((s) => !ownPlan(dish, s)).map((s) => [s.id, s]));
  const jobs: Job[] = [];
  const lastJobs = new Map<string, string[]>();
  for (const step of kept.values()) {
    const own = cutStep(dish, step, pieceOf(step, kg, batches, servedAt), handsOn);
    lastJobs.set(step.id, own.ends);
    for (const job of own.jobs) jobs.push(job);
  }
  const endsOf = (id: string, seen: readonly string[]): string[] => {
    if (seen.includes(id)) return [];
    const ends = lastJobs.get(id);
    if (ends !== undefined && ends.length > 0) return ends;
    return steps.find((s) => s.id === id)?.after.flatMap((a) => endsOf(a, [...seen, id])) ?? [];
  };
  const waitedFor = new Set([...kept.values()].flatMap((s) => s.after));
  return jobs.map((job) => {
    const step = kept.get(job.id.split('/')[1] ?? '');
    const earlier = step === undefined ? [] : step.after.flatMap((a) => endsOf(a, [step.id]));
    return { ...job, after: [...new Set([...earlier, ...job.after])], spare: step !== undefined && waitedFor.has(step.id) ? spare.between : spare.last };
  });
}

/** Jobs of a step or of a part of it, and the ids of those it ends with. Long work with the hands is cut into equal parts. */
export function cutStep(dish: DishPlan, step: Step, piece: Piece, handsOn: number): { readonly jobs: Job[]; readonly ends: string[] } {
  const { active, passive, pot } = piece;
  const id = `step/${step.id}/${dish.id}${piece.suffix}`;
  const needs = step.needs.map((n) => ({ thing: n.thing === 'pot' && n.count === 1 && pot !== null ? `pot:${pot}` : n.thing, count: n.count }));
  const params = { step: step.name, dish: dish.name, ...(piece.part === null ? {} : { of: piece.part }) };
  const byItself: Stretch[] = passive === 0 ? []
    : [{ id: `${id}/by-itself`, minutes: passive, attention: step.passiveAttention, needs, name: { id: 'timeline.task.byItself', params } }];
  const base = {
    kind: 'step' as const, roles: step.by === undefined ? ['cook'] : [step.by], earliest: piece.earliest, latest: piece.latest, notDoneBefore: piece.notDoneBefore,
    towards: 'late' as const, spare: 0, about: { dish: dish.id }, anyTime: false,
  };
  if (active <= longStep) {
    const hands: Stretch[] = active === 0 ? [] : [{ id, minutes: active, attention: handsOn, needs, name: { id: 'timeline.task.step', params } }];
    return { jobs: [{ ...base, id, stretches: [...hands, ...byItself], after: [] }], ends: [id] };
  }
  const parts = Math.ceil(active / partLength);
  const jobs: Job[] = Array.from({ length: parts }, (_, k) => {
    const partId = `${id}/part${k + 1}`;
    const minutes = Math.floor(active / parts) + (k < active % parts ? 1 : 0);
    return { ...base, id: partId, after: [], stretches: [{ id: partId, minutes, attention: handsOn, needs, name: { id: 'timeline.task.stepPart', params: { ...params, part: k + 1, parts } } }] };
  });
  const partIds = jobs.map((j) => j.id);
  if (byItself.length === 0) return { jobs, ends: partIds };
  const rest: Job = { ...base, id: `${id}/by-itself`, after: partIds, stretches: byItself };
  const loose = jobs.map((j): Job => ({ ...j, notDoneBefore: base.notDoneBefore - passive, latest: base.latest - passive }));
  return { jobs: [...loose, rest], ends: [rest.id] };
}
