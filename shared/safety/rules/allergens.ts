import type { AllergenId } from '../../event';
import type { AllergyCover } from '../../menu';
import { ingredient } from '../../reference';
import type { Hit, Rule, Subject } from '../rule';

const nameOf = (s: Subject, id: string): string => s.menu.dishes.find((d) => d.id === id)?.name ?? id;
const touched = (s: Subject): readonly AllergyCover[] => s.menu.allergies.filter((a) => a.containing.length > 0);

/** AL-01a: a guest's listed allergen is in a dish, and there is something else for them. */
export const allergenInDish: Rule = {
  id: 'AL-01a', level: 'warn', title: { id: 'safety.title.AL-01a' },
  judge: (s) => ({
    hits: touched(s).filter((a) => a.open.length > 0).map((a): Hit => ({
      value: a.containing.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: a.containing,
      message: { id: 'safety.say.AL-01a', params: { allergen: a.allergen, people: a.people, dishes: a.containing.map((d) => nameOf(s, d)), open: a.open.map((d) => nameOf(s, d)) } },
    })),
  }),
};

/** AL-01b: nothing on the menu is left for a guest with a listed allergy. */
export const nothingLeft: Rule = {
  id: 'AL-01b', level: 'stop', title: { id: 'safety.title.AL-01b' },
  judge: (s) => ({
    hits: touched(s).filter((a) => a.open.length === 0).map((a): Hit => ({
      value: 0, unit: 'dishes', limit: { value: 1, unit: 'dishes' }, about: a.containing,
      message: { id: 'safety.say.AL-01b', params: { allergen: a.allergen, people: a.people } },
    })),
  }),
};

/** Ingredient of the oil of a kind of frying oil (`sunflower-refined` is `sunflower-oil`). */
const oilCarries = (oilKind: string, allergen: AllergenId): boolean => ingredient(`${oilKind.split('-')[0] ?? ''}-oil`)?.allergens.includes(allergen) === true;

/** AL-07: oil in which a listed allergen is fried carries it into what else is fried there; so does an oil that is the allergen itself. */
export const sharedOil: Rule = {
  id: 'AL-07', level: 'stop', title: { id: 'safety.title.AL-07' },
  judge: (s) => ({
    hits: s.menu.allergies.flatMap(({ allergen, people }) => s.event.kitchen.pans.flatMap((pan): readonly Hit[] => {
      const fried = s.menu.dishes.filter((d) => s.event.kitchen.stations.some((t) => t.pans.includes(pan.id) && t.dishes.includes(d.id)));
      const carrier = fried.find((d) => d.allergens.includes(allergen));
      const spoilt = fried.filter((d) => !d.allergens.includes(allergen));
      const source = oilCarries(s.event.kitchen.oilKind, allergen) ? pan.name : carrier?.name;
      if (source === undefined || spoilt.length === 0) return [];
      return [{
        value: spoilt.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: [pan.id, ...fried.map((d) => d.id)],
        message: { id: 'safety.say.AL-07', params: { allergen, people, pan: pan.name, source, dishes: spoilt.map((d) => d.name) } },
      }];
    })),
  }),
};
