import type { DishPlan } from '../../menu';
import { ingredient, safetyRule } from '../../reference';
import { ingredientIds, type Rule } from '../rule';
import { gramsOfLine } from './grams';

const days = safetyRule('BO-01').limit ?? 0;
/** From this share of oil by weight a dish counts as plants in oil (common practice, no source). */
const oilShare = 0.3;
const plants: readonly string[] = ['garlic', 'ginger-root', 'green-chilli', 'coriander-leaf', 'mint-leaf', 'parsley', 'spring-onion', 'onion'];
const acids: readonly string[] = ['vinegar', 'wine-vinegar'];

function plantInOil(dish: DishPlan): boolean {
  const ids = ingredientIds(dish);
  if (!ids.some((i) => plants.includes(i)) || ids.some((i) => acids.includes(i)) || dish.recipe.frying !== undefined) return false;
  const grams = dish.recipe.ingredients.map((l) => ({ oil: ingredient(l.ingredient)?.id.endsWith('-oil') === true, grams: gramsOfLine(l) }));
  const all = grams.reduce((sum, g) => sum + g.grams, 0);
  return grams.reduce((sum, g) => sum + (g.oil ? g.grams : 0), 0) > oilShare * all;
}

/** BO-01: garlic, ginger, chilli or herbs in oil without acid are kept cold and used within four days. */
export const plantsInOil: Rule = {
  id: 'BO-01', level: 'stop', title: { id: 'safety.title.BO-01' },
  judge(s) {
    const dishes = s.menu.dishes.filter(plantInOil);
    const kept = dishes.map((d) => ({ dish: d, keeps: d.recipe.steps.findLast((t) => t.keeps !== undefined)?.keeps }));
    const unknown = kept.find((k) => k.keeps === undefined);
    const hits = kept.flatMap(({ dish, keeps }) => {
      if (keeps === undefined || keeps.place === 'freezer') return [];
      const warm = keeps.place !== 'cold';
      const kept4 = keeps.minutes / 1440;
      if (!warm && kept4 <= days) return [];
      return [{ value: kept4, unit: 'd', about: [dish.id], message: warm ? { id: 'safety.say.BO-01.warm', params: { dish: dish.name } } as const : { id: 'safety.say.BO-01.long', params: { dish: dish.name, days: kept4, limit: days } } as const }];
    });
    return unknown === undefined ? { hits } : { hits, needs: { id: 'safety.needs.keeps', params: { dish: unknown.dish.name } } };
  },
};
