import { makeFormats, type Formats } from '../words';
import type { Preferences } from './schema/event';

/** How numbers, times, amounts and money are written for one event. `day` is the event's day, `YYYY-MM-DD`. */
export const formatsFor = (preferences: Preferences, day: string): Formats => makeFormats({
  locale: preferences.locale, clock: preferences.clock, day, currency: preferences.currency, units: preferences.units,
  showAmount: ({ amount, unit }) => [{ text: Number(Number(amount).toPrecision(3)).toString(), unit }],
});
