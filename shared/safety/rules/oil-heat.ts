import { fryingOil, safetyRule } from '../../reference';
import type { Event } from '../../event';
import type { Hit, Rule } from '../rule';

const stopC = safetyRule('DF-02').limit ?? 0;
/** Kept below the smoke point (common practice, no source; rule DF-02). */
const marginC = 15;

/** Coolest oil to fry in, °C. Source: insurance inspection bureau and FSSAI, rule DF-01. */
export const coolestOil = 160;
/** Hottest oil to fry in, °C. Source: as `coolestOil`. */
export const warmestOil = 190;
const [workingLowC, workingHighC] = [coolestOil, warmestOil];
/** Oil this hot, °C, is to be taken off the heat: 205, or 15 degrees under the smoke point of its kind (rule DF-02). */
export function oilStopC(event: Event): number {
  const oil = fryingOil(event.kitchen.oilKind);
  return oil === null ? stopC : Math.min(stopC, oil.smoke.lowC - marginC);
}

/** DF-01: oil works between 160 and 190 °C: below, food soaks it up. Hotter than the limit of DF-02 is left to DF-02. */
export const oilRange: Rule = {
  id: 'DF-01', level: 'warn', title: { id: 'safety.title.DF-01' },
  judge: (s) => ({
    hits: s.menu.dishes.flatMap((d): readonly Hit[] => {
      const celsius = d.recipe.frying?.targetC;
      if (celsius === undefined || celsius >= oilStopC(s.event) || (celsius >= workingLowC && celsius <= workingHighC)) return [];
      return [{ value: celsius, unit: 'degC', limit: { value: celsius < workingLowC ? workingLowC : workingHighC, unit: 'degC' }, about: [d.id], message: { id: 'safety.say.DF-01', params: { dish: d.name, celsius, low: workingLowC, high: workingHighC } } }];
    }),
  }),
};

/** DF-02: oil stays under 205 °C and 15 degrees under its smoke point. Judged at the temperature the dish is fried at. */
export const oilHeat: Rule = {
  id: 'DF-02', level: 'stop', title: { id: 'safety.title.DF-02' },
  judge(s) {
    const fried = s.menu.dishes.filter((d) => d.recipe.frying !== undefined);
    const limit = oilStopC(s.event);
    const hits = fried.flatMap((d) => {
      const celsius = d.recipe.frying?.targetC ?? 0;
      return celsius >= limit ? [{ value: celsius, unit: 'degC', limit: { value: limit, unit: 'degC' }, about: [d.id], message: { id: 'safety.say.DF-02', params: { dish: d.name, celsius, limit } } } as const] : [];
    });
    return fryingOil(s.event.kitchen.oilKind) === null && fried.length > 0 ? { hits, needs: { id: 'safety.needs.oilKind', params: { oil: s.event.kitchen.oilKind } } } : { hits };
  },
};
