import type { Plan } from '../../../shared/plan';

/** A point of a running total: by minute `at`, so many pieces. */
export interface Total {
  readonly at: number;
  readonly pieces: number;
}

/** Running totals of one fried dish: lifted out; wanted by then; and the most that could lie ready without growing stale (what will be wanted within the hold time). */
export interface Supply {
  readonly from: number;
  readonly to: number;
  readonly most: number;
  readonly holdMinutes: number;
  readonly lifted: readonly Total[];
  readonly wanted: readonly Total[];
  readonly fresh: readonly Total[];
}

/** Reads the totals off a plan; null when the dish is not fried. */
export function supplyOf(plan: Plan, dish: string): Supply | null {
  const found = plan.menu.dishes.find((d) => d.id === dish);
  const holdMinutes = found?.recipe.frying?.holdMinutes;
  if (found === undefined || holdMinutes === undefined) return null;
  const wanted: Total[] = [{ at: found.demand.fromMinute, pieces: 0 }];
  let sum = 0;
  found.demand.values.forEach((n, i) => {
    sum += n;
    if (n !== 0) wanted.push({ at: found.demand.fromMinute + i, pieces: sum });
  });
  let out = 0;
  const batches = plan.frying.batches.filter((b) => b.dish === dish).sort((a, b) => a.liftAt - b.liftAt);
  const lifted = batches.map((b) => ({ at: b.liftAt, pieces: (out += b.pieces) }));
  const from = Math.min(lifted[0]?.at ?? Infinity, wanted[1]?.at ?? found.demand.fromMinute) - 10;
  const last = Math.max(lifted.at(-1)?.at ?? 0, wanted.at(-1)?.at ?? 0) + 10;
  const spread = (points: readonly Total[]): Total[] => [{ at: from, pieces: 0 }, ...points.filter((p) => p.at >= from), { at: last, pieces: points.at(-1)?.pieces ?? 0 }];
  const ahead = wanted.map((p) => ({ at: Math.max(from, p.at - holdMinutes), pieces: p.pieces }));
  return { from, to: last, most: Math.max(out, sum, 1), holdMinutes, lifted: spread(lifted), wanted: spread(wanted), fresh: spread(ahead) };
}
