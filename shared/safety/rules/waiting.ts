import { safetyRule } from '../../reference';
import { holdingOf, worstOfEach, type Hit, type Rule } from '../rule';
import { hoursBetween } from './hours';
import { isMilkJug } from './milk-jug';
import { hoursOut } from './standing';

const checkHours = safetyRule('HH-05').limit ?? 0;
/** HH-05: food kept hot for more than two hours is measured every two hours. */
export const temperatureChecks: Rule = {
  id: 'HH-05', level: 'caution', title: { id: 'safety.title.HH-05' },
  judge: (s) => ({
    hits: s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl && holdingOf(s, d)?.place === 'hot').flatMap((d): readonly Hit[] => {
      const hours = hoursOut(s, d);
      return hours !== null && hours.value > checkHours ? [{ value: hours.value, unit: 'h', figure: hours, about: [d.id], message: { id: 'safety.say.HH-05', params: { dish: d.name, hours: hours.value } } }] : [];
    }),
  }),
};

/** Out of the fridge for more than this, cold food stands on ice (rule CH-05). */
const iceHours = 2;
/** CH-05: cold food that is out for more than two hours stands on ice or is changed; in order where its temperature is entered and cold enough. A jug of milk is ED-05. */
export const onIce: Rule = {
  id: 'CH-05', level: 'warn', title: { id: 'safety.title.CH-05' },
  judge: (s) => ({
    hits: s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl && d.recipe.brewing === undefined && !isMilkJug(d) && holdingOf(s, d)?.place === 'cold' && holdingOf(s, d)?.temperatureC === undefined).flatMap((d): readonly Hit[] => {
      if (d.firstServed === null || d.lastServed === null) return [];
      const hours = hoursBetween(d.firstServed, d.lastServed);
      return hours.value > iceHours ? [{ value: hours.value, unit: 'h', figure: hours, limit: { value: iceHours, unit: 'h' }, about: [d.id], message: { id: 'safety.say.CH-05', params: { dish: d.name, hours: hours.value } } }] : [];
    }),
  }),
};

const relishHours = safetyRule('BO-06').limit ?? 0;
/** BO-06: chutney and dips out for more than two hours stand on ice or come in small bowls, also where they need no cold by themselves. */
export const relishOut: Rule = {
  id: 'BO-06', level: 'warn', title: { id: 'safety.title.BO-06' },
  judge: (s) => ({
    hits: s.menu.dishes.filter((d) => d.role === 'condiment' && holdingOf(s, d)?.place === 'counter').flatMap((d): readonly Hit[] => {
      const hours = hoursOut(s, d);
      return hours !== null && hours.value > relishHours ? [{ value: hours.value, unit: 'h', figure: hours, about: [d.id], message: { id: 'safety.say.BO-06', params: { dish: d.name, hours: hours.value } } }] : [];
    }),
  }),
};

const batterWarn = safetyRule('TC-08a').limit ?? 0;
const batterStop = safetyRule('TC-08b').limit ?? 0;
/** Hours a bowl of finished batter stands before its last piece is fried. */
const bowlRule = (id: 'TC-08a' | 'TC-08b', level: 'warn' | 'stop', over: (hours: number) => boolean): Rule => ({
  id, level, title: { id: `safety.title.${id}` },
  judge: (s) => {
    const last = new Map<number, number>();
    for (const batch of s.frying.batches) for (const bowl of batch.bowls) last.set(bowl, Math.max(last.get(bowl) ?? 0, batch.dropAt));
    const old = s.frying.bowls.map((b) => ({ bowl: b, hours: (Math.max(b.readyAt, last.get(b.number) ?? 0) - b.mixAt) / 60 })).filter((x) => over(x.hours));
    return { hits: worstOfEach(old, (x) => x.bowl.dish, (x) => x.hours).map(({ bowl, hours }): Hit => ({ value: hours, unit: 'h', about: [bowl.dish], message: { id: `safety.say.${id}`, params: { bowl: bowl.number, hours } } })) };
  },
});
/** TC-08a: finished batter out for more than two hours. */
export const batterOld: Rule = bowlRule('TC-08a', 'warn', (h) => h > batterWarn && h <= batterStop);
/** TC-08b: finished batter out for more than four hours. */
export const batterTooOld: Rule = bowlRule('TC-08b', 'stop', (h) => h > batterStop);
