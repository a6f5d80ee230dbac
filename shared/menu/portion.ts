import { Big } from 'big.js';
import type { Dish, Event, Recipe } from '../event';
import type { Origin } from '../figure';
import { baseFactor, convert, dimensionOf, type Amount, type UnitId } from '../measure';
import { rolePortion, type PortionValue } from '../reference';
import { houseFigure, tableOrigin } from './in-force';

/** What a portion of `demand` counts. */
export type ServedAs = 'piece' | 'cup' | 'portion';

/** What one adult is given of a dish. */
export interface Helping {
  /** In the unit of the recipe's yield. For dishes served by the piece: pieces of one adult; otherwise the size of one portion or cup. */
  readonly amount: Amount;
  readonly origin: Origin;
  /** The cook typed it: it is not shared with similar dishes. */
  readonly own: boolean;
}

/** Pieces for fried snacks, fried sides and breads that are counted; cups for drinks; portions for the rest. */
export function servedAs(recipe: Recipe): ServedAs {
  const by = rolePortion(recipe.role).servedAs;
  if (by === 'piece') return recipe.yield.amount.unit === 'piece' ? 'piece' : 'portion';
  return by === 'cup' ? 'cup' : 'portion';
}

/** Into the yield's unit; across mass and volume one millilitre is taken as one gram (ready food is mostly water). Null for counted things. */
function intoYield(a: Amount, unit: UnitId): Amount | null {
  if (a.unit === unit) return a;
  const [from, to] = [dimensionOf(a.unit), dimensionOf(unit)];
  if (from === 'count' || to === 'count') return null;
  return from === to ? convert(a, unit) : { amount: a.amount.times(baseFactor(a.unit)).div(baseFactor(unit)), unit };
}

const baseUnit = (unit: UnitId): UnitId => {
  const dimension = dimensionOf(unit);
  return dimension === 'mass' ? 'g' : dimension === 'volume' ? 'ml' : unit;
};

function roleRow(recipe: Recipe, unit: UnitId): PortionValue | null {
  const row = rolePortion(recipe.role);
  return unit === 'g' ? row.g : unit === 'ml' ? row.ml : unit === 'piece' ? row.piece : null;
}

function candidates(event: Event, dish: Dish, recipe: Recipe): readonly (Helping | null)[] {
  const { unit } = recipe.yield.amount;
  const index = event.menu.dishes.indexOf(dish);
  const base = baseUnit(unit);
  const made = (value: string | number | Big, from: UnitId, origin: Origin, own: boolean): Helping | null => {
    const amount = intoYield({ amount: new Big(value), unit: from }, unit);
    return amount === null || amount.amount.lt(0) ? null : { amount, origin, own };
  };
  const house = houseFigure(event, `portion.${recipe.role}`);
  const row = roleRow(recipe, base);
  const cup = recipe.brewing?.cupMl;
  const recipeOwn: Origin = { kind: 'recipe', recipe: recipe.id };
  const wholeYield = new Big(recipe.yield.amount.amount);
  const share = made(wholeYield.div(recipe.yield.portions), unit, recipeOwn, false);
  return [
    dish.portion === undefined ? null : made(dish.portion.amount, dish.portion.unit, { kind: 'entered', path: `menu.dishes[${index}].portion` }, true),
    dish.served.kind === 'fixed' && servedAs(recipe) !== 'piece' ? share : null,
    house === null ? null : made(house.value, house.unitId ?? base, house.origin, false),
    cup === undefined ? null : made(cup, 'ml', recipeOwn, false),
    row === null ? null : made(row.value, base, tableOrigin(row.source, `portion.${recipe.role}`), false),
    share,
  ];
}

/**
 * The portion of one adult: typed for this dish; the household's own (`portion.<role>`); the recipe's cup; the role's; the recipe's own portion,
 * in this order. A fixed number of portions is cut as the recipe says.
 */
export function helping(event: Event, dish: Dish, recipe: Recipe): Helping {
  const found = candidates(event, dish, recipe).find((c) => c !== null);
  return found ?? { amount: { amount: new Big(0), unit: recipe.yield.amount.unit }, origin: { kind: 'recipe', recipe: recipe.id }, own: false };
}

/** A recipe's own portion beside the one that is planned. */
export interface OwnPortion {
  /** The yield over its portions, in the unit of the yield. */
  readonly recipe: Amount;
  /** What one adult is given, in the same unit. */
  readonly planned: Amount;
}

/** Nearer than this to each other they are told as one (common practice, no source). */
const sameWithin = 0.05;

/**
 * The recipe's own portion, where it is told apart from the one planned: a dish told in portions, planned by its place in the meal or the household's
 * figure. Null where they are alike, where the cook typed a portion, and for pieces and cups.
 */
export function ownPortion(event: Event, dish: Dish, recipe: Recipe): OwnPortion | null {
  if (servedAs(recipe) !== 'portion') return null;
  const { amount: planned, origin, own } = helping(event, dish, recipe);
  const { amount, unit } = recipe.yield.amount;
  const share = new Big(amount).div(recipe.yield.portions);
  if (own || origin.kind === 'recipe' || planned.amount.lte(0) || share.lte(0)) return null;
  return share.minus(planned.amount).abs().lte(planned.amount.times(sameWithin)) ? null : { recipe: { amount: share, unit }, planned };
}
