import type { Brewing } from '../event';
import type { Series } from '../measure';
import type { DishPlan } from '../menu';
import type { PlacedRound } from './brewing';
import { countAgain, running, wantedBefore, type Running } from './running-out';
import type { Serving } from './serving';
import type { Vessel } from './vessels';

/** A filling with its rounds and how it was drunk. `serving` is cut short when the vessel is filled again before it is empty. */
export interface Filling {
  readonly vessel: Vessel;
  readonly rounds: readonly PlacedRound[];
  readonly litres: number;
  serving: Serving;
}

/** How much and how long one filling should carry at most, so that the fewest fillings are about equal. */
export interface Share {
  readonly litres: number;
  readonly minutes: number;
}

/** One drink being planned forward in time. */
export interface DrinkLine {
  readonly dish: DishPlan;
  readonly brewing: Brewing;
  readonly vessels: readonly Vessel[];
  /** Last minute with demand. */
  readonly last: number;
  /** First minute of `wanted`. */
  readonly fromMinute: number;
  /** Litres wanted in each minute that no filling before the newest one has served. */
  readonly wanted: number[];
  /** Totals of `wanted`, right up to index `changed`: read by `totalsOf`. */
  readonly totals: Running;
  changed: number;
  readonly fillings: Filling[];
  /** Worked out at the first filling. */
  share: Share | null;
  /** Minute the next filling is wanted; null when everybody is served or given up. */
  next: number | null;
  unmetLitres: number;
}

/** A drink at its first filling, due at `firstFill`. Litres are cups × cup size; `last` is the last minute with a cup. */
export function drinkLine(dish: DishPlan, brewing: Brewing, vessels: readonly Vessel[], cups: Series, firstFill: number): DrinkLine {
  const wanted = cups.values.map((n) => (n * brewing.cupMl) / 1000);
  return { dish, brewing, vessels, last: cups.fromMinute + cups.values.findLastIndex((n) => n > 0), fromMinute: cups.fromMinute, wanted, totals: running(cups.fromMinute, wanted), changed: wanted.length, fillings: [], share: null, next: firstFill, unmetLitres: 0 };
}

/** Litres still wanted in a minute. */
export const wantedAt = (line: DrinkLine, minute: number): number => line.wanted[minute - line.fromMinute] ?? 0;

/** Running totals of what is still wanted; counted again after something of it was served or given up. */
export function totalsOf(line: DrinkLine): Running {
  if (line.changed < line.wanted.length) countAgain(line.totals, line.wanted, line.changed);
  line.changed = line.wanted.length;
  return line.totals;
}

/** Litres still wanted from `from` (inclusive) until `until` (exclusive). */
export function wantedBetween(line: DrinkLine, from: number, until: number): number {
  const totals = totalsOf(line);
  return Math.max(0, wantedBefore(totals, until) - wantedBefore(totals, from));
}

/** Ends the newest filling at `until`, minutes: what it served by then is wanted no more, what it still holds is left. */
export function settleNewest(line: DrinkLine, until: number): void {
  const newest = line.fillings.at(-1);
  if (newest === undefined) return;
  const { serving } = newest;
  if (until < serving.until) {
    const minutes = Math.max(0, until - serving.at);
    const drawn = serving.drawn.slice(0, minutes);
    const served = drawn.reduce((a, b) => a + b, 0);
    newest.serving = { at: serving.at, litres: serving.litres.slice(0, minutes), celsius: serving.celsius.slice(0, minutes), drawn, until, served, left: serving.litres[minutes] ?? serving.left };
  }
  line.changed = Math.min(line.changed, Math.max(0, newest.serving.at - line.fromMinute));
  newest.serving.drawn.forEach((litres, i) => {
    const at = newest.serving.at + i - line.fromMinute;
    const rest = (line.wanted[at] ?? 0) - litres;
    if (litres > 0) line.wanted[at] = rest < 1e-9 ? 0 : rest;
  });
}

/** Gives up what is wanted before a minute: nobody can be served. */
export function giveUpBefore(line: DrinkLine, minute: number): void {
  for (let i = 0; i < minute - line.fromMinute && i <= line.last - line.fromMinute; i += 1) {
    const litres = line.wanted[i] ?? 0;
    if (litres === 0) continue;
    line.unmetLitres += litres;
    line.wanted[i] = 0;
    line.changed = Math.min(line.changed, i);
  }
}
