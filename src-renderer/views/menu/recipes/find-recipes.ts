import { roleIds, type Recipe, type RoleId } from '../../../../shared/event';
import { emptyWords, meaning, otherNamesOf } from './search-words';

/** Recipes of one place in the meal. */
export interface RoleGroup {
  readonly role: RoleId;
  readonly recipes: readonly Recipe[];
}

const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/**
 * Recipes in which every typed word, or one that means the same, begins a word of the name, another name of the dish, the place in the meal or an
 * ingredient. Words in any order; "with" and its like count nothing.
 * @param wordsOf further words a recipe is found by.
 */
export function findRecipes(recipes: readonly Recipe[], typed: string, wordsOf: (recipe: Recipe) => string): readonly Recipe[] {
  const wanted = folded(typed).split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
  if (wanted.length === 0) return recipes;
  const telling = wanted.filter((word) => !emptyWords.has(word));
  const meant = (telling.length === 0 ? wanted : telling).map((word) => meaning(word));
  return recipes.filter((recipe) => {
    const have = folded(`${recipe.name} ${otherNamesOf(recipe.id)} ${wordsOf(recipe)}`).split(/[^\p{L}\p{N}]+/u);
    return meant.every((words) => have.some((own) => words.some((word) => own.startsWith(word))));
  });
}

/** Recipes by their place in the meal, in the order of the meal, each group by name. Groups without one are left out. */
export const byRole = (recipes: readonly Recipe[]): readonly RoleGroup[] =>
  roleIds.map((role) => ({ role, recipes: recipes.filter((recipe) => recipe.role === role).toSorted((a, b) => a.name.localeCompare(b.name, 'en')) })).filter((group) => group.recipes.length > 0);
