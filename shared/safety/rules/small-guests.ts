import { bandIds, type BandId } from '../../event';
import type { DishPlan } from '../../menu';
import { ingredient } from '../../reference';
import { ingredientIds, type Hit, type Rule, type Subject } from '../rule';
import { childrenOf, factRule, small, yesNo, young } from './facts';

/** Bands that are given nothing with caffeine: to twelve (rule CD-05; paediatric advice, secondary). */
const noCaffeine: readonly BandId[] = young;
const nutty = (d: DishPlan): boolean => ingredientIds(d).some((i) => ingredient(i)?.allergens.some((a) => a === 'nuts' || a === 'peanuts') === true && !i.endsWith('-oil') && !i.includes('butter'));
const roundOrHard = /^(grapes|cherry-tomato|olives|chickpeas|carrot|popcorn|radish|apple)/;
const foods = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.servedAs !== 'cup');
const dishesFor = (s: Subject, is: (d: DishPlan) => boolean): readonly DishPlan[] => (childrenOf(s, small) === 0 ? [] : foods(s).filter(is));

const cutRule = (id: 'CD-01' | 'CD-02' | 'CD-03', level: 'warn' | 'caution', is: (d: DishPlan) => boolean): Rule => factRule({
  id, level, title: { id: `safety.title.${id}` }, fact: 'cutForChildren', applies: (s) => dishesFor(s, is).length > 0,
  judge: (cut, s) => (cut ? null : { ...yesNo(false), about: dishesFor(s, is).map((d) => d.id), message: { id: `safety.say.${id}`, params: { children: Math.round(childrenOf(s, small)), dishes: dishesFor(s, is).map((d) => d.name) } } }),
});
/** CD-01: round and hard food is halved or left out for small children. */
export const roundFood: Rule = cutRule('CD-01', 'warn', (d) => ingredientIds(d).some((i) => roundOrHard.test(i)));
/** CD-02: fried pieces are torn for small children. */
export const tornPieces: Rule = cutRule('CD-02', 'caution', (d) => d.recipe.frying !== undefined);
/** CD-03: no whole nuts for small children. */
export const wholeNuts: Rule = cutRule('CD-03', 'warn', nutty);

/** CD-05: nothing with caffeine is counted for children up to twelve. */
export const childCaffeine: Rule = {
  id: 'CD-05', level: 'warn', title: { id: 'safety.title.CD-05' },
  judge: (s) => ({
    hits: s.menu.dishes.filter((d) => d.recipe.brewing?.caffeinated === true).flatMap((d): readonly Hit[] => {
      const cups = bandIds.filter((b) => noCaffeine.includes(b)).reduce((sum, b) => sum + d.perBand[b] * s.guests.waves.reduce((n, w) => n + w.counts[b], 0), 0);
      return cups > 0 ? [{ value: cups, unit: 'cups', limit: { value: 0, unit: 'cups' }, about: [d.id], message: { id: 'safety.say.CD-05', params: { drink: d.name, cups: Math.ceil(cups) } } }] : [];
    }),
  }),
};
/** CD-06: beside drinks with caffeine there is a hot one without. How strong each cup is, no table says for sure; milligrams are not judged. */
export const decafOffered: Rule = {
  id: 'CD-06', level: 'caution', title: { id: 'safety.title.CD-06' },
  judge(s) {
    const hot = s.menu.dishes.filter((d) => d.recipe.brewing?.hot === true);
    const free = hot.filter((d) => d.recipe.brewing?.caffeinated !== true).length;
    return { hits: hot.length > 0 && free === 0 ? [{ value: 0, unit: 'drinks', limit: { value: 1, unit: 'drinks' }, about: hot.map((d) => d.id), message: { id: 'safety.say.CD-06' } }] : [] };
  },
};
/** CD-11: a dish of whole chillies stands apart where children eat. */
export const chilliBowl: Rule = {
  id: 'CD-11', level: 'caution', title: { id: 'safety.title.CD-11' },
  judge: (s) => ({
    hits: childrenOf(s, young) === 0 ? [] : foods(s).filter((d) => d.recipe.frying?.bowlMinutes === null && ingredientIds(d).some((i) => i.includes('chilli')))
      .map((d): Hit => ({ value: Math.round(childrenOf(s, young)), unit: 'people', limit: { value: 0, unit: 'people' }, about: [d.id], message: { id: 'safety.say.CD-11', params: { dish: d.name } } })),
  }),
};
