import { Big } from 'big.js';
import type { Recipe } from '../event';
import { scaleRecipe } from '../menu';
import { plain } from '../measure';
import { ingredient } from '../reference';
import type { ReadLine } from './line/types';
import { scaleImported, type ScaledRecipe } from './recipe-scale';
import type { FormatsOf } from './recipe-line-text';
import type { ImportedYield } from './recipe-types';

/** A food's name in the order a cook says it in a line: "Chickpeas, canned, drained" is "drained canned chickpeas". */
export function nameInLine(name: string): string {
  const [food = '', ...others] = name.replace(/ \(([^()]*)\)/g, ', $1').split(', ');
  const before = others.filter((part) => !/^(?:for|in|on|with) /.test(part)).toReversed();
  const after = others.filter((part) => !before.includes(part));
  return [...before, food, ...after].join(' ').toLowerCase();
}

/** The name of an ingredient in a line; its id where the table does not know it. */
export const foodInLine = (id: string): string => nameInLine(ingredient(id)?.name ?? id.replaceAll('-', ' '));

/** Ingredient lines of one of our own recipes, as read lines: nothing is open in them. */
export const linesOfOwn = (recipe: Recipe): ReadLine[] => recipe.ingredients.map((line): ReadLine => {
  const item = line.called ?? foodInLine(line.ingredient);
  const { amount, unit } = line.amount;
  const preparation = line.preparation === undefined || line.preparation.trim() === '' ? {} : { preparation: line.preparation };
  return { text: `${amount} ${unit} ${item}`, amount: { low: new Big(amount) }, unit, item, ...preparation, toTaste: line.toTaste, read: 'whole' };
});

/** What one of our own recipes makes. */
export const yieldOfOwn = ({ yield: made }: Recipe): ImportedYield => ({
  texts: [], portions: { low: new Big(made.portions) }, made: { amount: { low: new Big(made.amount.amount) }, unit: made.amount.unit, word: '' },
});

/**
 * One of our own recipes for `factor` times its size, in the form of a scaled foreign one. Each line follows its own rule (linear, fixed, per batch,
 * damped). @param factor above 0.
 */
export function scaleOwn(recipe: Recipe, factor: Big | number, formatsOf: FormatsOf, system?: 'metric' | 'us'): ScaledRecipe {
  const scaled = scaleRecipe(recipe, factor);
  return { ...scaleImported({ name: recipe.name, lines: linesOfOwn(scaled) }, new Big(1), formatsOf, system), factor: plain(new Big(factor)) };
}
