import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lastsUntil, running, wantedBefore } from '../../../shared/drinks/running-out';
import { nextC, type Poured } from '../../../shared/drinks/serving';
import type { Vessel } from '../../../shared/drinks/vessels';
import { vesselsOf } from '../../../shared/drinks/vessels';
import { drinkEvent, flask } from './drink-event';

const brewing = drinkEvent().recipes[0]!.brewing!;
const vessel = (more: Record<string, unknown>): Vessel => vesselsOf(drinkEvent({ dispensers: [{ ...flask, litres: 10, ...more }] }), 'tea', new Set())[0]!;

/** The same question walked minute by minute, with nothing summed beforehand. */
function walked(limit: number | null, v: Vessel, poured: Poured, from: number, litres: readonly number[], last: number): number {
  let [level, celsius] = [poured.litres, poured.celsius];
  for (let t = poured.at; t <= last; t += 1) {
    const wanted = litres[t - from] ?? 0;
    if (t >= poured.oldAt || wanted > level + 1e-9 || (limit !== null && wanted > 0 && celsius < limit)) return t;
    level = Math.max(0, level - wanted);
    const more = litres.slice(t - from + 1).reduce((a, b) => a + b, 0);
    if (level <= 1e-9 && t < last) return more > 0 ? t + 1 : last + 1;
    celsius = nextC(v, celsius, level);
  }
  return last + 1;
}

describe('how long a filling lasts', () => {
  const cups = fc.array(fc.nat(3), { minLength: 30, maxLength: 200 });
  it('is what walking its minutes gives: dry, old, cool, in foam, a heated urn and an open pot', () => {
    const ends = new Set<string>();
    fc.assert(fc.property(cups, fc.integer({ min: 1, max: 100 }), fc.integer({ min: 63, max: 90 }), fc.integer({ min: 0, max: 60 }), fc.integer({ min: 10, max: 240 }), fc.constantFrom('foam', 'none', 'heated', 'vacuum'), fc.boolean(),
      (perMinute, tenths, celsius, after, age, insulation, hot) => {
        // Eighths of a litre, so that totals are exact and a filling can be emptied to the last drop.
        const litres = perMinute.map((n) => n / 8);
        const last = 600 + litres.findLastIndex((l) => l > 0);
        const v = vessel({ insulation });
        const poured = { at: 600 + after - 10, litres: tenths / 8, celsius, oldAt: 600 + after - 10 + age };
        const limit = hot ? 65 : null;
        const expected = walked(limit, v, poured, 600, litres, last);
        ends.add(expected > last ? 'all' : expected === poured.oldAt ? 'old' : 'short');
        expect(lastsUntil({ ...brewing, serveAboveC: limit }, v, poured, running(600, litres), last)).toBe(Math.max(Math.min(expected, last + 1), Math.min(poured.at, last + 1)));
      }), { numRuns: 400 });
    expect([...ends].sort()).toEqual(['all', 'old', 'short']);
  });
  it('counts what is wanted before a minute, nothing before the first and all after the last', () => {
    const totals = running(600, [1, 0, 2]);
    expect([590, 600, 601, 602, 603, 700].map((m) => wantedBefore(totals, m))).toEqual([0, 0, 1, 1, 3, 3]);
  });
});
