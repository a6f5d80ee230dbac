/**
 * Scheduling instances of a folder against the best known: `npm run bench:timeline -- DIR [schedules ...]`. Exits 1 when the independent
 * checker does not accept a schedule, or a proven verdict is contradicted. Fields of the instances: `dur`, `req`, `cap`, `succ` or `lags`, `ub`.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { firstAnswer, search, searchWithMaximalLags, type ScheduleProblem } from '../../shared/timeline';
import { scheduleFaults } from './check-schedule';

interface Instance {
  name: string; lb: number | null; ub: number | null; cp?: number; dur: number[]; req: number[][]; cap: number[];
  succ?: number[][]; lags?: [number, number, number][]; feasible?: boolean;
}
/** A search is judged by the mean of several start numbers: one alone may be lucky. */
const startNumbers = [20_261_125, 1077, 1154, 1231, 1308];
const files = (target: string): string[] => (statSync(target).isFile() ? [target] : readdirSync(target).filter((f) => f.endsWith('.json')).sort().map((f) => path.join(target, f)));
const problemOf = (x: Instance): ScheduleProblem => ({
  durations: x.dur, demands: x.req, capacities: x.cap,
  lags: x.lags?.map(([from, to, least]) => ({ from, to, least })) ?? (x.succ ?? []).flatMap((next, from) => next.map((to) => ({ from, to, least: x.dur[from]! }))),
});
const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / Math.max(1, list.length);

let refused = 0;
let checked = 0;
function check(name: string, problem: ScheduleProblem, found: { readonly starts: ArrayLike<number>; readonly makespan: number }): void {
  checked += 1;
  const faults = scheduleFaults(problem, found.starts, found.makespan);
  if (faults.length === 0) return;
  refused += 1;
  console.log(`REFUSED ${name}: ${faults.slice(0, 3).join('; ')}`);
}

/** What a pass over all instances of a file, with one start number, found. */
class Tally {
  readonly aboveBest: number[] = [];
  readonly abovePath: number[] = [];
  readonly ms: number[] = [];
  equal = 0;

  add(x: Instance, found: ReturnType<typeof search>, took: number): void {
    const best = x.ub ?? found.makespan;
    this.ms.push(took);
    this.aboveBest.push(100 * (found.makespan / best - 1));
    if (x.cp !== undefined) this.abovePath.push(100 * (found.makespan / x.cp - 1));
    if (found.makespan <= best) this.equal += 1;
    if (found.makespan < best) console.log(`BETTER THAN KNOWN ${x.name}: ${found.makespan}, known ${best}`);
  }
}

function pass(list: readonly Instance[], budget: number, startNumber: number): Tally {
  const tally = new Tally();
  for (const x of list) {
    const problem = problemOf(x);
    const begun = performance.now();
    const found = budget <= 3 ? firstAnswer(problem, budget) : search(problem, startNumber, budget);
    tally.add(x, found, performance.now() - begun);
    if (found.schedules > budget) { refused += 1; console.log(`REFUSED ${x.name}: ${found.schedules} schedules for ${budget}`); }
    check(x.name, problem, found);
  }
  return tally;
}

function withoutMaximalLags(file: string, list: readonly Instance[], budgets: readonly number[]): void {
  for (const x of list.slice(0, 40)) firstAnswer(problemOf(x));
  for (const budget of budgets) {
    const passes = (budget <= 3 ? [0] : startNumbers).map((n) => pass(list, budget, n));
    const above = passes.map((t) => mean(t.aboveBest));
    const longest = passes.flatMap((t) => t.abovePath);
    const ms = passes.flatMap((t) => t.ms).sort((a, b) => a - b);
    const range = above.length > 1 ? `, ${Math.min(...above).toFixed(3)} to ${Math.max(...above).toFixed(3)} with ${above.length} start numbers` : '';
    console.log(`${path.basename(file)}  ${String(budget).padStart(5)} schedules: ${mean(above).toFixed(3)} % above the best known${range} (${mean(passes.map((t) => t.equal)).toFixed(0)} of ${list.length} equal)${longest.length > 0 ? `, ${mean(longest).toFixed(2)} % above the longest path` : ''}; ${mean(ms).toFixed(3)} ms each, p50 ${ms[Math.floor(ms.length / 2)]!.toFixed(3)}, worst ${ms.at(-1)!.toFixed(2)}`);
  }
}

function withMaximalLags(file: string, list: readonly Instance[], steps: number): void {
  const count = { proven: 0, solved: 0, optimal: 0, noneFound: 0, infeasible: 0, feasible: 0 };
  const [gap, ms]: [number[], number[]] = [[], []];
  for (const x of list) {
    const problem = problemOf(x);
    const begun = performance.now();
    const answer = searchWithMaximalLags(problem, steps);
    ms.push(performance.now() - begun);
    if (x.feasible === false) count.infeasible += 1;
    else count.feasible += 1;
    if (answer.kind === 'impossible') {
      if (x.feasible !== false) { refused += 1; console.log(`REFUSED ${x.name}: called impossible, a schedule is known`); } else count.proven += 1;
    } else if (answer.kind === 'unknown') {
      count.noneFound += 1;
      console.log(`no answer within ${steps} steps: ${x.name} (${x.feasible === false ? 'proven infeasible' : 'feasible'})`);
    } else {
      if (x.feasible === false) { refused += 1; console.log(`REFUSED ${x.name}: scheduled, proven infeasible`); }
      check(x.name, problem, answer);
      count.solved += 1;
      if (answer.optimal) count.optimal += 1;
      if (x.ub !== null) gap.push(100 * (answer.makespan / x.ub - 1));
      if (answer.optimal && x.lb !== null && answer.makespan < x.lb) { refused += 1; console.log(`REFUSED ${x.name}: below the lower bound`); }
    }
  }
  console.log(`${path.basename(file)}: ${count.proven} of ${count.infeasible} infeasible proven, ${count.solved} of ${count.feasible} feasible solved (${count.optimal} proven shortest), ${count.noneFound} without answer; ${mean(gap).toFixed(3)} % above the best known; ${mean(ms).toFixed(1)} ms each, worst ${Math.max(...ms).toFixed(0)}`);
}

const [target, ...rest] = process.argv.slice(2);
if (target === undefined) {
  console.error('name a file or a folder of instances: npm run bench:timeline -- DIR');
  process.exit(2);
}
const budgets = rest.length > 0 ? rest.map(Number) : [1, 3, 1000, 5000];
for (const file of files(target)) {
  const parsed: unknown = JSON.parse(readFileSync(file, 'utf8'));
  const list = (Array.isArray(parsed) ? parsed : [parsed]) as Instance[];
  if (list.some((x) => x.lags !== undefined)) withMaximalLags(file, list, 100_000);
  else withoutMaximalLags(file, list, budgets);
}
console.log(`${checked - refused} schedules accepted, ${refused} refused`);
process.exit(refused > 0 || checked === 0 ? 1 : 0);
