import type { BrewPlace } from './brew-place';
import { totalsOf, wantedBetween, type DrinkLine, type Share } from './drink-line';
import { lastsUntil } from './running-out';
import { filledC } from './serving';
import type { Vessel } from './vessels';

/** Temperature in the pot when it is poured right after straining; water from the tap; other cold drinks from the cold. */
export function freshC({ event, values }: BrewPlace, line: DrinkLine): number {
  if (line.brewing.hot) return values.strainedC;
  return line.brewing.method === 'water' ? event.kitchen.waterC : values.coldC;
}

const tenthsUp = (litres: number): number => Math.ceil(litres * 10 - 1e-9) / 10;

/** First minute so many litres, poured fresh at `at`, would not carry; `minutes` is how old they may grow. */
function carriesUntil(place: BrewPlace, line: DrinkLine, vessel: Vessel, at: number, share: Share): number {
  const celsius = filledC(place.values, line.brewing, vessel, share.litres, freshC(place, line));
  return lastsUntil(line.brewing, vessel, { at, litres: share.litres, celsius, oldAt: at + share.minutes }, totalsOf(line), line.last);
}

/** A filling of no more than a share at `at`: what is wanted until then and a cup to spare, and how long that lasts. A smaller filling cools sooner. */
function filling(place: BrewPlace, line: DrinkLine, vessel: Vessel, at: number, share: Share): { readonly litres: number; readonly until: number } {
  const most = carriesUntil(place, line, vessel, at, share);
  const spare = most > line.last ? 0 : wantedBetween(line, at, most - place.values.refillLead) + line.brewing.cupMl / 1000;
  const litres = Math.min(share.litres, tenthsUp(Math.max(spare, wantedBetween(line, at, most))));
  return { litres, until: litres < share.litres && line.brewing.serveAboveC === null ? most : carriesUntil(place, line, vessel, at, { litres, minutes: share.minutes }) };
}

/** Fillings needed from `at` on when each carries no more than the share; one more than `most` when there would be more. */
function fillingsWith(place: BrewPlace, line: DrinkLine, vessel: Vessel, at: number, share: Share, most: number): number {
  let t = at;
  for (let n = 1; n <= most; n += 1) {
    const { until } = filling(place, line, vessel, t, share);
    if (until > line.last) return n;
    t = Math.max(t + 1, until - place.values.refillLead);
  }
  return most + 1;
}

/** A vessel that is never too small. Unit: litres. */
const boundless = 1e6;

/** Smallest whole number between `low` and `high` that is enough; `high` is known to be. Looks near `low` first, where it mostly lies. */
function smallest(low: number, high: number, enough: (n: number) => boolean): number {
  let [from, to] = [low, high];
  for (let step = 1; from < to; step *= 2) {
    const near = from + step - 1;
    if (near >= to) break;
    if (enough(near)) to = near;
    else from = near + 1;
  }
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (enough(middle)) to = middle;
    else from = middle + 1;
  }
  return to;
}

/**
 * As few fillings as full vessels need, and then about equal ones, so that none is made for the last cup or two: the shortest age, then
 * the fewest litres, that still do with that number.
 */
export function evenShare(place: BrewPlace, line: DrinkLine, vessel: Vessel, at: number): Share {
  const age = line.brewing.goodForMinutes;
  const full: Share = { litres: vessel.litres, minutes: age };
  const whole = wantedBetween(line, at, line.last + 1);
  // More than this many is a vessel far too small; equal shares are no help then.
  const many = 60;
  const fewest = fillingsWith(place, line, vessel, at, full, many);
  if (fewest > many || fewest === 1) return full;
  const does = (share: Share): boolean => fillingsWith(place, line, vessel, at, share, fewest) <= fewest;
  // Where the vessel is what sets the number, the litres are shared; where age or heat is, the hours come first.
  const bySize = fillingsWith(place, line, vessel, at, { litres: boundless, minutes: age }, fewest) < fewest;
  const minutes = bySize ? age : smallest(Math.min(age, Math.floor((line.last - at) / fewest)), age, (n) => does({ litres: vessel.litres, minutes: n }));
  const tenths = Math.floor(vessel.litres * 10 + 1e-9);
  const litres = smallest(Math.min(tenths, Math.floor((whole / fewest) * 10)), tenths, (n) => does({ litres: n / 10, minutes })) / 10;
  return { litres: does({ litres, minutes }) ? litres : vessel.litres, minutes };
}

/**
 * The share again from `at` on: where age sets the number of fillings, what earlier ones lost or gained (hands, pots) is spread over those
 * to come, so that it does not all fall to the last.
 */
export function evenAgain(place: BrewPlace, line: DrinkLine, vessel: Vessel, at: number, share: Share): Share {
  const age = line.brewing.goodForMinutes;
  if (share.minutes >= age) return share;
  const left = fillingsWith(place, line, vessel, at, share, 60);
  const even = Math.ceil((line.last + 1 - at + (left - 1) * place.values.refillLead) / left);
  for (const more of [0, 2, 4, 8]) {
    const again = { litres: share.litres, minutes: Math.min(age, even + more) };
    if (fillingsWith(place, line, vessel, at, again, left) <= left) return again;
  }
  return share;
}

/** Litres to fill at `at`: all that is still wanted when one vessel carries it, else an even share. */
export function fillLitres(place: BrewPlace, line: DrinkLine, vessel: Vessel, at: number, share: Share): number {
  const whole = filling(place, line, vessel, at, { litres: vessel.litres, minutes: line.brewing.goodForMinutes });
  return whole.until > line.last ? whole.litres : filling(place, line, vessel, at, share).litres;
}
