import type { Burner, Event } from '../event';
import type { Task } from './types';

/** Minutes of the day a burner is on: at full flame, and with a pan of oil kept hot. */
export interface Flame {
  readonly burner: Burner;
  readonly full: number;
  readonly oil: number;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly oil: boolean;
}

const overlaps = (taken: readonly Stretch[], task: Task): boolean => taken.some((s) => s.from < task.end - 1e-9 && s.to > task.start + 1e-9);

/** Minutes of these stretches; a minute that two share counts once, for whoever came first. */
function minutesOf(stretches: readonly Stretch[]): { readonly full: number; readonly oil: number } {
  const sum = { full: 0, oil: 0 };
  let until = Number.NEGATIVE_INFINITY;
  for (const { from, to, oil } of stretches.toSorted((a, b) => a.from - b.from)) {
    sum[oil ? 'oil' : 'full'] += Math.max(0, to - Math.max(from, until));
    until = Math.max(until, to);
  }
  return sum;
}

/**
 * How long each burner is on, by all the day puts on it: pans of oil, rounds of drinks, pots of recipe steps. A step that names no burner
 * stands on the first that is free for it, as the kitchen lists them, those under pans of oil last: so everything counts, and once. Unit: minutes.
 */
export function flamesOf(event: Event, tasks: readonly Task[]): Flame[] {
  const { burners, pans } = event.kitchen;
  const taken = new Map(burners.map((b): [string, Stretch[]] => [b.id, []]));
  const put = (burner: string | undefined, task: Task): void => { taken.get(burner ?? '')?.push({ from: task.start, to: task.end, oil: task.kind === 'watchOil' || task.kind === 'fry' }); };
  for (const task of tasks) for (const { thing } of task.needs) if (thing.startsWith('burner:')) put(thing.slice('burner:'.length), task);
  const underOil = new Set(pans.map((p) => p.burner));
  const inOrder = burners.toSorted((a, b) => Number(underOil.has(a.id)) - Number(underOil.has(b.id)));
  for (const task of tasks) {
    let count = 0;
    for (const n of task.needs) if (n.thing === 'burner') count += n.count;
    if (count === 0) continue;
    const free = inOrder.filter((b) => !overlaps(taken.get(b.id) ?? [], task));
    for (let k = 0; k < count; k += 1) put((free[k] ?? inOrder[k])?.id, task);
  }
  return burners.map((burner) => ({ burner, ...minutesOf(taken.get(burner.id) ?? []) }));
}
