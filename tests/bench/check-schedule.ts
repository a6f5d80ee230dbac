/** A problem as the checker reads it. */
export interface PlainProblem {
  readonly durations: readonly number[];
  readonly demands: readonly (readonly number[])[];
  readonly capacities: readonly number[];
  readonly lags: readonly { readonly from: number; readonly to: number; readonly least: number }[];
  readonly earliest?: readonly number[];
  readonly latest?: readonly number[];
}

/** Reads a schedule minute by minute, without the scheduler's own code. Returns what is wrong, in words; empty when it is accepted. */
export function scheduleFaults(problem: PlainProblem, starts: ArrayLike<number>, makespan: number): string[] {
  const faults: string[] = [];
  const n = problem.durations.length;
  if (starts.length !== n) return [`${starts.length} starts for ${n} activities`];
  let end = 0;
  const taken = new Map<number, number[]>();
  for (let i = 0; i < n; i += 1) {
    const start = starts[i]!;
    if (!Number.isInteger(start) || start < 0) faults.push(`activity ${i} starts at ${start}`);
    const stop = start + problem.durations[i]!;
    end = Math.max(end, stop);
    if (problem.earliest !== undefined && start < problem.earliest[i]!) faults.push(`activity ${i} starts too early`);
    if (problem.latest !== undefined && stop > problem.latest[i]!) faults.push(`activity ${i} ends too late`);
    for (let t = start; t < stop; t += 1) {
      const row = taken.get(t) ?? problem.capacities.map(() => 0);
      problem.demands[i]!.forEach((amount, k) => { row[k]! += amount; });
      taken.set(t, row);
    }
  }
  for (const { from, to, least } of problem.lags) if (starts[to]! < starts[from]! + least) faults.push(`${to} starts less than ${least} after ${from}`);
  for (const [t, row] of taken) row.forEach((amount, k) => { if (amount > problem.capacities[k]!) faults.push(`minute ${t}: ${amount} of thing ${k}`); });
  if (end !== makespan) faults.push(`ends at ${end}, said ${makespan}`);
  return faults;
}
