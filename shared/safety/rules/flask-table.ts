import { highest } from '../../measure';
import { safetyRule } from '../../reference';
import type { Hit, Rule, Subject } from '../rule';
import { hottestCups } from './cup';
import { childrenOf, factRule, hotDrinks, needsFact, small, yesNo, young } from './facts';

/** A flask heavier than this stands no higher than a metre, and steady (rule SC-07, common practice). */
const heavyKg = 12;
const tableCm = 100;
const heavyFlasks = (s: Subject) => s.drinks.dispensers.flatMap((d) => {
  const own = s.event.kitchen.dispensers.find((e) => e.id === d.id);
  const kg = highest(d.litres) + (own?.massKg ?? 0);
  return kg > heavyKg && d.litres.some((l) => l > 0) ? [{ id: d.id, name: d.name, kg }] : [];
});

/** SC-07: a heavy flask stands on a strong table no higher than a metre. */
export const flaskTable: Rule = {
  id: 'SC-07', level: 'warn', title: { id: 'safety.title.SC-07' },
  judge(s) {
    const [worst] = heavyFlasks(s).toSorted((a, b) => b.kg - a.kg);
    if (worst === undefined) return { hits: [] };
    const { flaskTableCm, flaskTableSteady } = s.event.precautions ?? {};
    const params = { flask: worst.name, kg: worst.kg };
    const hits: Hit[] = [];
    if (flaskTableCm !== undefined && flaskTableCm > tableCm) hits.push({ value: flaskTableCm, unit: 'cm', limit: { value: tableCm, unit: 'cm' }, about: [worst.id], message: { id: 'safety.say.SC-07', params: { ...params, cm: flaskTableCm } } });
    if (flaskTableSteady === false) hits.push({ value: worst.kg, unit: 'kg', limit: { value: heavyKg, unit: 'kg' }, about: [worst.id], message: { id: 'safety.say.SC-07.steady', params } });
    return flaskTableCm === undefined || flaskTableSteady === undefined ? { hits, needs: needsFact(flaskTableCm === undefined ? 'flaskTableCm' : 'flaskTableSteady') } : { hits };
  },
};

/** CD-09: with small children about, an adult pours. */
export const adultsPour: Rule = factRule({
  id: 'CD-09', level: 'warn', title: { id: 'safety.title.CD-09' }, fact: 'adultsPour', applies: (s) => hotDrinks(s) && childrenOf(s, small) > 0,
  judge: (pour, s) => (pour ? null : { ...yesNo(false), about: [], message: { id: 'safety.say.CD-09', params: { children: Math.round(childrenOf(s, small)) } } }),
});

const veryHot = safetyRule('SC-04').limit ?? 0;
const scald = safetyRule('SC-03').limit ?? 0;

/** SC-04: a drink is 65 °C or cooler when it is first drunk. What is hotter than 71 °C is left to SC-03. */
export const veryHotCup: Rule = {
  id: 'SC-04', level: 'caution', title: { id: 'safety.title.SC-04' },
  judge: (s) => ({
    hits: hottestCups(s).filter((c) => c.cup.value > veryHot && c.cup.value <= scald).map(({ dispenser, dish, cup }): Hit => ({ value: cup.value, unit: 'degC', figure: cup, about: [dispenser.id, dish.id], message: { id: 'safety.say.SC-04', params: { drink: dish.name, celsius: cup.value, limit: veryHot } } })),
  }),
};

/** ED-04: a milk drink that is safe for keeping is too hot for small hands. */
export const hotMilk: Rule = {
  id: 'ED-04', level: 'warn', title: { id: 'safety.title.ED-04' },
  judge: (s) => ({
    hits: childrenOf(s, young) === 0 ? [] : hottestCups(s).filter((c) => (c.dish.recipe.brewing?.milkShare ?? 0) > 0 && c.cup.value > veryHot)
      .map(({ dispenser, dish, cup }): Hit => ({ value: cup.value, unit: 'degC', figure: cup, limit: { value: veryHot, unit: 'degC' }, about: [dispenser.id, dish.id], message: { id: 'safety.say.ED-04', params: { drink: dish.name, celsius: cup.value } } })),
  }),
};
