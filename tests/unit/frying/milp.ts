import loadHighs from 'highs';
import type { FryProblem } from '../../../shared/frying';

/** What the solver proved of a problem: portions nobody gets, then batches, then (everybody served) portion-minutes of waiting. */
export interface Proven {
  readonly unmet: number;
  readonly batches: number;
  /** null when not asked for, or when the solver did not prove it in its time. */
  readonly waiting: number | null;
}
type Solver = Awaited<ReturnType<typeof loadHighs>>;

export const solver = (): Promise<Solver> => loadHighs();

interface Model {
  readonly lifts: readonly number[];
  readonly minutes: readonly { readonly at: number; readonly wanted: number }[];
  readonly rows: readonly string[];
  readonly whole: readonly string[];
  readonly bounds: readonly string[];
}

/** A minute as part of a variable's name. */
const name = (n: number): string => `${n < 0 ? 'm' : ''}${Math.abs(n)}`;

/**
 * The frying problem as a mixed integer programme, written from its statement (pans, loads, minutes) and sharing nothing with the planner:
 * z_a batches lifted at a, x_a_t portions from lift a eaten at t, u_t portions nobody gets.
 */
function model(p: FryProblem): Model {
  const counts = new Map<number, number>();
  for (const t of p.wanted) counts.set(t, (counts.get(t) ?? 0) + 1);
  const minutes = [...counts].map(([at, wanted]) => ({ at, wanted }));
  const from = Math.max(p.wanted[0]! - p.hold, p.earliest + p.fry);
  const to = p.wanted.at(-1)! - p.lead;
  const lifts = Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
  const reach = (a: number): { at: number; wanted: number }[] => minutes.filter((m) => m.at >= a + p.lead && m.at <= a + p.hold);
  const rows: string[] = [];
  for (const m of minutes) rows.push(`${lifts.filter((a) => m.at >= a + p.lead && m.at <= a + p.hold).map((a) => `x_${name(a)}_${name(m.at)}`).concat(`u_${name(m.at)}`).join(' + ')} = ${m.wanted}`);
  for (const a of lifts) {
    const eats = reach(a);
    if (eats.length > 0) rows.push(`${eats.map((m) => `x_${name(a)}_${name(m.at)}`).join(' + ')} - ${p.load} z_${name(a)} <= 0`);
  }
  const first = from - p.fry;
  for (let t = first; t < to - p.fry + p.cycle; t += 1) {
    const busy = lifts.filter((a) => a - p.fry <= t && t < a - p.fry + p.cycle);
    if (busy.length > 0) rows.push(`${busy.map((a) => `z_${name(a)}`).join(' + ')} <= ${p.free(t)}`);
  }
  return { lifts, minutes, rows, whole: lifts.map((a) => `z_${name(a)}`), bounds: lifts.map((a) => `0 <= z_${name(a)} <= ${p.pans}`) };
}

const text = (m: Model, goal: string, more: readonly string[]): string => [
  'Minimize', ` obj: ${goal}`, 'Subject To', ...[...m.rows, ...more].map((r, i) => ` r${i}: ${r}`), 'Bounds', ...m.bounds.map((b) => ` ${b}`), 'General', ` ${m.whole.join(' ')}`, 'End', '',
].join('\n');

/** Solves level after level. @throws Error when a level that must be proven is not. */
export function proven(highs: Solver, p: FryProblem, withWaiting: boolean, more = 0): Proven {
  if (p.wanted.length === 0) return { unmet: 0, batches: 0, waiting: 0 };
  const m = model(p);
  const unmetSum = m.minutes.map((x) => `u_${name(x.at)}`).join(' + ');
  const solve = (goal: string, rows: readonly string[]) => highs.solve(text(m, goal, rows), { time_limit: 60, mip_rel_gap: 0, mip_abs_gap: 0.5 });
  const first = solve(unmetSum, []);
  if (first.Status !== 'Optimal') throw new Error(`least unmet: ${first.Status}`);
  const unmet = Math.round(first.ObjectiveValue);
  if (m.whole.length === 0) return { unmet, batches: 0, waiting: 0 };
  const second = solve(m.whole.join(' + '), [`${unmetSum} <= ${unmet}`]);
  if (second.Status !== 'Optimal') throw new Error(`fewest batches: ${second.Status}`);
  const batches = Math.round(second.ObjectiveValue);
  if (!withWaiting || unmet > 0) return { unmet, batches, waiting: null };
  const goal = m.lifts.flatMap((a) => m.minutes.filter((x) => x.at >= a + p.lead && x.at <= a + p.hold).map((x) => `${x.at - a} x_${name(a)}_${name(x.at)}`)).join(' + ');
  const third = solve(goal, [`${unmetSum} <= 0`, `${m.whole.join(' + ')} <= ${batches + more}`]);
  return { unmet, batches, waiting: third.Status === 'Optimal' ? Math.round(third.ObjectiveValue) : null };
}
