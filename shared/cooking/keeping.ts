import type { Dish, Event, Recipe } from '../event';
import { figure, just, least, most, workingOf, type Figure, type Term } from '../figure';
import { settle, settledTerm, type Settled } from '../household';
import { finalSteps } from './step-minutes';

/** How long a finished dish keeps, where, and how long a bowl of it may stand on the table. */
export interface Keeping {
  readonly minutes: Figure | null;
  readonly place: 'counter' | 'hot' | 'cold' | null;
  readonly isHeldHot: boolean;
  /** It stands on ice or in a chilled case, cold enough. */
  readonly isHeldCold: boolean;
  readonly bowl: Figure | null;
  /** Minutes before the first portion at which the last step has to be done anyhow. */
  readonly latest: number;
}

/** Above this a room is hot. Source: USDA advice, rule TC-02. Degrees Celsius. */
const hotRoomC = 32;

/** Minutes that food which needs heat or cold stands out under the rules in force. Rules TC-01 and TC-02. */
export const outOf = (event: Event): Settled => settle(event, event.kitchen.roomC > hotRoomC ? 'serve.outHotRoom' : 'serve.out');

/** The same for a cold bowl on the table: rule CH-03 under the United Kingdom's rules, unless guests are at higher risk or the room is hot. */
const bowlOut = (event: Event): Settled =>
  (event.preferences.safetyProfile === 'uk' && event.guests.higherRisk !== true && event.kitchen.roomC <= hotRoomC ? settle(event, 'serve.outUkCold') : outOf(event));

/** Temperature from which hot food counts as kept hot. Rules HH-02 and HH-03. */
export const hotFrom = (event: Event): Settled => settle(event, event.preferences.safetyProfile === 'uk' || event.guests.higherRisk === true ? 'serve.hotUk' : 'serve.hot');

/** Whether a dish stands in something hot enough. */
function heldHot(event: Event, { holding }: Dish): boolean {
  if (holding !== undefined && holding.place !== 'hot') return false;
  const celsius = holding?.temperatureC ?? event.kitchen.hotHoldC;
  return celsius !== null && celsius >= hotFrom(event).value;
}

/** Temperature up to which food on the table counts as kept cold. Rules CH-01 and CH-03. */
export const coldTo = (event: Event): Settled => settle(event, event.preferences.safetyProfile === 'uk' && event.guests.higherRisk !== true ? 'serve.coldUk' : 'serve.cold');

/** Whether a dish stands cold enough: only where the cook has said at which temperature it waits. */
const heldCold = (event: Event, { holding }: Dish): boolean => holding?.place === 'cold' && holding.temperatureC !== undefined && holding.temperatureC <= coldTo(event).value;

/** Keeping of a dish of the meal, from its last steps and from the limits of the rules in force. A step that freezes or a recipe without steps says nothing. */
export function keepingOf(event: Event, dish: Dish, recipe: Recipe): Keeping {
  const finals = finalSteps(recipe);
  const kept = finals.flatMap((s) => (s.keeps === undefined ? [] : [s.keeps])).toSorted((a, b) => a.minutes - b.minutes)[0];
  const latest = finals.reduce((n, s) => Math.max(n, s.endsBefore?.latest ?? 0), 0);
  const place = kept === undefined ? (recipe.steps.length === 0 || !recipe.needsTemperatureControl ? null : recipe.serveHot ? 'hot' : null) : kept.place === 'freezer' ? null : kept.place;
  const isHeldHot = place === 'hot' && heldHot(event, dish);
  const isHeldCold = place === 'cold' && heldCold(event, dish);
  const isHeld = isHeldHot || isHeldCold;
  const needsCare = recipe.needsTemperatureControl;
  const bowl = place === 'cold' && needsCare && !isHeldCold && !recipe.serveHot ? bowlOut(event) : null;
  const bowlFigure = bowl === null ? null : figure(bowl.value, 'min', () => workingOf('cooking.bowlStands', [settledTerm('out', bowl)], just('out')));
  if (place === null) return { minutes: null, place, isHeldHot, isHeldCold, bowl: bowlFigure, latest };
  const recipeTerm: Term | null = kept === undefined ? null : { key: 'recipe', label: { word: 'cooking.term.recipeKeeps' }, value: kept.minutes, unit: 'min', origin: { kind: 'recipe', recipe: recipe.id } };
  const rule = isHeldHot ? settle(event, 'serve.hotHeld') : isHeldCold ? settle(event, 'serve.coldHeld') : place === 'cold' || !needsCare ? null : outOf(event);
  const value = kept === undefined ? rule?.value : rule === null ? kept.minutes : isHeld ? Math.max(kept.minutes, rule.value) : Math.min(kept.minutes, rule.value);
  if (value === undefined) return { minutes: null, place, isHeldHot, isHeldCold, bowl: bowlFigure, latest };
  const minutes = figure(value, 'min', () => {
    const terms = [...(recipeTerm === null ? [] : [recipeTerm]), ...(rule === null ? [] : [settledTerm('rule', rule)])];
    const both = recipeTerm !== null && rule !== null;
    return workingOf(isHeld ? 'cooking.keepsHeld' : 'cooking.keeps', terms, both ? (isHeld ? most('recipe', 'rule') : least('recipe', 'rule')) : just(recipeTerm === null ? 'rule' : 'recipe'));
  });
  return { minutes, place, isHeldHot, isHeldCold, bowl: bowlFigure, latest };
}
