import { amountOf, amountText, type Amount, type UnitId } from '../measure';
import { say, type Formats } from '../words';
import { foodName } from './food-name';
import type { Names } from './names';

/** An exact amount in the cook's units. */
export const amountWords = (f: Formats, amount: Amount): string => f.amount(amountText(amount));

/** A plain number with a unit of amounts, in the cook's units and kitchen-rounded. */
export const quantity = (f: Formats, value: number, unit: UnitId): string => amountWords(f, amountOf(value, unit));

/** A spoonful stands in a sentence and may be broken after its number. */
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

/** "2.4 kg chickpea flour", "7 g fine salt", "½ tsp ground turmeric (1.1 g)"; without a scale "2¼ cups chickpea flour (less sure: …)". */
export function lineWords(f: Formats, names: Names, line: { readonly ingredient: string; readonly amount: Amount }): string {
  const what = foodName(names.ingredient(line.ingredient));
  const { text, beside } = f.food(amountText(line.amount), line.ingredient);
  return beside === '' ? `${text} ${what}` : say(f, 'sheets.spoons', { spoons: spaced(text), what, weight: beside });
}

/** An amount of a food in what there is to measure with: "2.4 kg", "½ tsp (1.1 g)". */
export function measureWords(f: Formats, { ingredient, amount }: { readonly ingredient: string; readonly amount: Amount }): string {
  const { text, beside } = f.food(amountText(amount), ingredient);
  return beside === '' ? text : `${text} (${beside})`;
}

/** Litres of a food to be poured, in what there is to measure with. */
export const pourWords = (f: Formats, litres: number, ingredient: string): string => measureWords(f, { ingredient, amount: amountOf(litres, 'L') });

/** Ingredients with their amounts in one sentence, in the order given. */
export const linesWords = (f: Formats, names: Names, lines: readonly { readonly ingredient: string; readonly amount: Amount }[]): string =>
  f.list(lines.map((line) => lineWords(f, names, line)));
