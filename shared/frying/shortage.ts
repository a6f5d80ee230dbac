import type { Event, Frying } from '../event';
import { minutes } from '../measure';
import type { DishPlan } from '../menu';
import type { Message } from '../words';
import { trialServes, type DishPart, type Trial } from './dish-parts';
import type { Shortage } from './types';

/** Why the least unmet is not proven: the search gave way to a quick rule, several unequal lines share the dish by a rule, or other dishes came first; null when it is. */
export type Doubt = 'quick' | 'shared' | 'after' | null;

/** Minutes without anybody going short that part one shortage from the next. */
const apart = 30;

interface Try {
  readonly trial: Trial;
  readonly message: Message;
}

function tries(parts: readonly DishPart[], frying: Frying): Try[][] {
  const load = parts[0]?.load.plan.pieces.value ?? 1;
  const station = parts[0]?.line.station.name ?? '';
  const pan = (n: number): Try => ({ trial: { morePans: n }, message: { id: 'frying.shortage.pans', params: { pans: n, station } } });
  const hold = (n: number): Try => ({ trial: { moreHold: n }, message: { id: 'frying.shortage.hold', params: { minutes: Math.floor(frying.holdMinutes) + n } } });
  const larger = (times: number): Try => ({ trial: { loadTimes: times }, message: { id: 'frying.shortage.load', params: { pieces: Math.floor(load * times), now: load } } });
  return [[1, 2, 3, 4].map(pan), [5, 10, 15, 20].map(hold), [1.25, 1.5, 2, 3].map(larger)];
}

/** Stretches in which portions go unmet, and of each kind of change the smallest that serves everybody, planned again to be sure. */
export function shortagesOf(event: Event, dish: DishPlan, frying: Frying, parts: readonly DishPart[], wanted: readonly number[], unmet: readonly number[], doubt: Doubt): Shortage[] {
  if (unmet.length === 0) return [];
  const remedies = parts.length === 0 ? [] : tries(parts, frying).flatMap((ladder) => {
    const works = ladder.find(({ trial }) => trialServes(event, frying, parts, wanted, trial));
    return works === undefined ? [] : [works.message];
  });
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
    return { dish: dish.id, from: minutes(from), to: minutes(to), wanted: wanted.filter((t) => t >= from && t <= to).length, unmet: run.length, remedies, proven: doubt === null, note };
  });
}
