import type { Brewing, Event, Pot } from '../event';
import type { BurnerState } from '../kitchen';
import type { DishPlan } from '../menu';
import { bookHands, latestBrew } from './calendar';
import type { BrewPlace } from './brew-place';
import { isUrn } from './vessels';
import { isBrewed, liquidsBeside, roundSize, type RoundSize } from './round-size';

/** A round with its pot, burner and start. */
export interface PlacedRound {
  readonly dish: DishPlan;
  readonly pot: Pot;
  readonly burner: BurnerState | null;
  readonly startAt: number;
  readonly readyAt: number;
  readonly pouredAt: number;
  readonly size: RoundSize;
  /** False when the hands that start it are wanted elsewhere then: somebody else must help. */
  readonly handsFree: boolean;
}

/** Burners for drinks, best first: not under a frying pan, indoors before outdoors, strong before weak. */
export function drinkBurners(event: Event, burners: readonly BurnerState[]): BurnerState[] {
  const pans = new Set(event.kitchen.stations.flatMap((s) => s.pans));
  const frying = new Set(event.kitchen.pans.filter((p) => pans.has(p.id)).map((p) => p.burner));
  return burners.filter((b) => !frying.has(b.burner.id))
    .sort((a, b) => Number(a.burner.place === 'outdoor') - Number(b.burner.place === 'outdoor') || b.usefulW.value - a.usefulW.value || (a.burner.id < b.burner.id ? -1 : 1));
}

/**
 * Places rounds so that up to `litres` are ready by `by`: as few rounds as the pots allow, each as late as pot and burner are free.
 * Fewer litres come back when there is not pot or burner enough in time. `all`: nobody fills again after this. Books what it takes.
 */
export function placeRounds(place: BrewPlace, dish: DishPlan, brewing: Brewing, litres: number, by: number, all: boolean): PlacedRound[] {
  const rounds: PlacedRound[] = [];
  const beside = liquidsBeside(dish, brewing);
  let left = litres;
  // A remainder of less than a tenth is not worth another pot: the next filling brings it. When there is none, two rounds share.
  const scrap = litres / 10;
  const enough = all ? 1e-6 : scrap;
  while (left > 1e-6 && (rounds.length === 0 || left > enough)) {
    const most = bestRound(place, dish, brewing, beside, left, by);
    const after = left - (most?.size.litres ?? left);
    const best = all && after > 1e-6 && after < scrap ? bestRound(place, dish, brewing, beside, Math.round(left * 60) / 100, by) : most;
    if (best === null) break;
    rounds.push(best);
    place.calendar.book(`pot ${best.pot.id}`, best.startAt, best.pouredAt);
    bookHands(place.calendar, place.hands, best.startAt, best.startAt + best.size.startHands);
    if (best.burner !== null) place.calendar.book(`burner ${best.burner.burner.id}`, best.startAt, best.startAt + best.size.burnerMinutes);
    left = Math.round((left - best.size.litres) * 1e6) / 1e6;
  }
  return rounds;
}

/** A wait in the pot up to this many minutes is no reason for a larger pot. Common practice, no source. */
const shortWait = 15;

/** Litres of liquid a pot takes with this drink, headroom left; an urn is named by what it takes. */
const roomIn = (pot: Pot, brewing: Brewing): number => (isUrn(pot.id) ? pot.litres : pot.litres * brewing.potFill);

/**
 * Of all pots and burners: the smallest pot that holds all of it, where it waits no more than a little and hands are free, on the burner
 * with the shortest wait; else the shortest wait; when none holds it all, the most litres.
 */
function bestRound(place: BrewPlace, dish: DishPlan, brewing: Brewing, beside: (litres: number) => number, litres: number, by: number): PlacedRound | null {
  const choices: Choice[] = [];
  const burners = isBrewed(brewing) ? place.burners : [null];
  for (const pot of place.pots) {
    const room = roomIn(pot, brewing);
    for (const burner of burners) {
      const whole = roundSize(place, brewing, litres, beside(litres), pot, burner);
      if (whole.potLitres > room + 1e-9) {
        choices.push({ pot, burner, whole });
        continue;
      }
      const found = placed(place, dish, brewing, { pot, burner, whole }, whole, by);
      if (found !== null) choices.push({ pot, burner, whole, found });
    }
    const inThis = choices.flatMap((c) => (c.pot === pot && c.found !== undefined && c.found.handsFree && c.found.readyAt >= by - shortWait ? [c.found] : []));
    // Pots come smallest first: a larger one is no better.
    const [first] = inThis.toSorted((a, b) => b.readyAt - a.readyAt);
    if (first !== undefined) return first;
  }
  let best: PlacedRound | null = null;
  // Those that hold all of it win over any that is cut; only without one are the others looked at.
  for (const { found } of choices) if (found !== undefined && (best === null || found.readyAt > best.readyAt)) best = found;
  return best ?? bestCut(place, dish, brewing, beside, litres, by, choices);
}

/** A pot, a burner, and what the whole wish would be in them; `found` when it fits and can be placed. */
interface Choice {
  readonly pot: Pot;
  readonly burner: BurnerState | null;
  readonly whole: RoundSize;
  readonly found?: PlacedRound;
}

function bestCut(place: BrewPlace, dish: DishPlan, brewing: Brewing, beside: (litres: number) => number, litres: number, by: number, choices: readonly Choice[]): PlacedRound | null {
  let best: PlacedRound | null = null;
  for (const choice of choices) {
    const size = cut(place, brewing, beside, litres, choice);
    if (size === null || (best !== null && size.litres < best.size.litres - 1e-6)) continue;
    // As much as the best and no wait there already: only more litres would be better.
    if (best !== null && best.readyAt === by && size.litres <= best.size.litres + 1e-6) continue;
    const found = placed(place, dish, brewing, choice, size, by);
    if (found !== null && (best === null || size.litres > best.size.litres + 1e-6 || found.readyAt > best.readyAt)) best = found;
  }
  return best;
}

/** A round at its latest free time, with free hands if they can be had; null when pot or burner is taken. */
function placed(place: BrewPlace, dish: DishPlan, brewing: Brewing, { pot, burner }: Choice, size: RoundSize, by: number): PlacedRound | null {
  const wait = Math.min(place.values.waitMinutes, brewing.goodForMinutes / 2);
  const wish = { pot: `pot ${pot.id}`, burner: burner === null ? null : `burner ${burner.burner.id}`, burnerMinutes: size.burnerMinutes, minutes: size.minutes, by, wait, handsMinutes: size.startHands };
  const withHands = latestBrew(place.calendar, { ...wish, hands: place.hands });
  const startAt = withHands ?? latestBrew(place.calendar, { ...wish, hands: 0 });
  return startAt === null ? null : { dish, pot, burner, startAt, readyAt: startAt + size.minutes, pouredAt: by, size, handsFree: withHands !== null };
}

/** The round, cut to what the pot may hold; null when not even a little fits. */
function cut(place: BrewPlace, brewing: Brewing, beside: (litres: number) => number, litres: number, { pot, burner, whole }: Choice): RoundSize | null {
  const room = roomIn(pot, brewing);
  // Liquid in the pot is a straight line over litres served; two points give it.
  const small = roundSize(place, brewing, litres / 2, beside(litres / 2), pot, burner);
  const slope = (whole.potLitres - small.potLitres) / (litres / 2);
  const most = Math.floor(((room - (whole.potLitres - slope * litres)) / slope) * 100 + 1e-6) / 100;
  return most > 0.05 ? roundSize(place, brewing, most, beside(most), pot, burner) : null;
}
