import type { IngredientLine } from '../event';
import { ingredient } from '../reference';
import type { DishPlan } from './types';

/** A food that the table does not have goes by the last word of its name: "arborio-rice", "Sushi rice", and not "licorice". */
const namedRice = /(^|[ -])rice$/i;

const isRiceLine = ({ ingredient: id, called }: IngredientLine): boolean => ingredient(id)?.isRice ?? (namedRice.test(id) || namedRice.test(called?.trim() ?? ''));

/** True for a dish cooked from rice grains; rice flour is no rice dish. Rice has clocks of its own (rules PR-04, PR-05, LO-03). */
export const isRice = ({ recipe }: DishPlan): boolean =>
  recipe.frying === undefined && recipe.brewing === undefined && recipe.ingredients.some(isRiceLine);
