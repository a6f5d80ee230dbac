import type { Event, Frying, Wave } from '../event';
import { planGuests } from '../guests';
import { settle } from '../household';
import { planKitchen } from '../kitchen';
import { minutes } from '../measure';
import { planMenu, type DishPlan, type MenuPlan } from '../menu';
import type { Message } from '../words';
import { aloneBatches, dishParts, solveParts, type DishPart } from './dish-parts';
import { portionMinutes, waitingOf, type FrySolution } from './exact';
import { leadsOf } from './leads';
import { assignPans, fryLines, takeFor, type FryLine } from './lines';
import { byOilCare } from './oil-care';
import { shortagesOf, type Doubt } from './shortage';
import type { Batch, LeadPlan, ServedPlan, Shortage } from './types';
import { byArrival, mainWave } from './waves';

/** A dish as scheduled: what it took, what it left. */
export interface DishSchedule {
  readonly dish: DishPlan;
  readonly frying: Frying;
  readonly parts: readonly DishPart[];
  readonly served: ServedPlan;
  readonly shortages: readonly Shortage[];
  readonly leads: readonly LeadPlan[];
  readonly problem: Message | null;
  /** Minutes the pieces of each batch wait from lift to eating, in the order the batches were found. */
  readonly waits: readonly number[];
  /** No plan has fewer batches of this dish; worked out when asked for. */
  readonly atLeast: () => number;
}
/** All batches, numbered in order of put-in (bowls not yet given), and the dishes. */
export interface Schedule {
  readonly batches: readonly Batch[];
  readonly dishes: readonly DishSchedule[];
}
interface Placed {
  readonly line: FryLine;
  readonly batch: Omit<Batch, 'number' | 'pan'>;
}

/** Fried dishes of the menu in the order that is kindest to the oil. */
const friedDishes = (menu: MenuPlan): { dish: DishPlan; frying: Frying }[] =>
  menu.dishes.flatMap((dish) => (dish.recipe.frying === undefined ? [] : [{ dish, frying: dish.recipe.frying }])).sort(byOilCare);

/** Places every fried dish, one after another; a later dish finds the pans of the earlier ones busy. `effort` as in `solve`. */
export function scheduleFrying(event: Event, menu: MenuPlan, lines: readonly FryLine[], effort?: number): Schedule {
  const placed: Placed[] = [];
  const change = Math.round(settle(event, 'fry.changeOver').value);
  const waves = byArrival(event.guests.waves);
  // Another kitchen alone leaves guests and menu as they are.
  const replan = (changed: Event): ReadonlyMap<string, number> =>
    unmetWith(changed, changed.menu === event.menu && changed.recipes === event.recipes ? menu : planMenu(changed, planGuests(changed)));
  const dishes = friedDishes(menu).map(({ dish, frying }): DishSchedule => {
    const parts = dishParts(event, dish, frying, lines);
    const wanted = portionMinutes(dish.demand.values.map((n) => Math.max(0, Math.round(n))), dish.demand.fromMinute);
    if (parts.length === 0) {
      return { dish, frying, parts, served: servedPlan(dish, wanted), shortages: shortagesOf(event, dish, frying, [], wanted, wanted, null, replan), leads: [], problem: whyNot(event, dish, wanted.length), waits: [], atLeast: () => 0 };
    }
    const solutions = solveParts(event, frying, parts, wanted, event.menu.dishes.find((d) => d.id === dish.id)?.fryFresh, effort);
    const unmet = solutions.flatMap((s) => s.unmet);
    const shortages = shortagesOf(event, dish, frying, parts, wanted, unmet, doubtOf(solutions, parts), replan);
    solutions.forEach((solution, at) => {
      const part = parts[at];
      if (part === undefined) return;
      for (const b of solution.batches) {
        const eaten = solution.served.slice(b.first, b.end);
        placed.push(batchOf(waves, dish, frying, part, b.dropAt, eaten));
      }
      takeFor(part.line, solution.batches.map((b) => ({ from: b.dropAt, to: b.dropAt + part.load.plan.cycleMinutes.value })), change);
    });
    const waits = solutions.flatMap((sol, at) => sol.batches.map((b) => waitingOf({ wanted: sol.served, fry: parts[at]?.load.plan.fryMinutes ?? 0 }, [b])));
    const atLeast = (): number => leastBatches(event, frying, parts, solutions);
    return { dish, frying, parts, served: servedPlan(dish, unmet), shortages, leads: leadsOf(event, dish, frying, parts, solutions), problem: null, waits, atLeast };
  });
  return { batches: number(placed, lines, change), dishes };
}

