import type { Event } from '../../event';
import { computed, divide, just, plus, roundUp, times, worked, type Figure } from '../../figure';
import type { GuestsPlan } from '../../guests';
import { settle, settledTerm } from '../../household';
import { keptParts, mayBeLeft, type MenuPlan } from '../../menu';
import type { ThingNeed } from '../types';
import { needOfThing, summed } from './count';
import { portionTerms } from './eaters';

/** Bowls of batter, by dish: each has a bag of dry mix. */
export type Bowls = readonly { readonly dish: string }[];

/** Boxes of what is kept ahead, boxes of leftovers when guests come, and a label for each box. */
function boxes(event: Event, menu: MenuPlan, people: Figure, bowls: Bowls): ThingNeed[] {
  const keptTerms = menu.dishes.flatMap((dish) => keptParts(event, dish, bowls.filter((bowl) => bowl.dish === dish.id).length)).map((part, i) => computed(`k${i}`, { text: part.dish.name }, part.boxes.count.value, part.boxes.count.unit, 'buying.method.boxes'));
  const food = menu.dishes.filter(mayBeLeft);
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
export function houseThings(event: Event, guests: GuestsPlan, menu: MenuPlan, bowls: Bowls): ThingNeed[] {
  const people = guests.planned;
  const fried = menu.dishes.filter((d) => d.recipe.frying !== undefined && d.portions.value > 0);
  const { terms, keys } = portionTerms(fried);
  const rolls = fried.length === 0 ? [] : needOfThing('kitchen-paper', 'piece', 'snacks', summed('piece', 'things.rolls', [...terms, settledTerm('roll', settle(event, 'things.piecesPerRoll'))], roundUp(divide(plus(...keys), 'roll'))));
  const bags = people.value <= 0 ? [] : needOfThing('bin-bags', 'piece', 'guests', summed('piece', 'things.bags', [
    worked('people', { word: 'buying.term.people' }, people),
    settledTerm('perBag', settle(event, 'things.guestsPerBag')),
    settledTerm('base', settle(event, 'things.bagsBase')),
  ], plus(roundUp(divide('people', 'perBag')), roundUp(just('base')))));
  return [...rolls, ...bags, ...boxes(event, menu, people, bowls)];
}
