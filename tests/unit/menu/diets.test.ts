import { describe, expect, it } from 'vitest';
import { recipeSchema } from '../../../shared/event';
import { contentsOf } from '../../../shared/menu';
import { adults, drinkOf, menuEvent, menuOf, recipeOf } from './make-menu';

const of = (...ids: string[]) => ({ ingredients: ids.map((ingredient) => ({ ingredient, amount: { amount: '100', unit: 'g' } })) });

describe('diets and allergens', () => {
  it('reads allergens and open diets from the ingredients', () => {
    const contents = contentsOf(recipeSchema.parse(recipeOf('r', 'sweet', of('milk-whole', 'wheat-flour-white', 'sesame-seed'))));
    expect(contents.allergens).toEqual(['gluten', 'milk', 'sesame']);
    expect(contents.diets).toContain('vegetarian');
    expect(contents.diets).not.toContain('vegan');
    expect(contents.diets).not.toContain('glutenFree');
    expect(contents.diets).not.toContain('lactoseFree');
  });

  it('calls a dish with an ingredient it does not know open to no diet, and safe for nobody with an allergy', () => {
    const recipes = [recipeOf('known', 'grain'), recipeOf('strange', 'grain', of('basmati-rice', 'grandmothers-mix')), recipeOf('milky', 'grain', of('milk-whole'))];
    const guests = { diets: [{ diet: 'vegan', people: 3 }], allergies: [{ allergen: 'milk', people: 2 }] };
    const menu = menuOf(menuEvent(recipes, [adults(10)], { guests }));
    expect(menu.dishes.map((d) => d.diets.length > 0)).toEqual([true, false, true]);
    expect(menu.diets).toEqual([{ diet: 'vegan', people: 3, open: ['d-known'] }]);
    expect(menu.allergies).toEqual([{ allergen: 'milk', people: 2, containing: ['d-milky'], open: ['d-known'] }]);
  });

  it('does not count a drink as something to eat, but names it where it carries an allergen', () => {
    const recipes = [recipeOf('rice', 'grain'), drinkOf('tea', true, true, of('milk-whole'))];
    const guests = { diets: [{ diet: 'vegetarian', people: 1 }], allergies: [{ allergen: 'milk', people: 1 }] };
    const menu = menuOf(menuEvent(recipes, [adults(10)], { guests }));
    expect(menu.diets[0]?.open).toEqual(['d-rice']);
    expect(menu.allergies[0]).toMatchObject({ containing: ['d-tea'], open: ['d-rice'] });
  });
});