/** Portions nobody gets, by dish, with the event planned again from its guests. None is exact; where some go short a quick rule counts them, for it is only asked whether. */
function unmetWith(event: Event, menu: MenuPlan): ReadonlyMap<string, number> {
  const { dishes } = scheduleFrying(event, menu, fryLines(event, planKitchen(event)), 1);
  return new Map(dishes.map((d) => [d.dish.id, d.served.unmet.reduce((a, b) => a + b, 0)]));
}

/** One line: the fewest with the pans to itself. Several unequal lines: full batches of the largest load. */
function leastBatches(event: Event, frying: Frying, parts: readonly DishPart[], solutions: readonly FrySolution[]): number {
  const [part, solution] = [parts[0], solutions[0]];
  if (parts.length > 1 || part === undefined || solution === undefined) {
    const pieces = solutions.reduce((sum, s) => sum + s.served.length, 0);
    return Math.ceil(pieces / Math.max(1, ...parts.map((p) => p.load.plan.pieces.value)) - 1e-9);
  }
  return aloneBatches(event, frying, part, solution.served, solution.lead);
}

function doubtOf(solutions: readonly FrySolution[], parts: readonly DishPart[]): Doubt {
  if (solutions.some((s) => !s.exact)) return 'quick';
  if (parts.length > 1) return 'shared';
  return parts.some((p) => p.line.taken.size > 0) ? 'after' : null;
}

function batchOf(waves: readonly Wave[], dish: DishPlan, frying: Frying, part: DishPart, dropAt: number, eaten: readonly number[]): Placed {
  const liftAt = dropAt + part.load.plan.fryMinutes;
  const batch = {
    station: part.line.station.id, dish: dish.id, bowls: [], dropAt: minutes(dropAt), liftAt: minutes(liftAt),
    panFreeAt: minutes(dropAt + part.load.plan.cycleMinutes.value), eatBy: minutes(liftAt + Math.floor(frying.holdMinutes)), pieces: eaten.length,
    wave: mainWave(waves, eaten), eatenFrom: minutes(eaten[0] ?? liftAt), eatenTo: minutes(eaten.at(-1) ?? liftAt),
  };
  return { line: part.line, batch };
}

function number(placed: readonly Placed[], lines: readonly FryLine[], change: number): Batch[] {
  const withPans = lines.flatMap((line) => {
    const mine = placed.filter((p) => p.line === line);
    const pans = assignPans(line, mine.map(({ batch }) => ({ from: batch.dropAt, to: batch.panFreeAt, dish: batch.dish })), change);
    return mine.map((p, i) => ({ ...p.batch, pan: pans[i] ?? '' }));
  });
  return withPans.sort((a, b) => a.dropAt - b.dropAt || (a.pan < b.pan ? -1 : 1)).map((batch, i) => ({ ...batch, number: i + 1 }));
}

function servedPlan(dish: DishPlan, unmetMinutes: readonly number[]): ServedPlan {
  const unmet = dish.demand.values.map(() => 0);
  for (const minute of unmetMinutes) {
    const at = minute - dish.demand.fromMinute;
    unmet[at] = (unmet[at] ?? 0) + 1;
  }
  return { dish: dish.id, fromMinute: dish.demand.fromMinute, unmet, portions: dish.demand.values.map((n, i) => n - (unmet[i] ?? 0)) };
}

function whyNot(event: Event, dish: DishPlan, wanted: number): Message | null {
  if (wanted === 0) return null;
  const named = event.kitchen.stations.some((s) => s.dishes.includes(dish.id));
  return named ? { id: 'frying.problem.noHeat', params: { dish: dish.name } } : { id: 'frying.problem.noStation', params: { dish: dish.name } };
}
