/** Rules of a recipe by itself: its weight and its ratio; the sentence of each is `rule.<id>` in the words. */
export const recipeRules = ['menu.lineWeight', 'menu.foodWeight', 'menu.inside', 'menu.promised', 'menu.ratio'] as const;
