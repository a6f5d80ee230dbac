import { Big } from 'big.js';
import type { Event } from '../../event';
import { divide, just, plus, roundUp, times, worked, type Figure, type Term } from '../../figure';
import type { GuestsPlan } from '../../guests';
import { settle, settledTerm } from '../../household';
import { convertFood, type UnitId } from '../../measure';
import type { DishPlan, MenuPlan } from '../../menu';
import { ingredient, type Ingredient } from '../../reference';
import type { ThingNeed } from '../types';
import { needOfThing, summed } from './count';
import { portionTerms } from './eaters';

/** A kilogram of food fills about a litre: what is kept is mostly water. */
const likeWater = { gramsPerMl: 1, gramsPer: {} };

/** Made ahead and kept cold or frozen, so that it stands in boxes. Drinks keep in their jugs. */
const isBoxed = (dish: DishPlan): boolean => dish.portions.value > 0 && dish.servedAs !== 'cup' && dish.recipe.steps.some((s) => s.keeps?.place === 'cold' || s.keeps?.place === 'freezer');

// Table facts only: the same question always has the same answer, so keeping it changes no plan and saves long divisions.
const kept = new Map<string, number>();

/** Kilograms of one unit of a food; 0 where nobody can tell. */
function kgPerUnit(row: Ingredient, unit: UnitId): number {
  const key = `${row.id} ${unit}`;
  const known = kept.get(key) ?? convertFood({ amount: new Big(1), unit }, 'kg', row)?.amount.toNumber() ?? 0;
  kept.set(key, known);
  return known;
}

/** What is weighed of a fried dish before a bowl of batter is finished: its lines but for the water and what goes into each bowl. Unit: kg, or L. */
function weighedAhead(dish: DishPlan): number {
  return dish.lines.filter((l) => !l.perBowl).reduce((sum, l) => {
    const row = ingredient(l.ingredient);
    return row === undefined || row.section === 'tap' ? sum : sum + l.amount.amount.toNumber() * kgPerUnit(row, l.amount.unit);
  }, 0);
}

/** Boxes one dish fills: litres ÷ what a box may hold, or pieces ÷ pieces to a box. Null when its amount is neither. */
function boxesOf(event: Event, dish: DishPlan): Figure | null {
  const fried = dish.recipe.frying !== undefined;
  const frozen = dish.recipe.steps.some((s) => s.keeps?.place === 'freezer');
  const box = fried ? 'prep.boxCut' : frozen ? 'prep.boxFreezer' : 'prep.boxCooked';
  const litres = fried ? weighedAhead(dish) : convertFood(dish.total, 'L', likeWater)?.amount.toNumber();
  const total = (value: number, unit: string): Term =>
    ({ key: 'total', label: { text: dish.name }, value, unit, origin: { kind: 'computed', method: fried ? 'buying.method.ahead' : 'buying.method.dishTotal' } });
  if (litres === undefined) {
    return dish.total.unit !== 'piece' ? null
      : summed('piece', 'things.boxesOf', [total(dish.total.amount.toNumber(), 'piece'), settledTerm('box', settle(event, 'prep.bagPieces'))], roundUp(divide('total', 'box')));
  }
  return summed('piece', 'things.boxesOf', [total(litres, 'L'), settledTerm('box', settle(event, box)), settledTerm('fill', settle(event, 'prep.boxFill'))],
    roundUp(divide('total', times('box', 'fill'))));
}

/** Boxes of what is kept ahead, boxes of leftovers when guests come, and a label for each box. */
function boxes(event: Event, menu: MenuPlan, people: Figure): ThingNeed[] {
  const kept = menu.dishes.filter(isBoxed).flatMap((dish) => {
    const own = boxesOf(event, dish);
    return own === null ? [] : [{ dish, own }];
  });
  const food = menu.dishes.filter((d) => d.portions.value > 0 && d.servedAs !== 'cup' && d.recipe.needsTemperatureControl);
  const keptTerms = kept.map(({ dish, own }, i) => worked(`k${i}`, { text: dish.name }, own));
  const needs = keptTerms.length === 0 ? [] : needOfThing('food-boxes', 'piece', 'kept', summed('piece', 'things.boxes', keptTerms, plus(...keptTerms.map((t) => t.key))));
  const left = people.value <= 0 || food.length === 0 ? [] : needOfThing('food-boxes', 'piece', 'leftovers', summed('piece', 'things.boxes', [
    { key: 'dishes', label: { word: 'buying.term.dishes' }, value: food.length, unit: '', origin: { kind: 'computed', method: 'buying.method.cooled' } },
    settledTerm('each', settle(event, 'things.leftoverBoxes')),
  ], roundUp(times('dishes', 'each'))));
  const all = [...needs, ...left].map((n, i) => worked(`b${i}`, { word: `buying.use.${n.origin}` }, n.figure));
  const labels = all.length === 0 ? [] : needOfThing('labels', 'piece', 'kept', summed('piece', 'things.labels', all, plus(...all.map((t) => t.key))));
  return [...needs, ...left, ...labels];
}

/** Kitchen paper by fried pieces, bin bags by guests, boxes and labels by what is kept. */
export function houseThings(event: Event, guests: GuestsPlan, menu: MenuPlan): ThingNeed[] {
  const people = guests.planned;
  const fried = menu.dishes.filter((d) => d.recipe.frying !== undefined && d.portions.value > 0);
  const { terms, keys } = portionTerms(fried);
  const rolls = fried.length === 0 ? [] : needOfThing('kitchen-paper', 'piece', 'snacks', summed('piece', 'things.rolls', [...terms, settledTerm('roll', settle(event, 'things.piecesPerRoll'))], roundUp(divide(plus(...keys), 'roll'))));
  const bags = people.value <= 0 ? [] : needOfThing('bin-bags', 'piece', 'guests', summed('piece', 'things.bags', [
    worked('people', { word: 'buying.term.people' }, people),
    settledTerm('perBag', settle(event, 'things.guestsPerBag')),
    settledTerm('base', settle(event, 'things.bagsBase')),
  ], plus(roundUp(divide('people', 'perBag')), roundUp(just('base')))));
  return [...rolls, ...bags, ...boxes(event, menu, people)];
}
