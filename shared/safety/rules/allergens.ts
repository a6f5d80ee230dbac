import type { AllergyCover } from '../../menu';
import { fryingOil } from '../../reference';
import type { Message } from '../../words';
import type { Hit, Rule, Subject } from '../rule';
import { friedIn, needsContents, oilCarries, openTo } from './contents';

const nameOf = (s: Subject, id: string): string => s.menu.dishes.find((d) => d.id === id)?.name ?? id;
const foods = (s: Subject) => s.menu.dishes.filter((d) => d.servedAs !== 'cup');

/** AL-01a: a guest's listed allergen is in a dish, and there is something else for them. */
export const allergenInDish: Rule = {
  id: 'AL-01a', level: 'warn', title: { id: 'safety.title.AL-01a' },
  judge: (s) => ({
    ...needsContents(s.menu.allergies, s.menu.dishes),
    hits: s.menu.allergies.filter((a) => a.containing.length > 0 && openTo(s, a).length > 0).map((a): Hit => ({
      value: a.containing.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: a.containing,
      message: { id: 'safety.say.AL-01a', params: { allergen: a.allergen, people: a.people, dishes: a.containing.map((d) => nameOf(s, d)), open: openTo(s, a).map((d) => nameOf(s, d)) } },
    })),
  }),
};

/** "Every dish has it in it" only when that is known of every dish; else none is known to be without it. */
function nothingMessage(s: Subject, a: AllergyCover): Message {
  const params = { allergen: a.allergen, people: a.people };
  const all = foods(s).length > 0 && foods(s).every((d) => a.containing.includes(d.id));
  return all ? { id: 'safety.say.AL-01b', params } : { id: 'safety.say.AL-01b.unknown', params };
}

/** AL-01b: nothing on the menu is known to be left for a guest with a listed allergy. */
export const nothingLeft: Rule = {
  id: 'AL-01b', level: 'stop', title: { id: 'safety.title.AL-01b' },
  judge: (s) => ({
    ...needsContents(s.menu.allergies, s.menu.dishes),
    hits: s.menu.allergies.filter((a) => openTo(s, a).length === 0).map((a): Hit => ({
      value: 0, unit: 'dishes', limit: { value: 1, unit: 'dishes' }, about: a.containing, message: nothingMessage(s, a),
    })),
  }),
};

/** Oil of unknown contents comes before a dish of unknown contents: it is in everything that is fried. */
function needsForOil(s: Subject): { readonly needs?: Message } {
  const fried = s.event.kitchen.pans.flatMap((pan) => friedIn(s, pan.id));
  const open = s.menu.allergies.filter((a) => oilCarries(s, a.allergen) === null);
  if (fried.length === 0 || open.length === 0) return needsContents(s.menu.allergies, fried);
  return { needs: { id: 'safety.needs.oilContents', params: { allergens: open.map((a) => a.allergen), oil: s.event.kitchen.oilKind } } };
}

/** AL-07: oil in which a listed allergen is fried carries it into what else is fried there; so does an oil that is the allergen itself. */
export const sharedOil: Rule = {
  id: 'AL-07', level: 'stop', title: { id: 'safety.title.AL-07' },
  judge: (s) => ({
    ...needsForOil(s),
    hits: s.menu.allergies.flatMap(({ allergen, people }) => s.event.kitchen.pans.flatMap((pan): readonly Hit[] => {
      const fried = friedIn(s, pan.id);
      const carrier = fried.find((d) => d.allergens.includes(allergen));
      const spoilt = fried.filter((d) => !d.allergens.includes(allergen));
      const source = oilCarries(s, allergen) === true ? fryingOil(s.event.kitchen.oilKind)?.name : carrier?.name;
      if (source === undefined || spoilt.length === 0) return [];
      return [{
        value: spoilt.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: [pan.id, ...fried.map((d) => d.id)],
        message: { id: 'safety.say.AL-07', params: { allergen, people, pan: pan.name, source, dishes: spoilt.map((d) => d.name) } },
      }];
    })),
  }),
};
