import { amountOf, convert, fullMeasure, isUnitId, kitchenAmount } from '../measure';
import { makeFormats, type AmountWords, type Formats, type ShownFood } from '../words';
import { measureFood } from './measure-food';
import type { Preferences } from './schema/event';

type Shown = readonly { readonly text: string; readonly unit: string }[];
const number = /^\d+(\.\d+)?(e-?\d+)?$/i;

/** Kitchen rounding in the cook's units; what is no amount of a known unit is shown as it stands. */
function showAmount({ amount, unit }: AmountWords, { units, measuring }: Preferences): Shown {
  return number.test(amount) && isUnitId(unit) ? kitchenAmount(amountOf(amount, unit), units, measuring?.scaleStepG ?? 0) : [{ text: amount, unit }];
}

/** The same for an amount of a food, in what there is to measure with. */
function showFood(words: AmountWords, food: string, preferences: Preferences): ShownFood {
  const { amount, unit } = words;
  if (!number.test(amount) || !isUnitId(unit)) return { parts: showAmount(words, preferences), off: 0, way: 'plain', spread: 0, grams: null };
  const asked = amountOf(amount, unit);
  const { parts, off, way, spread } = measureFood(asked, food, preferences);
  // A metric cook reads millilitres too where she takes a spoon or a cup.
  const millilitres = way === 'jug' && preferences.units === 'metric' && parts.some((p) => p.unit !== 'ml' && p.unit !== 'L') ? { millilitres: convert(asked, 'ml').amount.toNumber() } : {};
  // Large US measures are few and round; what they stand for is told to the quarter ounce or teaspoon.
  const exact = preferences.units === 'us' && (way === 'scale' || way === 'jug') && Math.abs(off) >= 0.01 ? { exact: fullMeasure(asked) } : {};
  return { parts, off, spread, way: way === 'scale' || way === 'jug' || way === 'count' ? 'plain' : way, grams: way === 'spoon' ? convert(asked, 'g').amount.toNumber() : null, ...millilitres, ...exact };
}

/** How numbers, times, amounts and money are written for one event. `day` is the event's day, `YYYY-MM-DD`. */
export const formatsFor = (preferences: Preferences, day: string): Formats => makeFormats({
  locale: preferences.locale, clock: preferences.clock, day, currency: preferences.currency, units: preferences.units,
  showAmount: (amount) => showAmount(amount, preferences),
  showFood: (amount, food) => showFood(amount, food, preferences),
});
