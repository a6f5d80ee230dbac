import { amountOf, isUnitId, kitchenAmount } from '../measure';
import { makeFormats, type AmountWords, type Formats } from '../words';
import type { Preferences } from './schema/event';

type Shown = readonly { readonly text: string; readonly unit: string }[];
const number = /^\d+(\.\d+)?(e-?\d+)?$/i;

/** Kitchen rounding in the cook's units; what is no amount of a known unit is shown as it stands. */
function showAmount({ amount, unit }: AmountWords, system: Preferences['units']): Shown {
  return number.test(amount) && isUnitId(unit) ? kitchenAmount(amountOf(amount, unit), system) : [{ text: amount, unit }];
}

/** How numbers, times, amounts and money are written for one event. `day` is the event's day, `YYYY-MM-DD`. */
export const formatsFor = (preferences: Preferences, day: string): Formats => makeFormats({
  locale: preferences.locale, clock: preferences.clock, day, currency: preferences.currency, units: preferences.units,
  showAmount: (amount) => showAmount(amount, preferences.units),
});
