import { safetyRule, smokePoints } from '../../reference';
import type { Rule } from '../rule';

const stopC = safetyRule('DF-02').limit ?? 0;
/** Kept below the smoke point (common practice, no source; rule DF-02). */
const marginC = 15;

/** DF-02: oil stays under 205 °C and 15 degrees under its smoke point. Judged at the temperature the dish is fried at. */
export const oilHeat: Rule = {
  id: 'DF-02', level: 'stop', title: { id: 'safety.title.DF-02' },
  judge(s) {
    const fried = s.menu.dishes.filter((d) => d.recipe.frying !== undefined);
    const smoke = smokePoints.find((p) => p.oil === s.event.kitchen.oilKind);
    const limit = Math.min(stopC, smoke === undefined ? stopC : smoke.lowC - marginC);
    const hits = fried.flatMap((d) => {
      const celsius = d.recipe.frying?.targetC ?? 0;
      return celsius >= limit ? [{ value: celsius, unit: 'degC', limit: { value: limit, unit: 'degC' }, about: [d.id], message: { id: 'safety.say.DF-02', params: { dish: d.name, celsius, limit } } } as const] : [];
    });
    return smoke === undefined && fried.length > 0 ? { hits, needs: { id: 'safety.needs.oilKind', params: { oil: s.event.kitchen.oilKind } } } : { hits };
  },
};
