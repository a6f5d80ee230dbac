import type { Event } from '../../event';
import { least, minus, plus, roundUp, times, worked, type Figure } from '../../figure';
import type { GuestsPlan } from '../../guests';
import { settle, settledTerm } from '../../household';
import type { DishPlan, MenuPlan } from '../../menu';
import type { ThingNeed, UseId } from '../types';
import { needOfThing, summed } from './count';
import { eatersOf, portionTerms } from './eaters';

/**
 * Cups for these drinks: everybody's first drink takes a cup, of the later ones a share takes another; a spare on top.
 * Longer stays drink more, so they take more cups. Unit: piece.
 */
function cups(event: Event, people: Figure, drinks: readonly DishPlan[]): Figure {
  const { terms, keys } = portionTerms(drinks);
  const all = plus(...keys);
  const first = least('people', all);
  return summed('piece', 'things.cups', [
    ...terms,
    worked('people', { word: 'buying.term.people' }, people),
    settledTerm('again', settle(event, 'things.newCup')),
    settledTerm('spare', settle(event, 'things.spare')),
  ], roundUp(times(plus(first, times(minus(all, first), 'again')), plus(1, 'spare'))));
}

/** So many of a thing for each of these people, with the spare on top. Unit: piece. */
const each = (event: Event, people: Figure, figureId: string): Figure => summed('piece', 'things.each', [
  worked('people', { word: 'buying.term.people' }, people),
  settledTerm('each', settle(event, figureId)),
  settledTerm('spare', settle(event, 'things.spare')),
], roundUp(times('people', 'each', plus(1, 'spare'))));

const isDrink = (dish: DishPlan): boolean => dish.servedAs === 'cup';
const isSnack = (dish: DishPlan): boolean => dish.recipe.frying !== undefined;
/** Dishes of a meal, eaten from a plate. The rest is drunk, taken from the fry stand or a tray, or a spoonful beside them. */
const plated = new Set(['grain', 'pulse', 'vegetable', 'bread', 'salad']);
const isPlated = (dish: DishPlan): boolean => !isSnack(dish) && plated.has(dish.role);

/** Cups, plates, bowls, spoons and napkins: counted from the people who come to what is served, and from the drinks. */
export function tableThings(event: Event, guests: GuestsPlan, menu: MenuPlan): ThingNeed[] {
  const wanted = menu.dishes.filter((d) => d.portions.value > 0);
  const forEach = (thing: string, figureId: string, use: UseId, dishes: readonly DishPlan[]): ThingNeed[] => {
    const people = eatersOf(guests, dishes);
    return people === null ? [] : needOfThing(thing, 'piece', use, each(event, people, figureId));
  };
  const cupsFor = (thing: string, dishes: readonly DishPlan[]): ThingNeed[] => {
    const people = eatersOf(guests, dishes);
    return people === null ? [] : needOfThing(thing, 'piece', 'drinks-table', cups(event, people, dishes));
  };
  const drinks = wanted.filter(isDrink);
  const meal = wanted.filter(isPlated);
  const soup = wanted.filter((d) => d.role === 'soup');
  return [
    ...cupsFor('hot-cups', drinks.filter((d) => d.recipe.brewing?.hot === true)),
    ...cupsFor('cold-cups', drinks.filter((d) => d.recipe.brewing?.hot !== true)),
    ...forEach('plates', 'things.plates', 'meal', meal),
    ...forEach('snack-plates', 'things.snackPlates', 'snacks', wanted.filter(isSnack)),
    ...forEach('soup-bowls', 'things.bowls', 'soup', soup),
    ...forEach('spoons', 'things.spoons', 'meal', [...meal, ...soup]),
    ...forEach('napkins', 'things.napkins', 'guests', wanted.filter((d) => !isDrink(d))),
  ];
}
