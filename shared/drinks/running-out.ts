import type { Brewing } from '../event';
import type { Poured } from './serving';
import type { Vessel } from './vessels';

/** Litres wanted up to each minute: `sums[i]` is all that is wanted before minute `fromMinute + i`. Never falls. */
export interface Running {
  readonly fromMinute: number;
  readonly sums: Float64Array;
}

/** Running totals of litres wanted in each minute from `fromMinute`. */
export function running(fromMinute: number, litres: readonly number[]): Running {
  const totals: Running = { fromMinute, sums: new Float64Array(litres.length + 1) };
  countAgain(totals, litres, 0);
  return totals;
}

/** Brings totals up to date after litres from index `from` on have changed. */
export function countAgain({ sums }: Running, litres: readonly number[], from: number): void {
  for (let i = Math.max(0, from); i < litres.length; i += 1) sums[i + 1] = (sums[i] ?? 0) + (litres[i] ?? 0);
}

/** Litres wanted before a minute. */
export const wantedBefore = ({ fromMinute, sums }: Running, minute: number): number => sums[Math.max(0, Math.min(sums.length - 1, minute - fromMinute))] ?? 0;

/** First minute from `low` on, up to `high`, by whose end more than so many litres have been wanted; `high + 1` when never. Halving: totals never fall. */
function passes(wanted: Running, low: number, high: number, litres: number): number {
  let [from, to] = [low, high + 1];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (wantedBefore(wanted, middle + 1) > litres) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** First minute a filling would be empty with more wanted, whatever its age and heat; the minute after `last` when it carries everybody. */
function dryAt(poured: Poured, wanted: Running, last: number): number {
  const before = wantedBefore(wanted, poured.at);
  const short = passes(wanted, poured.at, last, before + poured.litres + 1e-9);
  if (short > last) return last + 1;
  // Emptied to the last drop in a minute before: that minute is served, the next is not.
  const empty = passes(wanted, poured.at, last, before + poured.litres - 1e-9);
  return empty < short ? empty + 1 : short;
}

/**
 * First minute a filling would be empty, too old or too cool, or the minute after `last` when it carries everybody. As `serve`, without
 * keeping the minutes: sizes are found by trying, so this runs often. The minutes are walked only where the drink could grow too cool at all.
 */
export function lastsUntil(brewing: Brewing, vessel: Vessel, poured: Poured, wanted: Running, last: number): number {
  const end = Math.min(last + 1, Math.max(poured.at, Math.ceil(poured.oldAt)), dryAt(poured, wanted, last));
  const limit = brewing.serveAboveC;
  if (limit === null || staysWarm(vessel, poured, limit, end - poured.at)) return end;
  return coolAt(vessel, poured, wanted, limit, end);
}

/** True when even a vessel that is nearly empty all the time keeps its drink at the limit for so many minutes. */
function staysWarm(vessel: Vessel, { celsius }: Poured, limit: number, minutes: number): boolean {
  if (celsius < limit) return false;
  if (vessel.heldC !== null && vessel.heldC >= limit) return true;
  return vessel.roomC + (celsius - vessel.roomC) * Math.exp((-vessel.cooling.value / vessel.leastShare) * (minutes / 60)) > limit + 1e-6;
}

/** First minute before `end` in which a cup would be under the limit; `end` when there is none. The share of heat lost is worked out again only when the level moves. */
function coolAt(vessel: Vessel, poured: Poured, wanted: Running, limit: number, end: number): number {
  let level = poured.litres;
  let temperature = poured.celsius;
  let [kept, keptAt] = [1, -1];
  const [perHour, least, room, held] = [vessel.cooling.value, vessel.leastShare, vessel.roomC, vessel.heldC];
  let before = wantedBefore(wanted, poured.at);
  for (let t = poured.at; t < end; t += 1) {
    const after = wantedBefore(wanted, t + 1);
    if (after > before && temperature < limit) return t;
    level -= after - before;
    before = after;
    if (held !== null && temperature <= held) continue;
    const share = Math.max(least, level / vessel.litres);
    if (share !== keptAt) [kept, keptAt] = [Math.exp((-perHour / share) * (1 / 60)), share];
    temperature = room + (temperature - room) * kept;
    if (held !== null && temperature < held) temperature = held;
  }
  return end;
}
