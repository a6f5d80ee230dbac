import type { Event } from '../event';
import { isRice, type MenuPlan } from '../menu';
import { safetyRule } from '../reference';
import type { Message } from '../words';
import type { DayValues } from './day-values';
import { lengthOf, type Job, type Placed } from './job';
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

const holds = (p: Placed): boolean => p.things && p.job.stretches.some((s) => s.needs.some((n) => n.thing.split(':')[0] === 'pot'));

/** Pots that a step fills and no later step of the dish goes on with: they stand until they are washed. Earliest end first. */
function emptied(steps: readonly Placed[]): Placed[] {
  const pots = steps.filter(holds);
  return pots.filter((p) => !pots.some((o) => o !== p && o.job.about.dish === p.job.about.dish && o.start >= p.start + lengthOf(p.job) - 1e-9)).toSorted((a, b) => a.start + lengthOf(a.job) - b.start - lengthOf(b.job) || (a.job.id < b.job.id ? -1 : 1));
}

/** Washing a pot after standing so many minutes: it is taken from the end of its step until it is clean. */
function washAfter(takes: DayValues, p: Placed, stands: number): Job {
  const end = p.start + lengthOf(p.job);
  const id = `wash-pot/${p.job.id}`;
  const needs = [{ thing: 'pot', count: 1 }];
  const first = p.job.stretches[0]?.name;
  const named = first?.id === 'timeline.task.step' || first?.id === 'timeline.task.stepPart' || first?.id === 'timeline.task.byItself' ? first.params : { dish: '' };
  const params = { dish: named.dish };
  const dirty = stands === 0 ? [] : [{ id: `${id}/stands`, minutes: stands, attention: 0, needs, name: { id: 'timeline.task.dirty', params } as const }];
  return {
    id, kind: 'wash', roles: ['runner'], about: p.job.about, after: [p.job.id], towards: 'early', spare: 0, anyTime: false, earliest: end, latest: end + takes.standMost + takes.washPot, notDoneBefore: end,
    stretches: [...dirty, { id, minutes: takes.washPot, attention: 1, needs, name: { id: 'timeline.task.washPot', params } }],
  };
}

/** Pots to wash: how often each is tried, five minutes later every time, and the job for each try. */
export const potWashing = (takes: DayValues, steps: readonly Placed[]): { readonly tries: number; readonly job: (k: number) => Job }[] => {
  const tries = Math.floor(takes.standMost / 5) + 1;
  return emptied(steps).map((p) => ({ tries, job: (k) => washAfter(takes, p, k * 5) }));
};
