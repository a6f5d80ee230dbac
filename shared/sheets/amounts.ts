import { amountOf, amountText, type Amount, type UnitId } from '../measure';
import type { Formats } from '../words';
import { foodName } from './food-name';
import type { Names } from './names';

/** An exact amount in the cook's units. */
export const amountWords = (f: Formats, amount: Amount): string => f.amount(amountText(amount));

/** A plain number with a unit of amounts, in the cook's units and kitchen-rounded. */
export const quantity = (f: Formats, value: number, unit: UnitId): string => amountWords(f, amountOf(value, unit));

/** "2.4 kg chickpea flour", "7 g fine salt". */
export const lineWords = (f: Formats, names: Names, line: { readonly ingredient: string; readonly amount: Amount }): string =>
  `${amountWords(f, line.amount)} ${foodName(names.ingredient(line.ingredient))}`;

/** Ingredients with their amounts in one sentence, in the order given. */
export const linesWords = (f: Formats, names: Names, lines: readonly { readonly ingredient: string; readonly amount: Amount }[]): string =>
  f.list(lines.map((line) => lineWords(f, names, line)));
