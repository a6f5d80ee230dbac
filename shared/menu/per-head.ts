import type { Event } from '../event';
import { figure, plus, times, worked, workingOf, type Figure, type Term } from '../figure';
import { settle, type Settled } from '../household';
import { baseFactor, dimensionOf } from '../measure';
import type { Message } from '../words';
import { massBalance } from './mass-balance';
import type { DishPlan, MenuPlan } from './types';

/** The whole menu for one adult, beside the range that published tables give. */
export interface PerHead {
  /** Grams of ready food for one adult in 90 minutes, all dishes; a millilitre counts as a gram. Null without a dish that can be weighed. */
  readonly food: Figure | null;
  /** Millilitres of all drinks for one adult. Null without a drink. */
  readonly drinks: Figure | null;
  /** What is far below or above the published ranges. */
  readonly notices: readonly Message[];
}

/** Grams or millilitres of one portion of `perAdult`, with where it comes from; null when a piece has no known weight. */
function sizeOf(dish: DishPlan): Term | null {
  const { recipe, servedAs, total, portions } = dish;
  const key = `size-${dish.id}`;
  const label = { word: 'menu.term.sizeOf', params: { dish: dish.name } };
  const drink = servedAs === 'cup';
  if (servedAs !== 'piece') {
    if (portions.value <= 0 || dimensionOf(total.unit) === 'count') return null;
    // Portions are all of one size, so the total over their number is that size.
    const value = total.amount.times(baseFactor(total.unit)).div(portions.value).toNumber();
    return { key, label, value, unit: drink ? 'ml' : 'g', origin: { kind: 'recipe', recipe: recipe.id } };
  }
  if (recipe.frying !== undefined) return { key, label, value: recipe.frying.pieceBatterG, unit: 'g', origin: { kind: 'recipe', recipe: recipe.id } };
  const { inside, unweighed } = massBalance(recipe);
  const pieces = Number(recipe.yield.amount.amount);
  if (unweighed.length > 0 || inside.value <= 0 || pieces <= 0) return null;
  return { key, label, value: inside.value / pieces, unit: 'g', origin: { kind: 'recipe', recipe: recipe.id } };
}

function sumOfDishes(dishes: readonly DishPlan[], unit: string): Figure | null {
  const parts = dishes.flatMap((dish) => {
    const size = sizeOf(dish);
    return size === null ? [] : [{ dish, size }];
  });
  if (parts.length === 0) return null;
  return figure(parts.reduce((sum, { dish, size }) => sum + dish.perAdult.value * Number(size.value), 0), unit, () => workingOf(
    unit === 'g' ? 'menu.foodPerHead' : 'menu.drinksPerHead',
    parts.flatMap(({ dish, size }) => [worked(`n-${dish.id}`, { word: 'menu.term.portionsOf', params: { dish: dish.name } }, dish.perAdult), size]),
    plus(...parts.map(({ dish, size }) => times(`n-${dish.id}`, size.key))),
  ));
}

function noticeOf(kind: 'food' | 'drinks', head: Figure | null, least: Settled, most: Settled): Message[] {
  if (head === null || (head.value >= least.value && head.value <= most.value)) return [];
  const low = head.value < least.value;
  return [{ id: `menu.head.${kind}${low ? 'Low' : 'High'}`, params: { value: head.value, limit: low ? least.value : most.value } }];
}

/**
 * Food and drink of the whole menu for one adult, and a notice where it is far from what published tables give a head: `head.foodLow` to `head.foodHigh`
 * grams, `head.drinkLow` to `head.drinkHigh` millilitres (their sources are in the parameters).
 */
export function perHead(event: Event, { dishes }: Pick<MenuPlan, 'dishes'>): PerHead {
  const food = sumOfDishes(dishes.filter((d) => d.servedAs !== 'cup'), 'g');
  const drinks = sumOfDishes(dishes.filter((d) => d.servedAs === 'cup'), 'ml');
  return {
    food, drinks,
    notices: [
      ...noticeOf('food', food, settle(event, 'head.foodLow'), settle(event, 'head.foodHigh')),
      ...noticeOf('drinks', drinks, settle(event, 'head.drinkLow'), settle(event, 'head.drinkHigh')),
    ],
  };
}
