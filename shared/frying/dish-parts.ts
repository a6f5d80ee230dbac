import type { Event, Frying } from '../event';
import type { DishPlan } from '../menu';
import { settle } from '../household';
import { balanced, servesAll, solve, type FryProblem, type FrySolution } from './exact';
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

/** Changes tried on a problem: more pans (on the fastest line), a longer hold, a larger load. */
export interface Trial {
  readonly morePans?: number;
  readonly moreHold?: number;
  readonly loadTimes?: number;
}

/**
 * Solves a dish over its lines. Unequal lines share the demand by their rate: each portion goes to the line furthest behind its share
 * (exact for one line; over several unequal lines the split is a rule, not a proof).
 */
export const solveParts = (event: Event, frying: Frying, parts: readonly DishPart[], wanted: readonly number[]): FrySolution[] =>
  splitByRate(parts.map((p) => p.rate), wanted).map((mine, at) => evened(event, problemOf(event, frying, parts[at], mine, {})));

/** Solved, then without tiny batches where portions may wait a little longer: as many batches, at the same minutes. */
function evened(event: Event, problem: FryProblem): FrySolution {
  const found = solve(problem);
  const atLeast = Math.ceil(problem.load * settle(event, 'fry.leastBatch').value);
  return { ...found, batches: balanced({ ...problem, wanted: found.served, lead: found.lead }, found.batches, atLeast, settle(event, 'fry.moreWait').value) };
}

/** True when a change lets every portion be served. More pans go to the first line, which then takes a larger share. */
export function trialServes(event: Event, frying: Frying, parts: readonly DishPart[], wanted: readonly number[], trial: Trial): boolean {
  const rates = parts.map((p, at) => (at === 0 ? (p.rate * (p.line.pans.length + (trial.morePans ?? 0))) / p.line.pans.length : p.rate));
  return splitByRate(rates, wanted).every((mine, at) => servesAll(problemOf(event, frying, parts[at], mine, at === 0 ? trial : { ...trial, morePans: 0 })));
}

function problemOf(event: Event, frying: Frying, part: DishPart | undefined, wanted: readonly number[], trial: Trial): FryProblem {
  const more = trial.morePans ?? 0;
  const pans = (part?.line.pans.length ?? 0) + more;
  const taken = part?.line.taken;
  return {
    wanted, pans, earliest: -Infinity,
    load: Math.max(1, Math.floor((part?.load.plan.pieces.value ?? 1) * (trial.loadTimes ?? 1))),
    fry: part?.load.plan.fryMinutes ?? 1, cycle: Math.max(part?.load.plan.cycleMinutes.value ?? 1, part?.load.plan.fryMinutes ?? 1),
    hold: Math.floor(frying.holdMinutes) + (trial.moreHold ?? 0), lead: Math.floor(event.preferences.fryLeadMinutes),
    free: (minute) => pans - (taken?.get(minute) ?? 0),
  };
}

/** Shares portions over lines in proportion to their rates, keeping each line's portions in order of time. */
export function splitByRate(rates: readonly number[], wanted: readonly number[]): number[][] {
  const total = rates.reduce((a, b) => a + b, 0);
  const shares: number[][] = rates.map(() => []);
  wanted.forEach((minute, n) => {
    const behind = rates.map((r, i) => ((n + 1) * r) / total - (shares[i]?.length ?? 0));
    const next = behind.reduce((best, b, i) => (b > (behind[best] ?? -Infinity) + 1e-9 ? i : best), 0);
    shares[next]?.push(minute);
  });
  return shares;
}
