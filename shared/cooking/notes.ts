import type { Dish, Event } from '../event';
import { divide, figure, minus, workingOf, worked, computed, type Figure } from '../figure';
import { settle, settledTerm } from '../household';
import type { DishPlan } from '../menu';
import type { Message } from '../words';
import { coldTo, hotFrom, type Keeping } from './keeping';
import { busiest, servingsOf } from './servings';
import type { Cooking, CookingNote, PotUse } from './types';

/** Minutes from the first portion to the last. */
export const servedFor = (dish: DishPlan): Figure => figure((dish.lastServed ?? 0) - (dish.firstServed ?? 0), 'min', () => workingOf('cooking.servedFor', [
  computed('until', { word: 'cooking.term.until' }, dish.lastServed ?? 0, 'min', 'cooking.method.servings'), computed('from', { word: 'cooking.term.from' }, dish.firstServed ?? 0, 'min', 'cooking.method.servings'),
], minus('until', 'from')));

const weightOf = (dish: DishPlan, portions: number): { readonly amount: string; readonly unit: string } => ({
  amount: dish.portions.value === 0 ? '0' : dish.total.amount.times(portions).div(dish.portions.value).toFixed(4), unit: dish.total.unit,
});

/** Says that a dish is served longer than it keeps, what the plan makes of it, and what else could be done. Null when one cooking does. */
export function turnsNote(event: Event, entry: Dish, dish: DishPlan, keeping: Keeping, cookings: readonly Cooking[]): CookingNote | null {
  const { minutes, place, isHeldHot } = keeping;
  if (minutes === null || cookings.length <= 1 || entry.served.kind === 'fixed') return null;
  const spare = settle(event, 'serve.spare').value;
  const longest = Math.max(15, Math.floor((minutes.value - keeping.latest - spare) / 15) * 15);
  const best = busiest(dish.demand, longest);
  const ways: Message[] = best === null || dish.role === 'condiment' ? [] : [{ id: place === 'cold' ? 'cooking.way.windowMade' : 'cooking.way.window', params: { dish: dish.name, from: best.from, to: best.to } }];
  if (place === 'hot' && !isHeldHot) {
    const held = settle(event, 'serve.hotHeld').value;
    const times = servingsOf(dish.demand, Math.max(10, Math.max(held, minutes.value) - keeping.latest - spare)).length;
    if (times < cookings.length) ways.push({ id: 'cooking.way.hold', params: { dish: dish.name, celsius: hotFrom(event).value, minutes: held, times } });
  }
  const most = cookings.reduce((n, c) => Math.max(n, c.portions), 0);
  return {
    dish: dish.id, level: 'told', measured: servedFor(dish), limit: minutes, ways,
    message: { id: place === 'cold' ? 'cooking.say.madeOften' : 'cooking.say.cookedOften', params: { dish: dish.name, served: servedFor(dish).value, keeps: minutes.value, times: cookings.length, most: weightOf(dish, most), at: cookings.map((c) => c.from) } },
  };
}

/** Litres of a pot that takes so much at once. */
const potWanted = (event: Event, litres: Figure): Figure => {
  const fill = settle(event, 'pot.fill.water');
  return figure(litres.value / fill.value, 'L', () => workingOf('cooking.potWanted', [worked('litres', { word: 'cooking.term.litres' }, litres), settledTerm('fill', fill)], divide('litres', 'fill')));
};

/** Says that a cooking needs several goes or pots, or has none to stand in. Null when one pot holds it. */
export function potNote(event: Event, dish: DishPlan, pot: PotUse | null, cookings: readonly Cooking[], keeping: Keeping): CookingNote | null {
  if (pot === null) return null;
  const wanted = potWanted(event, pot.litres);
  const litres = Math.ceil(wanted.value - 1e-9);
  if (pot.usable === null || pot.goes === null) {
    return { dish: dish.id, level: 'watch', measured: pot.litres, limit: figure(0, 'L', () => workingOf('cooking.noPot', [{ key: 'none', label: { word: 'cooking.term.noPot' }, value: 0, unit: 'L', origin: { kind: 'computed', method: 'cooking.method.noPot' } }], { op: 'term', key: 'none' })), message: { id: 'cooking.say.noPot', params: { dish: dish.name, litres: pot.litres.value } }, ways: [{ id: 'cooking.way.borrow', params: { litres } }] };
  }
  if (pot.goes.value <= 1) return null;
  const largest = cookings.reduce<Cooking | null>((best, c) => (best === null || c.portions > best.portions ? c : best), null);
  if (largest === null) return null;
  const goes = pot.goes.value;
  const names = [...new Set(largest.pots.flatMap((id) => event.kitchen.pots.find((p) => p.id === id)?.name ?? []))];
  const fits = Math.floor((pot.usable.value / pot.litres.value) * largest.portions + 1e-9);
  const last = keeping.minutes !== null && largest.after > 1;
  return {
    dish: dish.id, level: last ? 'watch' : 'told', measured: pot.litres, limit: pot.usable,
    message: { id: 'cooking.say.goes', params: { dish: dish.name, litres: pot.litres.value, usable: pot.usable.value, goes, after: largest.after, each: weightOf(dish, largest.portions / goes), pots: names } },
    ways: [{ id: 'cooking.way.borrow', params: { litres } }, { id: 'cooking.way.less', params: { dish: dish.name, portions: fits } }],
  };
}

/** Says in how many fresh bowls a cold dish is put out. Null when one does. */
export function bowlsNote(event: Event, dish: DishPlan, keeping: Keeping, bowls: number, most: number): CookingNote | null {
  if (keeping.bowl === null || bowls <= 1) return null;
  return { dish: dish.id, level: 'told', measured: servedFor(dish), limit: keeping.bowl, ways: [{ id: 'cooking.way.ice', params: { dish: dish.name, celsius: coldTo(event).value } }], message: { id: 'cooking.say.bowls', params: { dish: dish.name, bowls, stands: keeping.bowl.value, most: weightOf(dish, most) } } };
}
