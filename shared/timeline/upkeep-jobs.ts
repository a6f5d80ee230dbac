import type { Event } from '../event';
import { isRice, type MenuPlan } from '../menu';
import { safetyRule } from '../reference';
import type { Message } from '../words';
import type { DayValues } from './day-values';
import { lengthOf, type Job, type Need, type Placed } from './job';
import type { TaskKind } from './types';

const upkeep = (id: string, kind: TaskKind, name: Message, minutes: number, roles: readonly string[], from: number, to: number, about: Job['about'] = {}): Job => ({
  id, kind, roles, about, after: [], towards: 'early', spare: 0, anyTime: false, earliest: from, latest: Math.max(to, from + minutes), notDoneBefore: from,
  stretches: [{ id, minutes, attention: 1, needs: [], name }],
});

/** Rounds of washing-up and emptying of bins while guests are there, each within half a turn of its time. What is left is washed with the kitchen after closing. */
export function roundJobs(takes: DayValues, event: Event): Job[] {
  const rounds = (id: string, kind: TaskKind, name: Message, minutes: number, every: number, roles: readonly string[]): Job[] =>
    Array.from({ length: Math.max(0, Math.floor((event.closesAt - event.opensAt - 1) / every)) }, (_, k) => {
      const at = event.opensAt + (k + 1) * every;
      return upkeep(`${id}/${k + 1}`, kind, name, minutes, roles, Math.round(at - every / 3), Math.round(at + every / 3) + minutes);
    });
  return [
    ...rounds('wash', 'wash', { id: 'timeline.task.wash' }, takes.washRound, takes.washEvery, ['runner']),
    ...rounds('bins', 'clean', { id: 'timeline.task.bins' }, takes.bins, takes.binsEvery, ['runner']),
    upkeep('bins/last', 'clean', { id: 'timeline.task.bins' }, takes.bins, ['runner'], event.closesAt, event.closesAt + 300),
  ];
}

/** Food is in the fridge so many minutes after it was last served (rule TC-01). */
const storedWithin = (safetyRule('TC-01').limit ?? 2) * 60;

/** What has cooled is closed, labelled and stored: one job for all dishes whose cooling begins at the same minute. Rice is in the fridge already. */
export function storeJobs(takes: DayValues, menu: MenuPlan, cooling: readonly Job[]): Job[] {
  const meals = new Map<number, string[]>();
  const rice = new Set(menu.dishes.filter(isRice).map((d) => d.id));
  for (const job of cooling) if (job.about.dish !== undefined && !rice.has(job.about.dish)) meals.set(job.earliest, [...(meals.get(job.earliest) ?? []), job.about.dish]);
  return [...meals].toSorted(([a], [b]) => a - b).map(([at, dishes]): Job => {
    const names = dishes.map((id) => menu.dishes.find((d) => d.id === id)?.name ?? id);
    const from = at + takes.cool + takes.storeAfter;
    return { ...upkeep(`store/${dishes[0] ?? ''}`, 'store', { id: 'timeline.task.store', params: { dishes: names } }, takes.store, ['cook', 'runner'], from, at + storedWithin), anyTime: true, after: dishes.map((id) => `cool/${id}`) };
  });
}

/** The pots a step leaves dirty. */
const potsOf = ({ job }: Placed): readonly Need[] => (job.stretches.at(-1)?.needs ?? []).filter((n) => n.thing.split(':')[0] === 'pot');

const holds = (p: Placed): boolean => p.things && potsOf(p).length > 0;

/** Pots that a step fills and no later step of the dish goes on with: they stand until they are washed. Earliest end first. */
function emptied(steps: readonly Placed[]): Placed[] {
  const pots = steps.filter(holds);
  return pots.filter((p) => !pots.some((o) => o !== p && o.job.about.dish === p.job.about.dish && o.start >= p.start + lengthOf(p.job) - 1e-9)).toSorted((a, b) => a.start + lengthOf(a.job) - b.start - lengthOf(b.job) || (a.job.id < b.job.id ? -1 : 1));
}

/** What is known of a pot to wash: by its dish, and when it is empty. */
interface Emptied {
  readonly id: string;
  readonly step: Placed;
  readonly params: { readonly dish: string };
  readonly needs: readonly Need[];
  /** What was made stands in it from the end of its step until here. */
  readonly at: number;
}

function emptiedOf(step: Placed): Emptied {
  const first = step.job.stretches[0]?.name;
  const named = first?.id === 'timeline.task.step' || first?.id === 'timeline.task.stepPart' || first?.id === 'timeline.task.byItself' ? first.params : { dish: '' };
  return { id: `wash-pot/${step.job.id}`, step, params: { dish: named.dish }, needs: potsOf(step), at: step.full?.until ?? step.start + lengthOf(step.job) };
}

/** Washing a pot that has stood empty so many minutes: it is taken from the end of its step until it is clean. */
function washAfter(takes: DayValues, pot: Emptied, stands: number): Job {
  const { id, step, params, needs, at } = pot;
  const end = step.start + lengthOf(step.job);
  const full = at > end ? [{ id: `${id}/full/stands`, minutes: at - end, attention: 0, needs, name: { id: 'timeline.task.fullPot', params } as const }] : [];
  const dirty = stands === 0 ? [] : [{ id: `${id}/stands`, minutes: stands, attention: 0, needs, name: { id: 'timeline.task.dirty', params } as const }];
  return {
    ...washJob(takes, pot), earliest: end, notDoneBefore: end, latest: at + Math.max(stands, takes.standMost) + takes.washPot,
    stretches: [...full, ...dirty, { id, minutes: takes.washPot, attention: 1, needs, name: { id: 'timeline.task.washPot', params } }],
    ...(stands > takes.standMost ? { note: { id: 'timeline.note.washLate' } } : {}),
  };
}

/** Only the washing, as soon as the pot is empty: what a change of the cook's is laid down about. */
const washJob = (takes: DayValues, { id, step, params, needs, at }: Emptied): Job => ({
  id, kind: 'wash', roles: ['runner'], about: step.job.about, after: [step.job.id], towards: 'early', spare: 0, anyTime: false, earliest: at, latest: at + takes.standMost + takes.washPot, notDoneBefore: at,
  stretches: [{ id, minutes: takes.washPot, attention: 1, needs, name: { id: 'timeline.task.washPot', params } }],
});

/** A pot to wash: the washing alone, and the jobs to try, each standing longer; the last ones longer than a pot should stand. */
export interface Washing {
  readonly step: Placed;
  readonly dish: string;
  readonly alone: Job;
  readonly tries: number;
  readonly job: (k: number) => Job;
}

/** How much longer than it should a pot stands at most, in steps of half an hour. Minutes; common practice, no source. */
const longer = { by: 30, most: 240 };

/** Pots to wash, those of the steps that end first before the others. */
export const potWashing = (takes: DayValues, steps: readonly Placed[]): readonly Washing[] => {
  const inTime = Math.floor(takes.standMost / 5) + 1;
  return emptied(steps).map((p) => {
    const pot = emptiedOf(p);
    const stands = (k: number): number => (k < inTime ? k * 5 : takes.standMost + longer.by * (k - inTime + 1));
    return { step: p, dish: pot.params.dish, alone: washJob(takes, pot), tries: inTime + longer.most / longer.by, job: (k) => washAfter(takes, pot, stands(k)) };
  });
};
