import { Big } from 'big.js';
import { readableId, type IngredientLine, type Recipe } from '../event';
import { figure, times, worked, workingOf, type Figure, type Term } from '../figure';
import { amountFrom, baseFactor, convertFood, dimensionOf, gramsOfUnit, type FoodWeights } from '../measure';
import { ingredient } from '../reference';
import { tableOrigin } from './in-force';

const unknownFood: FoodWeights = { gramsPerMl: null, gramsPer: {} };

/** Grams of an amount of a food as it stands in a recipe, exact; null when the table does not tell what the measure or the piece weighs. */
export const weightOf = (line: Pick<IngredientLine, 'ingredient' | 'amount'>): Big | null =>
  convertFood(amountFrom(line.amount), 'g', ingredient(line.ingredient) ?? unknownFood)?.amount ?? null;

const gramsOfOne = (value: number, of: string, origin: NonNullable<Term['origin']>): Term =>
  ({ key: 'grams', label: { word: 'recipe.term.gramsOfOne', params: { unit: of } }, value, unit: 'g', origin });

/** What turns one unit of the line into grams: a definition for weights, the food's density or the weight of one for the rest. */
function unitTerms(line: IngredientLine): readonly Term[] {
  const { unit } = line.amount;
  const food = ingredient(line.ingredient);
  const dimension = dimensionOf(unit);
  if (dimension === 'mass') return [gramsOfOne(baseFactor(unit).toNumber(), unit, { kind: 'definition' })];
  if (dimension === 'volume') {
    const density = food?.figures.density;
    if (density === undefined) return [];
    return [
      { key: 'ml', label: { word: 'recipe.term.mlOfOne', params: { unit } }, value: baseFactor(unit).toNumber(), unit: 'ml', origin: { kind: 'definition' } },
      { key: 'perMl', label: { word: 'recipe.term.gramsPerMl' }, value: density.value, unit: 'g', origin: tableOrigin(density.source, `${line.ingredient} density`) },
    ];
  }
  const counted = food === undefined ? undefined : Object.entries(food.figures).find(([id]) => id === unit)?.[1];
  const value = gramsOfUnit(unit, food ?? unknownFood);
  return counted === undefined || value === null ? [] : [gramsOfOne(value.toNumber(), unit, tableOrigin(counted.source, `${line.ingredient} ${unit}`))];
}

/** Grams of one line of a recipe with its working: amount × what one of its units weighs. Null when it cannot be weighed. */
export function lineWeight(recipe: Pick<Recipe, 'id'>, line: IngredientLine): Figure | null {
  const grams = weightOf(line);
  if (grams === null) return null;
  return figure(grams.toNumber(), 'g', () => {
    const amount: Term = { key: 'amount', label: { word: 'recipe.term.amount' }, value: Number(line.amount.amount), unit: line.amount.unit, origin: { kind: 'recipe', recipe: recipe.id } };
    const of = unitTerms(line);
    return workingOf('menu.lineWeight', [amount, ...of], times('amount', ...of.map((term) => term.key)));
  });
}

/** A line's weight as an input of a sum, under the food's name. */
export const lineTerm = (key: string, line: IngredientLine, weight: Figure): Term => worked(key, { text: ingredient(line.ingredient)?.name ?? line.called ?? readableId(line.ingredient) }, weight);
