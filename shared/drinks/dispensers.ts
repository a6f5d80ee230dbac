import { minutes } from '../measure';
import type { DrinkLine, Filling } from './drink-line';
import { nextC } from './serving';
import type { DispenserPlan } from './types';
import type { Vessel } from './vessels';

/** A vessel from its first filling to the last minute of the drink: level and temperature at the start of each minute. */
export function dispenserPlan(line: DrinkLine, vessel: Vessel): DispenserPlan | null {
  const mine = line.fillings.filter((f) => f.vessel === vessel);
  const first = mine[0];
  if (first === undefined) return null;
  const from = first.serving.at;
  const litres: number[] = [];
  const celsius: number[] = [];
  mine.forEach((f, i) => {
    const until = Math.max(f.serving.until, mine[i + 1]?.serving.at ?? line.last + 1);
    record(vessel, f, from, until, litres, celsius);
  });
  return {
    id: vessel.id, name: vessel.name, drink: line.dish.id, capacityLitres: vessel.litres, fromMinute: minutes(from), litres, celsius, coolingPerHour: vessel.cooling,
  };
}

/** Writes a filling; after it serves no more, what is left stands and cools, an empty vessel has the room's temperature. */
function record(vessel: Vessel, f: Filling, from: number, until: number, litres: number[], celsius: number[]): void {
  const start = f.serving.at - from;
  f.serving.litres.forEach((l, i) => {
    litres[start + i] = l;
    celsius[start + i] = f.serving.celsius[i] ?? vessel.roomC;
  });
  let temperature = f.serving.celsius.at(-1) ?? vessel.roomC;
  for (let at = start + f.serving.litres.length; at < until - from; at += 1) {
    litres[at] = f.serving.left;
    temperature = f.serving.left > 0 ? nextC(vessel, temperature, f.serving.left) : vessel.roomC;
    celsius[at] = temperature;
  }
}
