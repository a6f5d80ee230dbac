import type { Event } from '../event';
import type { KitchenPlan } from '../kitchen';
import type { DishPlan, MenuPlan } from '../menu';
import type { Message } from '../words';
import type { BrewPlace } from './brew-place';
import { brewValues, type BrewValues } from './brew-values';
import { drinkBurners } from './brewing';
import { Calendar } from './calendar';
import { dispenserPlan } from './dispensers';
import { coolFromPot, pouredFrom } from './from-pot';
import { drinkLine, type DrinkLine } from './drink-line';
import { withoutWater } from './drinking-water';
import { firstWanted } from './first-wanted';
import { icePlan } from './ice';
import { madeNotes } from './made-notes';
import { heldAs } from './milk-hold';
import { nextFilling } from './next-filling';
import { isBrewed } from './round-size';
import { numberRounds } from './rounds';
import { drinkTotal } from './totals';
import type { DrinksPlan } from './types';
import { unbrewedOf } from './unbrewed';
import { vesselsOf, type Vessel } from './vessels';
import { wantedCups } from './wanted-cups';

/**
 * Brewing and serving of every drink: fillings forward in time, the drink that is due first next, each brewed as late as pots and burners
 * allow. The first stands ready before anybody can want it, a later one comes before the vessel is empty; what is left then is poured
 * away, never topped up. What nobody can brew in time is unmet. Deterministic; never throws for a parsed event.
 */
export function planDrinks(event: Event, menu: MenuPlan, kitchen: KitchenPlan): DrinksPlan {
  const values = brewValues(event);
  const lines = linesOf(event, menu.dishes, values);
  const serving = new Set(lines.flatMap((l) => l.vessels.flatMap((v) => (v.pot === null ? [] : [v.pot]))));
  const free = event.kitchen.pots.filter((p) => !serving.has(p.id));
  const place: BrewPlace = { event, values, burners: drinkBurners(event, kitchen.burners), pots: (free.length > 0 ? free : event.kitchen.pots).toSorted((a, b) => a.litres - b.litres), calendar: new Calendar(), hands: Math.max(1, event.people.filter((p) => p.roles.includes('tea')).length) };
  for (;;) {
    const next = lines.filter((l) => l.next !== null).reduce<DrinkLine | null>((first, l) => (first === null || (l.next ?? 0) < (first.next ?? 0) ? l : first), null);
    if (next === null) break;
    nextFilling(place, next);
  }
  const { rounds, fills } = numberRounds(place, lines);
  const totals = lines.map((l) => drinkTotal(l, rounds, madeNotes(event, l, menu.dishes, rounds)));
  return {
    rounds, fills, totals, unbrewed: lines.flatMap(unbrewedOf), ice: icePlan(event, lines, totals),
    dispensers: lines.flatMap((l) => l.vessels.flatMap((v) => dispenserPlan(l, v) ?? [])),
    advice: withoutWater(event, menu.dishes),
    problems: lines.flatMap((l) => [...problemsOf(place, l), ...coolFromPot(event, l)]),
  };
}

function linesOf(event: Event, dishes: readonly DishPlan[], values: BrewValues): DrinkLine[] {
  const taken = new Set<string>();
  return dishes.flatMap((dish) => {
    const brewing = dish.recipe.brewing;
    if (brewing === undefined || dish.firstServed === null) return [];
    const vessels: Vessel[] = vesselsOf(event, dish.id, taken);
    for (const v of vessels) if (v.pot !== null) taken.add(v.pot);
    const cups = wantedCups(event, dish, vessels.length, values.tapPerMinute);
    const first = cups.fromMinute + cups.values.findIndex((n) => n > 0);
    return [drinkLine(dish, pouredFrom(vessels, heldAs(event, brewing)), vessels, cups, firstWanted(event, dish, first) - values.fillLead)];
  });
}

function problemsOf(place: BrewPlace, line: DrinkLine): Message[] {
  if (line.unmetLitres < 1e-6) return [];
  const drink = line.dish.name;
  if (line.vessels.length === 0) return [{ id: 'drinks.problem.noVessel', params: { drink } }];
  const stove = line.vessels.some((v) => v.urn === null);
  if (stove && place.pots.length === 0) return [{ id: 'drinks.problem.noPot', params: { drink } }];
  if (stove && isBrewed(line.brewing) && place.burners.length === 0) return [{ id: 'drinks.problem.noBurner', params: { drink } }];
  const pot = line.vessels.find((v) => v.pot !== null);
  if (pot !== undefined) return [{ id: 'drinks.problem.unmetFromPot', params: { drink, litres: line.unmetLitres, pot: pot.name } }];
  return [{ id: 'drinks.problem.unmet', params: { drink, litres: line.unmetLitres } }];
}
