import type { Event } from '../event';
import { settle } from '../household';
import type { DishPlan } from '../menu';
import type { Keeping } from './keeping';
import { potLitres } from './pot-litres';
import { mostAfter, potsFor, usablePots, type Brewed, type PotLoad } from './pots';
import { servingsOf } from './servings';
import { stepMinutes, usesPot } from './step-minutes';
import type { Cooking, Serving } from './types';

/** What the dishes of one event share while their pots are given out. */
export interface Range {
  readonly event: Event;
  readonly load: PotLoad;
  /** Rounds of drinks in pots. */
  readonly brewing: readonly Brewed[];
}

/** A serving is never planned shorter than this. Unit: minutes. Common practice, no source. */
const shortest = 10;

/** A pot may be wanted so much sooner than its last minutes. Unit: minutes. Common practice, no source. */
const aroundPot = 90;

/** Minutes a pot is taken by one go, washing it included. */
export function potMinutes(event: Event, dish: DishPlan, kg: number): number {
  return dish.recipe.steps.filter(usesPot).reduce((n, s) => n + stepMinutes(s.active, kg, 1) + stepMinutes(s.passive, kg, 1), 0) + settle(event, 'day.washPot').value;
}

function cook(range: Range, dish: DishPlan, serving: Serving, load: PotLoad): Cooking {
  const { event, brewing } = range;
  const share = dish.portions.value > 0 ? serving.portions / dish.portions.value : 0;
  const pots = usablePots(event);
  const [largest] = pots;
  if (!dish.recipe.steps.some(usesPot) || largest === undefined) return { ...serving, share, pots: [null], after: 1, wait: 0 };
  const litres = potLitres(event, dish, serving.portions).value;
  const goes = Math.max(1, Math.ceil(litres / largest.litres - 1e-9));
  const minutes = potMinutes(event, dish, litres / goes);
  const brewed = (pot: string): number => brewing.filter((r) => r.pot === pot && r.startAt < serving.from && r.readyAt > serving.from - minutes - aroundPot).length;
  const given = potsFor(pots, goes, litres, minutes, load, brewed);
  const after = mostAfter(given);
  return { ...serving, share, pots: given, after, wait: (after - 1) * minutes };
}

/** Longest serving that leaves the food within its keeping time, when the first of several goes waits so long for the last. Unit: minutes. */
const longestServing = (event: Event, keeping: Keeping, wait: number): number =>
  (keeping.minutes === null ? Number.MAX_SAFE_INTEGER : Math.max(shortest, keeping.minutes.value - keeping.latest - settle(event, 'serve.spare').value - wait));

/** Waits that are tried between none and the one that a single cooking would ask for. */
const tries = 6;

/**
 * Cookings of a dish: the fewest servings that its keeping time allows, each in as many goes as the pots ask for. Where goes follow each other the
 * servings are made shorter, for the first go waits for the last; with less in each, fewer goes may do: the smallest wait that holds is taken.
 */
export function cookingsOf(range: Range, dish: DishPlan, keeping: Keeping): readonly Cooking[] {
  const madeFor = (wait: number) => {
    const load: PotLoad = new Map(range.load);
    const made = servingsOf(dish.demand, longestServing(range.event, keeping, wait)).map((s) => cook(range, dish, s, load));
    return { made, load, needed: Math.max(0, ...made.map((c) => c.wait)) };
  };
  const plain = madeFor(0);
  let found = plain;
  for (let k = 1; k <= tries && keeping.minutes !== null && plain.needed > 0; k += 1) {
    const wait = (plain.needed * k) / tries;
    found = madeFor(wait);
    if (found.needed <= wait + 1e-9) break;
  }
  for (const [pot, minutes] of found.load) range.load.set(pot, minutes);
  return found.made;
}
