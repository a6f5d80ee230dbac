import { amountOf, amountText, convert, convertFood, dimensionOf, kitchenAmount, type Amount, type UnitId } from '../measure';
import { ingredient } from '../reference';
import { say, sayLoose, type Formats } from '../words';
import { foodName } from './food-name';
import type { Names } from './names';

/** An exact amount in the cook's units. */
export const amountWords = (f: Formats, amount: Amount): string => f.amount(amountText(amount));

/** A plain number with a unit of amounts, in the cook's units and kitchen-rounded. */
export const quantity = (f: Formats, value: number, unit: UnitId): string => amountWords(f, amountOf(value, unit));

/** Below this many grams a spoon is surer than a kitchen scale, which reads single grams at best (common practice, no source). */
const spoonsBelow = 5;

/** A light food in spoons, when the table knows its density; null when it does not, from five grams on, and for less than a sixteenth of a teaspoon. */
export function spoonWords(f: Formats, ingredientId: string, amount: Amount): string | null {
  if (dimensionOf(amount.unit) !== 'mass' || convert(amount, 'g').amount.gte(spoonsBelow)) return null;
  const spoons = convertFood(amount, 'tsp', ingredient(ingredientId) ?? { gramsPerMl: null, gramsPer: {} });
  if (spoons === null || spoons.amount.lt('0.0625')) return null;
  const parts = kitchenAmount(spoons, 'us');
  // Leaves so light that they fill a cup are weighed.
  if (parts.some((part) => part.unit !== 'tsp' && part.unit !== 'tbsp')) return null;
  return parts.map((part) => `${part.text} ${sayLoose(f, `unit.${part.unit}`)}`).join(' ');
}

/** "2.4 kg chickpea flour", "7 g fine salt", "½ tsp ground turmeric (1.1 g)". */
export function lineWords(f: Formats, names: Names, line: { readonly ingredient: string; readonly amount: Amount }): string {
  const what = foodName(names.ingredient(line.ingredient));
  const spoons = spoonWords(f, line.ingredient, line.amount);
  const weight = amountWords(f, line.amount);
  return spoons === null ? `${weight} ${what}` : say(f, 'sheets.spoons', { spoons, what, weight: f.figure(Number(convert(line.amount, 'g').amount.round(1)), 'g') });
}

/** Ingredients with their amounts in one sentence, in the order given. */
export const linesWords = (f: Formats, names: Names, lines: readonly { readonly ingredient: string; readonly amount: Amount }[]): string =>
  f.list(lines.map((line) => lineWords(f, names, line)));
