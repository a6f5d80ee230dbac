import type { Dish, Event, Frying } from '../event';
import type { DishPlan } from '../menu';
import { settle } from '../household';
import { balanced, fewestBatches, freshPlan, isPlan, mended, servesAll, solve, waitingOf, type FryProblem, type FrySolution } from './exact';
import type { FryLine } from './lines';
import { sizeLoad, type SizedLoad } from './load';

/** A dish on one line: its load there and how fast the line fries it. */
export interface DishPart {
  readonly line: FryLine;
  readonly load: SizedLoad;
  /** Pieces a minute with all pans of the line. */
  readonly rate: number;
}

/** The lines that fry a dish and can heat its oil. */
export function dishParts(event: Event, dish: DishPlan, frying: Frying, lines: readonly FryLine[]): DishPart[] {
  return lines.filter((l) => l.station.dishes.includes(dish.id)).flatMap((line) => {
    const pan = line.pans[0];
    if (pan === undefined) return [];
    const load = sizeLoad(event, pan, frying, dish.recipe.id, line.sharing);
    return load.heats ? [{ line, load, rate: (load.plan.pieces.value * line.pans.length) / load.plan.cycleMinutes.value }] : [];
  });
}

/**
 * Solves a dish over its lines. Unequal lines share the demand by their rate: each portion goes to the line furthest behind its share
 * (exact for one line; over several unequal lines the split is a rule, not a proof). Further batches of a dish fried freshest go to the line
 * whose pieces wait longest.
 */
export function solveParts(event: Event, frying: Frying, parts: readonly DishPart[], wanted: readonly number[], fresh: Dish['fryFresh'], effort?: number): FrySolution[] {
  const problems = splitByRate(parts.map((p) => p.rate), wanted).map((mine, at) => problemOf(event, frying, parts[at], mine));
  const found = problems.map((p) => ({ problem: p, solution: solve(p, effort) }));
  if (fresh === undefined) return found.map(({ problem, solution }) => evened(event, problem, solution));
  const waits = found.map(({ problem, solution }) => waitingOf({ ...problem, wanted: solution.served }, solution.batches));
  const longest = waits.indexOf(Math.max(...waits));
  return found.map(({ problem, solution }, at) => freshened(event, problem, solution, at === longest ? fresh.moreBatches : 0));
}

/** Without tiny batches where portions may wait a little longer: as many batches, at the same minutes, but for the few that a batch of one or two needs. */
function evened(event: Event, problem: FryProblem, found: FrySolution): FrySolution {
  const atLeast = Math.ceil(problem.load * settle(event, 'fry.leastBatch').value);
  const served = { ...problem, wanted: found.served, lead: found.lead };
  const level = balanced(served, found.batches, atLeast, settle(event, 'fry.moreWait').value);
  return { ...found, batches: mended(served, level, atLeast, settle(event, 'fry.smallBatch').value) };
}

/** With several equal pans: partial plans kept, and how many are looked at, so that a plan takes some tens of milliseconds at most. */
const several = { width: 8, effort: 400_000 };

/** The freshest plan for the portions that are served, with `more` batches than the fewest, or as many more as there can be. */
function freshened(event: Event, problem: FryProblem, found: FrySolution, more: number): FrySolution {
  const small = Math.ceil(problem.load * settle(event, 'fry.leastBatch').value);
  const dear = settle(event, 'fry.smallBatch').value;
  const served = { ...problem, wanted: found.served, lead: found.lead, earliest: Math.max(problem.earliest, (found.served[0] ?? 0) - problem.hold - problem.fry) };
  for (let n = more; n >= 0; n -= 1) {
    const plan = freshPlan(served, { more: n, small, dear, ...several });
    if (plan !== null) return { ...found, batches: plan.batches };
  }
  return evened(event, problem, found);
}

/** Fewest batches of the portions a line serves of a dish if its pans were this dish's own: no plan has fewer. */
export function aloneBatches(event: Event, frying: Frying, part: DishPart, served: readonly number[], lead: number): number {
  const problem = problemOf(event, frying, part, served);
  const answer = fewestBatches({ ...problem, lead, free: () => problem.pans, earliest: (served[0] ?? 0) - problem.hold - problem.fry });
  return isPlan(answer) ? answer.length : 0;
}

/** Portions that go short of a dish if the pans of its one line were its own: no plan leaves fewer. 0 where that is not proven. */
export function aloneShort(event: Event, frying: Frying, part: DishPart, wanted: readonly number[]): number {
  const problem = problemOf(event, frying, part, wanted);
  const { unmet, exact } = solve({ ...problem, lead: 0, free: () => problem.pans });
  return exact ? unmet.length : 0;
}

/** True when every portion can be served if guests wait up to so many minutes for theirs, in the pans as other dishes leave them. */
export const servesWaiting = (event: Event, frying: Frying, parts: readonly DishPart[], wanted: readonly number[], guestsWait: number): boolean =>
  splitByRate(parts.map((p) => p.rate), wanted).every((mine, at) => servesAll({ ...problemOf(event, frying, parts[at], mine), lead: -guestsWait }));

function problemOf(event: Event, frying: Frying, part: DishPart | undefined, wanted: readonly number[]): FryProblem {
  const pans = part?.line.pans.length ?? 0;
  const taken = part?.line.taken;
  return {
    wanted, pans, earliest: -Infinity, load: part?.load.plan.pieces.value ?? 1,
    fry: part?.load.plan.fryMinutes ?? 1, cycle: Math.max(part?.load.plan.cycleMinutes.value ?? 1, part?.load.plan.fryMinutes ?? 1),
    hold: Math.floor(frying.holdMinutes), lead: Math.floor(event.preferences.fryLeadMinutes),
    free: (minute) => pans - (taken?.get(minute) ?? 0),
  };
}

/** Shares portions over lines in proportion to their rates, keeping each line's portions in order of time. */
export function splitByRate(rates: readonly number[], wanted: readonly number[]): number[][] {
  if (rates.length === 1) return [[...wanted]];
  const total = rates.reduce((a, b) => a + b, 0);
  const shares: number[][] = rates.map(() => []);
  wanted.forEach((minute, n) => {
    const behind = rates.map((r, i) => ((n + 1) * r) / total - (shares[i]?.length ?? 0));
    const next = behind.reduce((best, b, i) => (b > (behind[best] ?? -Infinity) + 1e-9 ? i : best), 0);
    shares[next]?.push(minute);
  });
  return shares;
}
