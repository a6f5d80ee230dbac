import type { Event } from '../event';
import { computed, countOf, figure, workingOf, type Figure } from '../figure';
import { settle } from '../household';
import type { DishPlan, MenuPlan } from '../menu';
import { cookingsOf, type Range } from './cookings';
import { keepingOf, type Keeping } from './keeping';
import { bowlsNote, potNote, turnsNote } from './notes';
import { potLitres } from './pot-litres';
import { potTimeNote } from './pot-time';
import { goesFor, usableOfLargest, type Brewed } from './pots';
import { servingsOf } from './servings';
import { isMealRecipe, usesPot } from './step-minutes';
import type { Cooking, CookingPlan, DishCooking, PotUse, Serving } from './types';

const countFigure = (cookings: readonly Cooking[]): Figure => figure(cookings.length, '', () => workingOf('cooking.count', [
  computed('portions', { word: 'cooking.term.portionsOfEach' }, cookings.map((c) => c.portions), 'portions', 'cooking.method.servings'),
], countOf('portions')));

const largestOf = (servings: readonly Serving[]): number => servings.reduce((n, s) => Math.max(n, s.portions), 0);

function potOf(event: Event, dish: DishPlan, cookings: readonly Cooking[]): PotUse | null {
  if (!dish.recipe.steps.some(usesPot)) return null;
  const litres = potLitres(event, dish, largestOf(cookings));
  const usable = usableOfLargest(event);
  return { litres, usable, goes: usable === null ? null : goesFor(litres, usable) };
}

/** Fresh bowls of each cooking: the fewest that stand no longer than they may, with room to change those of two dishes together a little sooner. */
function bowlsOf(event: Event, { demand }: DishPlan, { bowl }: Keeping, cookings: readonly Cooking[]): readonly Serving[] {
  if (bowl === null) return [];
  const longest = Math.max(15, bowl.value - settle(event, 'serve.spare').value);
  return cookings.flatMap(({ from, to }) => servingsOf({ fromMinute: demand.fromMinute, values: demand.values.map((v, i) => (demand.fromMinute + i >= from && demand.fromMinute + i <= to ? v : 0)) }, longest))
    .map((s, i) => ({ ...s, number: i + 1 }));
}

function planDish(range: Range, dish: DishPlan): DishCooking[] {
  const { event } = range;
  const entry = event.menu.dishes.find((d) => d.id === dish.id);
  if (entry === undefined || dish.broughtBy !== undefined || dish.firstServed === null || dish.portions.value <= 0 || !isMealRecipe(dish.recipe)) return [];
  const keeping = keepingOf(event, entry, dish.recipe);
  const cookings = cookingsOf(range, dish, keeping);
  const pot = potOf(event, dish, cookings);
  const bowls = entry.served.kind === 'fixed' ? [] : bowlsOf(event, dish, keeping, cookings);
  const notes = [potNote(event, dish, pot, cookings, keeping), turnsNote(event, entry, dish, keeping, cookings), bowls.length > cookings.length ? bowlsNote(event, dish, keeping, bowls.length, largestOf(bowls)) : null].flatMap((n) => n ?? []);
  return [{ dish: dish.id, name: dish.name, keeps: keeping.minutes, place: keeping.place, isHeldHot: keeping.isHeldHot, count: countFigure(cookings), cookings, pot, bowls: bowls.length > 1 ? bowls : [], bowlStands: keeping.bowl, notes }];
}

/**
 * How each dish of the meal is cooked and put out: cooked as often as it has to be to stay within its keeping time while it is served, in as many goes
 * or pots as hold it, and, where it stands on the table cold, in fresh bowls from the fridge.
 * @param brewing rounds of drinks; pots without one at that time are taken first.
 */
export function planCooking(event: Event, menu: MenuPlan, brewing: readonly Brewed[]): CookingPlan {
  const range: Range = { event, load: new Map(), brewing };
  const dishes = menu.dishes.flatMap((dish) => planDish(range, dish));
  const short = potTimeNote(event, menu, dishes);
  return { dishes, notes: [...(short === null ? [] : [short]), ...dishes.flatMap((d) => d.notes)] };
}
