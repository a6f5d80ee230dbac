import type { Brewing } from '../event';
import { cooled, mixed } from './rules';
import type { BrewValues } from './brew-values';
import type { Vessel } from './vessels';

/** One filling being drunk: level and temperature at the start of each minute from `at`, until it is empty, too old or too cool. */
export interface Serving {
  readonly at: number;
  readonly litres: readonly number[];
  readonly celsius: readonly number[];
  /** Litres taken in each minute. */
  readonly drawn: readonly number[];
  /** First minute it serves no more. */
  readonly until: number;
  readonly served: number;
  readonly left: number;
}

/** What is poured into a vessel: when, how much, how warm it is then, and when its quality time is over. */
export interface Poured {
  readonly at: number;
  readonly litres: number;
  readonly celsius: number;
  readonly oldAt: number;
}

/** Temperature just after a hot drink is poured into the rinsed vessel: the vessel takes its share of heat. */
export function filledC(values: BrewValues, brewing: Brewing, vessel: Vessel, litres: number, potC: number): number {
  // In a brewing urn nothing is poured over: vessel and drink are as hot as each other.
  if (!brewing.hot || vessel.urn !== null) return potC;
  return mixed(litres, potC, values.water.value, vessel.massKg * values.vesselCp, Math.min(potC, values.vesselC));
}

/** Temperature a minute later. A part-full vessel cools faster, in proportion to 1 / fill share, down to the least share. */
export function nextC(vessel: Vessel, celsius: number, level: number): number {
  if (vessel.heldC !== null && celsius <= vessel.heldC) return celsius;
  const share = Math.max(vessel.leastShare, level / vessel.litres);
  const next = cooled(celsius, vessel.roomC, vessel.cooling.value / share, 1 / 60);
  return vessel.heldC === null ? next : Math.max(vessel.heldC, next);
}

/**
 * Serves a filling minute by minute: `demand(t)` litres, until the last minute wanted. It ends when it is `oldAt` (quality time over),
 * when it would be served under the drink's limit, or when it is empty with more wanted.
 */
export function serve(brewing: Brewing, vessel: Vessel, poured: Poured, demand: (minute: number) => number, last: number): Serving {
  const litres: number[] = [];
  const celsius: number[] = [];
  const taken: number[] = [];
  let level = poured.litres;
  let temperature = poured.celsius;
  let served = 0;
  let t = poured.at;
  for (; t <= last && t < poured.oldAt; t += 1) {
    const wanted = demand(t);
    if (wanted > 0 && (level <= 1e-9 || (brewing.serveAboveC !== null && temperature < brewing.serveAboveC))) break;
    litres.push(level);
    celsius.push(temperature);
    const drawn = Math.min(level, wanted);
    taken.push(drawn);
    served += drawn;
    level -= drawn;
    if (level <= 1e-9) level = 0;
    temperature = nextC(vessel, temperature, level);
    // The cup that finds it empty is filled from the next filling in the same minute.
    if (drawn < wanted - 1e-9) break;
  }
  return { at: poured.at, litres, celsius, drawn: taken, until: t, served, left: level };
}
