import { Passes, type Timed } from './pass';
import type { Found, ScheduleProblem, Windows } from './types';
import { windowsOf } from './windows';

/** Windows of a problem whose rules do not contradict each other. @throws RangeError when they do. */
export function windowsOrThrow(problem: ScheduleProblem, horizon: number): Windows {
  const windows = windowsOf(problem, horizon);
  if (windows.kind === 'contradiction') throw new RangeError('the rules contradict each other');
  return windows;
}

/** Latest ends, moved so that the first is 0: the rule "who must be done first goes first". */
export function latestFinish(passes: Passes, windows: Windows): { readonly key: Int32Array; readonly most: number } {
  const key = Int32Array.from(windows.latestStart, (start, i) => start + (passes.network.durations[i] ?? 0));
  const [low, high] = key.reduce(([a, b], x) => [Math.min(a, x), Math.max(b, x)], [Number.MAX_SAFE_INTEGER, 0]);
  for (let i = 0; i < key.length; i += 1) key[i] = (key[i] ?? 0) - low;
  return { key, most: Math.max(0, high - low) };
}

/** The first schedule: serial generation by latest finish. Source: Kolisch 1996 (from memory). */
export function serial(passes: Passes, windows: Windows): Timed {
  const { key, most } = latestFinish(passes, windows);
  passes.orderBy(0, key, most);
  return passes.generate(0, passes.room());
}

/** Justified to the right and then to the left, two more schedules: never longer. Source: Valls, Ballestín and Quintanilla 2005 (abstract seen). */
export function justified(passes: Passes, from: Timed): Timed {
  passes.orderFrom(1, from);
  const right = passes.generate(1, passes.room());
  passes.orderFrom(0, right);
  const left = passes.generate(0, passes.room());
  return left.makespan <= from.makespan ? left : from;
}

/**
 * The instant answer: serial generation and one double justification, three schedules.
 * @throws RangeError when rules contradict each other or go in a circle, or an activity wants more of a thing than there is.
 */
export function firstAnswer(problem: ScheduleProblem, budget = 3): Found {
  const passes = new Passes(problem);
  const first = serial(passes, windowsOrThrow(problem, passes.network.horizon));
  const best = budget < 3 ? first : justified(passes, first);
  return { starts: best.starts, makespan: best.makespan, schedules: passes.count };
}
