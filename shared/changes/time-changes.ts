import type { Plan } from '../plan';
import type { Task } from '../timeline';
import { timeChange, type Change } from './change';

/** First and last of something by its key. */
function spans<T>(items: readonly T[], key: (item: T) => string, from: (item: T) => number, to: (item: T) => number): Map<string, { first: number; last: number }> {
  const found = new Map<string, { first: number; last: number }>();
  for (const item of items) {
    const had = found.get(key(item));
    found.set(key(item), { first: Math.min(had?.first ?? Infinity, from(item)), last: Math.max(had?.last ?? -Infinity, to(item)) });
  }
  return found;
}

/** Jobs told through the frying, drinks and oil they belong to; single batches are on the fry sheet. */
const toldElsewhere = new Set<Task['kind']>(['fry', 'bowl', 'brew', 'fill', 'watchOil', 'heatOil']);
/** Single jobs that move by less than this many minutes are done when there is a hand free: nothing to tell. */
const noticedMinutes = 5;
/** Rounds of housework fit in where hands are free: that they move is told, but last. */
const housework = new Set<Task['kind']>(['serve', 'clean', 'cool']);
const houseworkWeight = 0.01;
/** Jobs somebody does; what runs by itself follows from them. */
const told = (task: Task): boolean => !toldElsewhere.has(task.kind) && task.attention >= 0.5;

function taskChanges(before: Plan, after: Plan): Change[] {
  const had = new Map(before.day.tasks.filter(told).map((t) => [t.id, t]));
  const has = new Map(after.day.tasks.filter(told).map((t) => [t.id, t]));
  const moved = [...has].flatMap(([id, now]): Change[] => {
    const then = had.get(id);
    if (then === undefined) return [{ kind: 'times', effect: 'new', message: { id: 'change.task.new', params: { name: now.name, at: now.start } }, before: null, after: Math.round(now.start), about: id, size: 0.5 }];
    if (Math.abs(now.start - then.start) < noticedMinutes) return [];
    const weight = housework.has(now.kind) ? houseworkWeight : 1;
    return timeChange(id, then.start, now.start, (p) => ({ id: 'change.task.moved', params: { ...p, name: now.name } })).map((c) => ({ ...c, size: weight * c.size }));
  });
  const gone = [...had].filter(([id]) => !has.has(id)).map(([id, then]): Change =>
    ({ kind: 'times', effect: 'gone', message: { id: 'change.task.gone', params: { name: then.name } }, before: Math.round(then.start), after: null, about: id, size: 0.5 }));
  return [...moved, ...gone];
}

const fried = (plan: Plan): ReturnType<typeof spans> => spans(plan.frying.batches, (b) => b.dish, (b) => b.dropAt, (b) => b.liftAt);
const heated = (plan: Plan): ReturnType<typeof spans> => spans(plan.frying.sessions, (s) => s.pan, (s) => s.heatOnAt, (s) => s.heatOffAt);
const brewed = (plan: Plan): ReturnType<typeof spans> => spans(plan.drinks.rounds, (r) => r.drink, (r) => r.startAt, (r) => r.readyAt);

/** What is earlier, later, new or gone on the clock: oil, frying of each dish, drinks, and single jobs. */
export function timeChanges(before: Plan, after: Plan): Change[] {
  const dishName = (id: string): string => after.menu.dishes.find((d) => d.id === id)?.name ?? id;
  const panName = (id: string): string => after.event.kitchen.pans.find((p) => p.id === id)?.name ?? id;
  const [friedBefore, heatedBefore, brewedBefore] = [fried(before), heated(before), brewed(before)];
  return [
    ...[...heated(after)].flatMap(([pan, now]) => {
      const then = heatedBefore.get(pan);
      return then === undefined ? [] : timeChange(pan, then.first, now.first, (p) => ({ id: 'change.oil.on', params: { ...p, pan: panName(pan) } }));
    }),
    ...[...fried(after)].flatMap(([dish, now]) => {
      const then = friedBefore.get(dish);
      return then === undefined ? [] : [
        ...timeChange(dish, then.first, now.first, (p) => ({ id: 'change.frying.first', params: { ...p, dish: dishName(dish) } })),
        ...timeChange(dish, then.last, now.last, (p) => ({ id: 'change.frying.last', params: { ...p, dish: dishName(dish) } })),
      ];
    }),
    ...[...brewed(after)].flatMap(([drink, now]) => {
      const then = brewedBefore.get(drink);
      return then === undefined ? [] : timeChange(drink, then.first, now.first, (p) => ({ id: 'change.drinks.first', params: { ...p, drink: dishName(drink) } }));
    }),
    ...taskChanges(before, after),
  ];
}
