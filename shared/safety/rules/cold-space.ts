import { convert, dimensionOf } from '../../measure';
import type { DishPlan } from '../../menu';
import { ingredient, safetyRule } from '../../reference';
import { holdingOf, type Rule, type Subject } from '../rule';
import { gramsOf } from './grams';

const usable = safetyRule('CH-06').limit ?? 0;

/** Made ahead and kept cold: it waits in the cold, or a step of its recipe puts it there. Drinks are left out: their bottles may stand in ice. */
const chilled = (s: Subject): readonly DishPlan[] => s.menu.dishes.filter((d) => d.recipe.brewing === undefined && d.portions.value > 0
  && (holdingOf(s, d)?.place === 'cold' || d.recipe.steps.some((t) => t.keeps?.place === 'cold')));

/** Litres of a dish: its yield where that is a volume or a mass, else what goes into it; one kilogram takes one litre (common practice, no source). */
function litres({ total, lines }: DishPlan): number {
  const dimension = dimensionOf(total.unit);
  if (dimension !== 'count') return Number(convert(total, dimension === 'volume' ? 'L' : 'kg').amount);
  return lines.filter((l) => ingredient(l.ingredient)?.section !== 'tap').reduce((sum, l) => sum + gramsOf(l.ingredient, l.amount), 0) / 1000;
}

/** CH-06: what is made ahead fits into three quarters of the cold space; a fuller fridge does not hold its temperature. */
export const coldSpace: Rule = {
  id: 'CH-06', level: 'warn', title: { id: 'safety.title.CH-06' },
  judge(s) {
    const dishes = chilled(s);
    const space = s.event.kitchen.coldLitres;
    const need = dishes.reduce((sum, d) => sum + litres(d), 0);
    if (dishes.length === 0) return { hits: [] };
    if (space === null) return { hits: [], needs: { id: 'safety.needs.coldSpace', params: { dishes: dishes.length, first: dishes[0]?.name ?? '' } } };
    const limit = usable * space;
    return { hits: need <= limit ? [] : [{ value: need, unit: 'L', limit: { value: limit, unit: 'L' }, about: dishes.map((d) => d.id), message: { id: 'safety.say.CH-06', params: { litres: need, space, limit } } }] };
  },
};
