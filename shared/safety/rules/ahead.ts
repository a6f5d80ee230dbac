import type { Step } from '../../event';
import { isRice, type DishPlan } from '../../menu';
import { safetyRule } from '../../reference';
import type { Level } from '../types';
import type { Hit, Rule } from '../rule';
import { bigBatch, controlled, cookedAhead, kilograms } from './cooked-ahead';

const span = (m: Step['active'], kg: number): number => m.fixed + m.perKg * kg + m.perBatch;
/** How long a step runs for all there is of a dish, in one batch: these rules say how long it may take at most. Minutes. */
const runs = (step: Step, d: DishPlan): number => Math.max(span(step.passive, kilograms(d)), span(step.active, kilograms(d)));
const cooling = (d: DishPlan): readonly Step[] => d.recipe.steps.filter((t) => t.does === 'cool' || t.does === 'chill');
/** Six hours from 57 °C to 5 °C, the first two of them down to 21 °C (rule CO-01, FDA Food Code 3-501.14). */
const coolMinutes = 360;
/** CO-01: cooked food is cold within six hours of coming off the heat. Judged by how long its cooling steps run. */
export const slowCooling: Rule = {
  id: 'CO-01', level: 'stop', title: { id: 'safety.title.CO-01' },
  judge: (s) => ({
    hits: cookedAhead(s).flatMap((d): readonly Hit[] => {
      const minutes = cooling(d).filter((t) => t.does === 'cool').reduce((sum, t) => sum + runs(t, d), 0);
      return minutes > coolMinutes ? [{ value: minutes, unit: 'min', limit: { value: coolMinutes, unit: 'min' }, about: [d.id], message: { id: 'safety.say.CO-01', params: { dish: d.name, minutes } } }] : [];
    }),
  }),
};
/** CO-05: what is cooked ahead and kept cold has a step that says how it is cooled. */
export const coolingStep: Rule = {
  id: 'CO-05', level: 'caution', title: { id: 'safety.title.CO-05' },
  judge: (s) => ({
    hits: cookedAhead(s).filter((d) => cooling(d).length === 0).map((d): Hit => ({ value: 0, unit: '', limit: { value: 1, unit: '' }, about: [d.id], message: { id: 'safety.say.CO-05', params: { dish: d.name } } })),
  }),
};
/** CO-06: a big batch cooked ahead is divided before it is cooled. Silent once it is said how it cools: then CO-03 and CO-04 measure it. */
export const bigCooling: Rule = {
  id: 'CO-06', level: 'caution', title: { id: 'safety.title.CO-06' },
  judge: (s) => ({
    hits: s.event.precautions?.coolTrays !== undefined ? [] : cookedAhead(s).filter((d) => kilograms(d) > bigBatch).map((d): Hit => ({ value: kilograms(d), unit: 'kg', limit: { value: bigBatch, unit: 'kg' }, about: [d.id], message: { id: 'safety.say.CO-06', params: { dish: d.name, kg: kilograms(d) } } })),
  }),
};

/** RH-04: nothing is warmed up twice. */
export const reheatedTwice: Rule = {
  id: 'RH-04', level: 'stop', title: { id: 'safety.title.RH-04' },
  judge: (s) => ({
    hits: s.menu.dishes.map((d) => ({ d, n: d.recipe.steps.filter((t) => t.does === 'reheat').length })).filter(({ n }) => n > 1).map(({ d, n }): Hit => ({ value: n, unit: '', limit: { value: 1, unit: '' }, about: [d.id], message: { id: 'safety.say.RH-04', params: { dish: d.name, n } } })),
  }),
};
/** Hours in which food is to be hot again (rule RH-01); its 74 °C is on the plan's step, not in the event. */
const reheatMinutes = 120;
/** RH-01: reheating takes two hours at most. */
export const slowReheat: Rule = {
  id: 'RH-01', level: 'stop', title: { id: 'safety.title.RH-01' },
  judge: (s) => ({
    hits: s.menu.dishes.flatMap((d) => d.recipe.steps.filter((t) => t.does === 'reheat' && runs(t, d) > reheatMinutes).map((t): Hit => ({ value: runs(t, d), unit: 'min', limit: { value: reheatMinutes, unit: 'min' }, about: [d.id], message: { id: 'safety.say.RH-01', params: { dish: d.name, minutes: runs(t, d) } } }))),
  }),
};

const weekMinutes = 7 * 1440;
/** LO-02: food that needs the cold is made no more than seven days before it is eaten. */
export const madeTooEarly: Rule = {
  id: 'LO-02', level: 'stop', title: { id: 'safety.title.LO-02' },
  judge: (s) => ({
    hits: controlled(s).filter((d) => d.role !== 'preserve').flatMap((d): readonly Hit[] => {
      const longest = Math.max(0, ...d.recipe.steps.filter((t) => t.keeps?.place === 'cold').map((t) => t.keeps?.minutes ?? 0));
      return longest > weekMinutes ? [{ value: longest / 1440, unit: 'd', limit: { value: 7, unit: 'd' }, about: [d.id], message: { id: 'safety.say.LO-02', params: { dish: d.name, days: longest / 1440 } } }] : [];
    }),
  }),
};

const riceHours = safetyRule('LO-03').limit ?? 0;
/** LO-03: chilled rice is eaten within a day. */
export const oldRice: Rule = {
  id: 'LO-03', level: 'warn', title: { id: 'safety.title.LO-03' },
  judge: (s) => ({
    hits: s.menu.dishes.filter(isRice).flatMap((d): readonly Hit[] => {
      const hours = Math.max(0, ...d.recipe.steps.filter((t) => t.keeps?.place === 'cold').map((t) => t.keeps?.minutes ?? 0)) / 60;
      return hours > riceHours ? [{ value: hours, unit: 'h', about: [d.id], message: { id: 'safety.say.LO-03', params: { dish: d.name, hours } } }] : [];
    }),
  }),
};

const riceWarn = (safetyRule('PR-05a').limit ?? 0) * 60;
const riceStop = (safetyRule('PR-05b').limit ?? 0) * 60;
const riceCooling = (id: 'PR-05a' | 'PR-05b', level: Level, over: (m: number) => boolean): Rule => ({
  id, level, title: { id: `safety.title.${id}` },
  judge: (s) => ({
    hits: s.menu.dishes.filter(isRice).flatMap((d): readonly Hit[] => {
      const minutes = d.recipe.steps.filter((t) => t.does === 'cool').reduce((sum, t) => sum + runs(t, d), 0);
      return over(minutes) ? [{ value: minutes / 60, unit: 'h', about: [d.id], message: { id: `safety.say.${id}`, params: { dish: d.name, minutes } } }] : [];
    }),
  }),
});
/** PR-05a: rice is cold within the hour. */
export const riceCools: Rule = riceCooling('PR-05a', 'warn', (m) => m > riceWarn && m <= riceStop);
/** PR-05b: rice that takes more than an hour and a half to cool. */
export const riceCoolsLong: Rule = riceCooling('PR-05b', 'stop', (m) => m > riceStop);
