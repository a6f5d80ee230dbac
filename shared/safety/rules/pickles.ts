import { computed, divide, figure, times, type Figure } from '../../figure';
import type { DishPlan } from '../../menu';
import { amountFrom } from '../../measure';
import { ingredient, safetyRule } from '../../reference';
import { holdingOf, type Hit, type Rule, type Subject } from '../rule';
import { needsFact } from './facts';
import { gramsOf } from './grams';

const fresh: readonly string[] = ['vegetables', 'greens', 'fruit'];
const dayMinutes = 1440;
const isPreserve = (d: DishPlan): boolean => d.role === 'preserve' && d.broughtBy === undefined && d.recipe.ingredients.some((l) => fresh.includes(ingredient(l.ingredient)?.section ?? ''));
/** Vegetables or fruit put up to stand at room temperature. */
const shelfPickles = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => isPreserve(d) && (holdingOf(s, d)?.place === 'counter' || d.recipe.steps.some((t) => t.keeps?.place === 'counter' && t.keeps.minutes >= dayMinutes)));

const acidLimit = safetyRule('BO-04').limit ?? 0;
/** BO-04: only a pickle of pH 4.6 or lower, or of a tested recipe, stands at room temperature. */
export const shelfPickle: Rule = {
  id: 'BO-04', level: 'stop', title: { id: 'safety.title.BO-04' },
  judge(s) {
    const dishes = shelfPickles(s);
    const { picklePh, pickleTested } = s.event.precautions ?? {};
    if (dishes.length === 0) return { hits: [] };
    const about = dishes.map((d) => d.id);
    const names = dishes.map((d) => d.name);
    if (picklePh !== undefined) return { hits: picklePh > acidLimit ? [{ value: picklePh, unit: 'pH', about, message: { id: 'safety.say.BO-04', params: { dishes: names, ph: picklePh, limit: acidLimit } } }] : [] };
    if (pickleTested === undefined) return { hits: [], needs: needsFact('pickleTested') };
    return { hits: pickleTested ? [] : [{ value: 0, unit: '', limit: { value: 1, unit: '' }, about, message: { id: 'safety.say.BO-04.untested', params: { dishes: names, limit: acidLimit } } }] };
  },
};

const acids = /vinegar|citric-acid/;
/** Grams of acid and of everything. */
const weigh = (lines: readonly { readonly ingredient: string; readonly grams: number }[]) => ({ acid: lines.filter((l) => acids.test(l.ingredient)).reduce((n, l) => n + l.grams, 0), all: lines.reduce((n, l) => n + l.grams, 0) });
/** As written and as made. */
function acidOf(d: DishPlan) {
  return {
    written: weigh(d.recipe.ingredients.map((l) => ({ ingredient: l.ingredient, grams: gramsOf(l.ingredient, amountFrom(l.amount)) }))),
    made: weigh(d.lines.map((l) => ({ ingredient: l.ingredient, grams: gramsOf(l.ingredient, l.amount) }))),
  };
}
/** Below this of the share that is written the ratio counts as changed: amounts are rounded for the scale. */
const kept = 0.98;

/** Share of the acid in what is made, in percent of the share that is written. */
const shareFigure = ({ written, made }: ReturnType<typeof acidOf>): Figure => figure(((made.acid / made.all) / (written.acid / written.all)) * 100, 'percent', () => ({
  rule: 'safety.acidShare',
  terms: [
    computed('acid', { word: 'safety.term.acidMade' }, made.acid, 'g', 'safety.method.weighed'), computed('all', { word: 'safety.term.allMade' }, made.all, 'g', 'safety.method.weighed'),
    computed('acidWritten', { word: 'safety.term.acidWritten' }, written.acid, 'g', 'safety.method.weighed'), computed('allWritten', { word: 'safety.term.allWritten' }, written.all, 'g', 'safety.method.weighed'),
  ],
  sum: times(divide(divide('acid', 'all'), divide('acidWritten', 'allWritten')), 100),
}));

/** BO-05: a pickle made larger or smaller keeps its vinegar to everything else. */
export const vinegarShare: Rule = {
  id: 'BO-05', level: 'warn', title: { id: 'safety.title.BO-05' },
  judge: (s) => ({
    hits: s.menu.dishes.filter(isPreserve).flatMap((d): readonly Hit[] => {
      const acid = acidOf(d);
      if (acid.written.acid === 0 || acid.made.all === 0) return [];
      const share = shareFigure(acid);
      return share.value < kept * 100 ? [{ value: share.value, unit: 'percent', figure: share, limit: { value: 100, unit: 'percent' }, about: [d.id], message: { id: 'safety.say.BO-05', params: { dish: d.name, share: share.value / 100 } } }] : [];
    }),
  }),
};
