import type { DishPlan } from '../../menu';
import { ingredientIds, type Hit, type Rule, type Subject } from '../rule';

/** Beans, lentils, peas and their flours; fenugreek is one of the family. Rules AL-04 and AL-05. */
const legume = /(lentil|chickpea|gram-|pulse|(^|-)peas?(-|$)|beans?(-|$)|soya|lupin|fenugreek|peanut)/;
const hasLegume = (d: DishPlan): boolean => ingredientIds(d).some((i) => legume.test(i));
const foods = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.servedAs !== 'cup');
const listed = (s: Subject, ...allergens: readonly string[]) => s.event.guests.allergies.filter((a) => a.people > 0 && allergens.includes(a.allergen));

/** AL-04: who reacts to one of the bean family may react to another. Soya and lupin; peanuts are AL-05. */
export const beanFamily: Rule = {
  id: 'AL-04', level: 'warn', title: { id: 'safety.title.AL-04' },
  judge: (s) => ({
    hits: listed(s, 'soya', 'lupin').flatMap((a): readonly Hit[] => {
      const dishes = foods(s).filter((d) => hasLegume(d) && !d.allergens.includes(a.allergen));
      return dishes.length === 0 ? [] : [{ value: dishes.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: dishes.map((d) => d.id), message: { id: 'safety.say.AL-04', params: { allergen: a.allergen, people: a.people, dishes: dishes.map((d) => d.name) } } }];
    }),
  }),
};
/** AL-05: with a peanut allergy something without beans and lentils is on the table. */
export const peanutAndPulses: Rule = {
  id: 'AL-05', level: 'caution', title: { id: 'safety.title.AL-05' },
  judge: (s) => ({
    hits: listed(s, 'peanuts').flatMap((a): readonly Hit[] => {
      const dishes = foods(s).filter((d) => hasLegume(d) && !d.allergens.includes('peanuts'));
      return dishes.length === 0 ? [] : [{ value: dishes.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: dishes.map((d) => d.id), message: { id: 'safety.say.AL-05', params: { people: a.people, dishes: dishes.map((d) => d.name), without: foods(s).filter((d) => !hasLegume(d)).map((d) => d.name) } } }];
    }),
  }),
};
/** AL-06: asafoetida is mostly cut with wheat flour. */
export const asafoetida: Rule = {
  id: 'AL-06', level: 'warn', title: { id: 'safety.title.AL-06' },
  judge: (s) => ({
    hits: listed(s, 'gluten').flatMap((a): readonly Hit[] => {
      const dishes = s.menu.dishes.filter((d) => ingredientIds(d).includes('asafoetida') && !d.allergens.includes('gluten'));
      return dishes.length === 0 ? [] : [{ value: dishes.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: dishes.map((d) => d.id), message: { id: 'safety.say.AL-06', params: { people: a.people, dishes: dishes.map((d) => d.name) } } }];
    }),
  }),
};
/** AL-03: coconut is no tree nut on labels in the United States any more; some guests react to it all the same. */
export const coconut: Rule = {
  id: 'AL-03', level: 'caution', title: { id: 'safety.title.AL-03' },
  judge: (s) => ({
    hits: listed(s, 'nuts').flatMap((a): readonly Hit[] => {
      const dishes = s.menu.dishes.filter((d) => ingredientIds(d).some((i) => i.includes('coconut')));
      return dishes.length === 0 ? [] : [{ value: dishes.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: dishes.map((d) => d.id), message: { id: 'safety.say.AL-03', params: { people: a.people, dishes: dishes.map((d) => d.name) } } }];
    }),
  }),
};
