import { safetyRule } from '../../reference';
import type { Hit, Rule, Subject } from '../rule';
import { childrenOf, factRule, fries, hotDrinks, needsFact, yesNo, young } from './facts';
import { oilStopC } from './oil-heat';

/** Oil above this wants an extinguisher of its own class, or at least a lid. Litres, rule DF-10. */
const bigFillLitres = 3;
const litresOf = (s: Subject): number => s.frying.oil.reduce((sum, o) => sum + o.fillLitres.value, 0);

/** DF-10: more than three litres of oil want a lid beside them or an extinguisher made for oil. */
export const extinguisher: Rule = {
  id: 'DF-10', level: 'warn', title: { id: 'safety.title.DF-10' },
  judge(s) {
    const litres = litresOf(s);
    const { lidAtHand, extinguisher: kind } = s.event.precautions ?? {};
    if (litres <= bigFillLitres || lidAtHand === true || kind === 'wetChemical') return { hits: [] };
    if (lidAtHand === undefined) return { hits: [], needs: needsFact('lidAtHand') };
    if (kind === undefined) return { hits: [], needs: needsFact('extinguisher') };
    return { hits: [{ value: litres, unit: 'L', limit: { value: bigFillLitres, unit: 'L' }, about: s.frying.oil.map((o) => o.pan), message: { id: 'safety.say.DF-10', params: { litres } } }] };
  },
};

const wallLimit = safetyRule('DF-11').limit ?? 0;
/** Burners under frying pans that stand outdoors. */
const outside = (s: Subject) => s.event.kitchen.burners.filter((b) => b.place === 'outdoor' && s.event.kitchen.pans.some((p) => p.burner === b.id && s.frying.oil.some((o) => o.pan === p.id)));

/** DF-11: an outdoor burner stands on open, level ground, three metres from walls. */
export const outdoorFryer: Rule = {
  id: 'DF-11', level: 'stop', title: { id: 'safety.title.DF-11' },
  judge(s) {
    const burners = outside(s);
    if (burners.length === 0) return { hits: [] };
    const { outdoorPlace, wallMetres } = s.event.precautions ?? {};
    const about = burners.map((b) => b.id);
    const hits: Hit[] = [];
    if (wallMetres !== undefined && wallMetres < wallLimit) hits.push({ value: wallMetres, unit: 'm', about, message: { id: 'safety.say.DF-11', params: { metres: wallMetres, limit: wallLimit } } });
    if (outdoorPlace !== undefined && outdoorPlace !== 'openGround') hits.push({ ...yesNo(true), about, message: { id: 'safety.say.DF-11.ground' } });
    if (outdoorPlace === undefined || wallMetres === undefined) return { hits, needs: needsFact(wallMetres === undefined ? 'wallMetres' : 'outdoorPlace') };
    return { hits };
  },
};

const flameLimit = safetyRule('DF-13').limit ?? 0;
/** DF-13: forty centimetres between hot oil and the next open flame. */
export const nextFlame: Rule = factRule({
  id: 'DF-13', level: 'warn', title: { id: 'safety.title.DF-13' }, fact: 'flameCm', applies: fries,
  judge: (cm) => (cm < flameLimit ? { value: cm, unit: 'cm', about: [], message: { id: 'safety.say.DF-13', params: { cm, limit: flameLimit } } } : null),
});

/** Two of the five signs say that oil is spent (rule DF-15). */
const signsLimit = 2;
/** DF-15: oil with two or more signs of being spent is replaced. Its polar compounds are not measured at home. */
export const spentOil: Rule = factRule({
  id: 'DF-15', level: 'warn', title: { id: 'safety.title.DF-15' }, fact: 'oilSigns', applies: fries,
  judge: (n) => (n >= signsLimit ? { value: n, unit: 'signs', limit: { value: signsLimit, unit: 'signs' }, about: [], message: { id: 'safety.say.DF-15', params: { n } } } : null),
});

const electricFryer = (s: Subject): boolean => s.event.kitchen.pans.some((p) => s.frying.oil.some((o) => o.pan === p.id) && s.event.kitchen.burners.some((b) => b.id === p.burner && (b.kind === 'electric' || b.kind === 'induction')));
/** DF-18: an electric plate under oil has a thermostat, or a thermometer is in the oil. */
export const cutOut: Rule = factRule({
  id: 'DF-18', level: 'warn', title: { id: 'safety.title.DF-18' }, fact: 'thermometer', applies: electricFryer,
  judge: (has, s) => (has ? null : { ...yesNo(false), about: [], message: { id: 'safety.say.DF-18', params: { stop: oilStopC(s.event) } } }),
});

/** DF-05: what goes into the oil bare (no batter around it) is dried first. */
export const dryFood: Rule = factRule({
  id: 'DF-05', level: 'warn', title: { id: 'safety.title.DF-05' }, fact: 'friedDry', applies: (s) => s.menu.dishes.some((d) => d.recipe.frying !== undefined),
  judge: (dry, s) => (dry ? null : { ...yesNo(false), about: s.menu.dishes.filter((d) => d.recipe.frying !== undefined).map((d) => d.id), message: { id: 'safety.say.DF-05' } }),
});

/** CD-08: a line a metre from oil and hot drinks that children stay behind. */
export const childLine: Rule = factRule({
  id: 'CD-08', level: 'stop', title: { id: 'safety.title.CD-08' }, fact: 'childLine', applies: (s) => (fries(s) || hotDrinks(s)) && childrenOf(s, young) > 0,
  judge: (marked, s) => (marked ? null : { value: 0, unit: 'm', about: [], message: { id: 'safety.say.CD-08', params: { children: Math.round(childrenOf(s, young)) } } }),
});

/** AC-01: potato and other starchy roots are fried at 175 °C or cooler. */
const starchy = /^(potato|sweet-potato|cassava|yam|plantain)/;
const starchLimit = safetyRule('AC-01').limit ?? 0;
/** AC-01: starchy food browns with acrylamide above 175 °C. */
export const starchyFood: Rule = {
  id: 'AC-01', level: 'caution', title: { id: 'safety.title.AC-01' },
  judge: (s) => ({
    hits: s.menu.dishes.flatMap((d): readonly Hit[] => {
      const celsius = d.recipe.frying?.targetC ?? 0;
      return celsius > starchLimit && d.recipe.ingredients.some((l) => starchy.test(l.ingredient)) ? [{ value: celsius, unit: 'degC', about: [d.id], message: { id: 'safety.say.AC-01', params: { dish: d.name, celsius, limit: starchLimit } } }] : [];
    }),
  }),
};
