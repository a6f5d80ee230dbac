import type { Event } from '../event';
import { divide, figure, least, most, plus, minus, times, worked, type Figure } from '../figure';
import { settle, settledTerm } from '../household';

/**
 * Portions of food for a stay: `food.stay60` of a portion at one hour (in proportion below), 1 at 90 minutes, `food.perHour` more for each
 * further hour, at most `food.cap`. For a meal at a set time at most 1: nobody eats it twice by staying long. No published curve exists.
 */
export function foodForStay(event: Event, stay: Figure, mealAtSetTime: boolean): Figure {
  const [at60, perHour, cap] = [settle(event, 'food.stay60'), settle(event, 'food.perHour'), settle(event, 'food.cap')];
  const s = stay.value;
  const upTo90 = Math.min((at60.value * s) / 60, at60.value + ((1 - at60.value) * Math.max(0, s - 60)) / 30, 1);
  const top = mealAtSetTime ? Math.min(1, cap.value) : cap.value;
  const value = Math.min(upTo90 + (perHour.value * Math.max(0, s - 90)) / 60, top);
  return figure(value, '', () => ({
    rule: 'menu.foodForStay',
    terms: [
      worked('stay', { word: 'menu.term.stay' }, stay), settledTerm('at60', at60), settledTerm('perHour', perHour), settledTerm('cap', cap),
    ],
    sum: least(
      plus(
        least(divide(times('at60', 'stay'), 60), plus('at60', divide(times(minus(1, 'at60'), most(0, minus('stay', 60))), 30)), 1),
        divide(times('perHour', most(0, minus('stay', 90))), 60),
      ),
      mealAtSetTime ? least(1, 'cap') : 'cap',
    ),
  }));
}

/** Cups of all drinks together for a stay: `drinks.firstHourCups` in the first hour (in proportion below), `drinks.laterCups` in each further one. */
export function cupsForStay(event: Event, stay: Figure): Figure {
  const [first, later] = [settle(event, 'drinks.firstHourCups'), settle(event, 'drinks.laterCups')];
  const s = stay.value;
  return figure(first.value * Math.min(1, s / 60) + (later.value * Math.max(0, s - 60)) / 60, 'cups', () => ({
    rule: 'menu.cupsForStay',
    terms: [worked('stay', { word: 'menu.term.stay' }, stay), settledTerm('first', first), settledTerm('later', later)],
    sum: plus(times('first', least(1, divide('stay', 60))), divide(times('later', most(0, minus('stay', 60))), 60)),
  }));
}
