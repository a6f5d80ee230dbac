import type { Event } from '../../event';
import { settle, settledTerm } from '../../household';
import type { DispenserPlan } from '../../drinks';
import { computed, divide, entered, exponential, figure, minus, plus, times, type Figure } from '../../figure';
import { worstOfEach, type Subject } from '../rule';

/**
 * Temperature of a drink when it is first drunk, °C. Model: it loses `pour.drop` on the way into the cup, then cools towards the room
 * for `cup.minutes` with the rate `cup.k` of an open cup (Newton): T = room + (flask − drop − room) · exp(−k t).
 */
export function cupCelsius(event: Event, flaskC: number): number {
  const room = event.kitchen.roomC;
  const poured = flaskC - settle(event, 'pour.drop').value;
  return room + (poured - room) * Math.exp((-settle(event, 'cup.k').value * settle(event, 'cup.minutes').value) / 60);
}

/** The same with its working. */
export const cupFigure = (event: Event, flaskC: number): Figure => figure(cupCelsius(event, flaskC), 'degC', () => {
  const room = 'room';
  return {
    rule: 'safety.cup',
    terms: [
      computed('flask', { word: 'safety.term.flask' }, flaskC, 'degC', 'safety.method.flask'), entered(room, { word: 'safety.term.room' }, event.kitchen.roomC, 'degC', 'kitchen.roomC'),
      settledTerm('drop', settle(event, 'pour.drop')), settledTerm('rate', settle(event, 'cup.k')), settledTerm('minutes', settle(event, 'cup.minutes')),
    ],
    sum: plus(room, times(minus(minus('flask', 'drop'), room), exponential(minus(0, divide(times('rate', 'minutes'), 60))))),
  };
});

/** Minutes a cup must stand after pouring until it is down to `limitC`; 0 when it already is. `limitC` must be above the room. */
export function standMinutes(event: Event, flaskC: number, limitC: number): number {
  const room = event.kitchen.roomC;
  const poured = flaskC - settle(event, 'pour.drop').value;
  return poured <= limitC ? 0 : (Math.log((poured - room) / (limitC - room)) / settle(event, 'cup.k').value) * 60;
}

/** Hottest minute with something in the flask, °C; minus infinity when it stays empty. No list is made of them, for a plan follows a drag. */
export const hottestIn = (d: DispenserPlan): number => d.celsius.reduce<number>((most, c, i) => ((d.litres[i] ?? 0) > 0 && c > most ? c : most), -Infinity);

/** Temperatures of a dispenser in the minutes in which there is something in it. */
export const fullMinutes = (d: DispenserPlan): readonly { readonly at: number; readonly celsius: number }[] =>
  d.celsius.flatMap((celsius, i) => ((d.litres[i] ?? 0) > 0 ? [{ at: d.fromMinute + i, celsius }] : []));

/** Dispensers of hot drinks, with the dish each holds. */
export const hotDispensers = (s: Subject) => s.drinks.dispensers.flatMap((d) => {
  const dish = s.menu.dishes.find((m) => m.id === d.drink);
  return dish?.recipe.brewing?.hot === true ? [{ dispenser: d, dish }] : [];
});

/** The hottest cup of each hot drink, whichever flask it comes from: three flasks of one tea are one finding. Drinks whose flasks stay empty are left out. */
export function hottestCups(s: Subject) {
  const cups = hotDispensers(s).flatMap(({ dispenser, dish }) => {
    const flaskC = hottestIn(dispenser);
    return Number.isFinite(flaskC) ? [{ dispenser, dish, flaskC, cup: cupFigure(s.event, flaskC) }] : [];
  });
  return worstOfEach(cups, (c) => c.dish.id, (c) => c.cup.value);
}
