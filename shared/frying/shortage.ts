import type { Event, Frying } from '../event';
import { minutes } from '../measure';
import type { DishPlan } from '../menu';
import type { Message } from '../words';
import type { DishPart } from './dish-parts';
import { shortageRemedies, type Replan } from './shortage-remedies';
import type { Shortage } from './types';

/** Why the least unmet is not proven: the search gave way to a quick rule, several unequal lines share the dish by a rule, or other dishes came first; null when it is. */
export type Doubt = 'quick' | 'shared' | 'after' | null;

/** Minutes without anybody going short that part one shortage from the next. */
const apart = 30;

/** Stretches in which portions go unmet, and of each kind of change the smallest that serves everybody, planned again to be sure (once, when first asked for). */
export function shortagesOf(event: Event, dish: DishPlan, frying: Frying, parts: readonly DishPart[], wanted: readonly number[], unmet: readonly number[], doubt: Doubt, replan: Replan): Shortage[] {
  if (unmet.length === 0) return [];
  // The pans as they stand now: this dish and later ones have yet to take them.
  const now = parts.map((p) => ({ ...p, line: { ...p.line, taken: new Map(p.line.taken) } }));
  let found: readonly Message[] | null = null;
  // The trials plan the room again many times; only a reader of the shortage waits for them, not somebody dragging a headcount.
  const remedies = (): readonly Message[] => (found ??= parts.length === 0 ? [] : shortageRemedies(event, dish, frying, now, wanted, replan));
  const note: Message | null = doubt === null ? null : { id: `frying.shortage.${doubt}`, params: { dish: dish.name } };
  const runs: number[][] = [];
  for (const minute of [...unmet].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run === undefined || minute - (run.at(-1) ?? 0) > apart) runs.push([minute]);
    else run.push(minute);
  }
  return runs.map((run) => {
    const from = run[0] ?? 0;
    const to = run.at(-1) ?? from;
    return {
      dish: dish.id, from: minutes(from), to: minutes(to), wanted: wanted.filter((t) => t >= from && t <= to).length, unmet: run.length, proven: doubt === null, note,
      get remedies() {
        return remedies();
      },
    };
  });
}
