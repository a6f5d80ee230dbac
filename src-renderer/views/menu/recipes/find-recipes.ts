import { roleIds, type Recipe, type RoleId } from '../../../../shared/event';

/** Recipes of one place in the meal. */
export interface RoleGroup {
  readonly role: RoleId;
  readonly recipes: readonly Recipe[];
}

const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/**
 * Recipes in which every typed word begins a word of the name, the place in the meal or an ingredient.
 * @param wordsOf further words a recipe is found by.
 */
export function findRecipes(recipes: readonly Recipe[], typed: string, wordsOf: (recipe: Recipe) => string): readonly Recipe[] {
  const wanted = folded(typed).split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
  if (wanted.length === 0) return recipes;
  return recipes.filter((recipe) => {
    const have = folded(`${recipe.name} ${wordsOf(recipe)}`).split(/[^\p{L}\p{N}]+/u);
    return wanted.every((word) => have.some((own) => own.startsWith(word)));
  });
}

/** Recipes by their place in the meal, in the order of the meal, each group by name. Groups without one are left out. */
export const byRole = (recipes: readonly Recipe[]): readonly RoleGroup[] =>
  roleIds.map((role) => ({ role, recipes: recipes.filter((recipe) => recipe.role === role).toSorted((a, b) => a.name.localeCompare(b.name, 'en')) })).filter((group) => group.recipes.length > 0);
