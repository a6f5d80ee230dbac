import type { DishPlan } from './types';

/** True for a dish cooked from rice grains; rice flour is no rice dish. Rice has clocks of its own (rules PR-04, PR-05, LO-03). */
export const isRice = ({ recipe }: DishPlan): boolean =>
  recipe.frying === undefined && recipe.brewing === undefined && recipe.ingredients.some((line) => line.ingredient.endsWith('rice'));
