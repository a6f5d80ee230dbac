import type { Series } from '../measure';
import type { Serving } from './types';

/** Stretches no longer than so many minutes that cover all portions: each begins with the first portion the one before leaves over. */
function greedy({ fromMinute, values }: Series, longest: number): Serving[] {
  const found: { number: number; from: number; to: number; portions: number }[] = [];
  let open = found[0];
  values.forEach((portions, i) => {
    if (portions <= 0) return;
    const at = fromMinute + i;
    if (open === undefined || at - open.from > longest) {
      open = { number: found.length + 1, from: at, to: at, portions: 0 };
      found.push(open);
    }
    open.to = at;
    open.portions += portions;
  });
  return found;
}

/**
 * The fewest servings of at most so many minutes each that hold every portion, then the shortest such: gaps between waves fall between two servings.
 * The greedy cover of points on a line by equal stretches is the fewest (a standard result).
 */
export function servingsOf(demand: Series, longest: number): readonly Serving[] {
  const most = Math.max(1, Math.floor(longest));
  const fewest = greedy(demand, most);
  if (fewest.length <= 1) return fewest;
  let [low, high] = [1, most];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (greedy(demand, middle).length <= fewest.length) high = middle;
    else low = middle + 1;
  }
  return greedy(demand, high);
}

/** The stretch of so many minutes with the most portions; null when nobody is served. Whole quarters of an hour where there is room. */
export function busiest({ fromMinute, values }: Series, minutes: number): { readonly from: number; readonly to: number; readonly portions: number } | null {
  const total = values.reduce((sum, v) => sum + v, 0);
  if (total <= 0) return null;
  const sumTo: number[] = [0];
  for (const v of values) sumTo.push((sumTo.at(-1) ?? 0) + v);
  const upTo = (at: number): number => sumTo[Math.max(0, Math.min(values.length, at - fromMinute))] ?? 0;
  let best: { from: number; to: number; portions: number } = { from: fromMinute, to: fromMinute + minutes, portions: -1 };
  for (let from = Math.floor(fromMinute / 15) * 15; from < fromMinute + values.length; from += 15) {
    const portions = upTo(from + minutes) - upTo(from);
    if (portions > best.portions + 1e-9) best = { from, to: from + minutes, portions };
  }
  return best;
}
