import type { Brewing, Event } from '../event';
import { settle } from '../household';
import { cooled, mixed } from './rules';
import type { Vessel } from './vessels';

/** One filling being drunk: level and temperature at the start of each minute from `at`, until it is empty, too old or too cool. */
export interface Serving {
  readonly at: number;
  readonly litres: readonly number[];
  readonly celsius: readonly number[];
  /** First minute it serves no more. */
  readonly until: number;
  readonly served: number;
  readonly left: number;
}

/** Temperature just after a hot drink is poured into the rinsed vessel: the vessel takes its share of heat. */
export function filledC(event: Event, brewing: Brewing, vessel: Vessel, litres: number, potC: number): number {
  if (!brewing.hot) return potC;
  const c = settle(event, 'water.cRho').value;
  return mixed(litres, potC, c, vessel.massKg * settle(event, 'brew.vesselCp').value, Math.min(potC, settle(event, 'brew.vesselC').value));
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
export function serve(brewing: Brewing, vessel: Vessel, fill: { readonly at: number; readonly litres: number; readonly celsius: number; readonly oldAt: number }, demand: (minute: number) => number, last: number): Serving {
  const litres: number[] = [];
  const celsius: number[] = [];
  let level = fill.litres;
  let temperature = fill.celsius;
  let served = 0;
  let t = fill.at;
  for (; t <= last && t < fill.oldAt; t += 1) {
    const wanted = demand(t);
    if (wanted > 0 && (level <= 1e-9 || (brewing.serveAboveC !== null && temperature < brewing.serveAboveC))) break;
    litres.push(level);
    celsius.push(temperature);
    const drawn = Math.min(level, wanted);
    served += drawn;
    level -= drawn;
    if (level <= 1e-9) level = 0;
    temperature = nextC(vessel, temperature, level);
    // The cup that finds it empty is filled from the next filling in the same minute.
    if (drawn < wanted - 1e-9) break;
  }
  return { at: fill.at, litres, celsius, until: t, served, left: level };
}
