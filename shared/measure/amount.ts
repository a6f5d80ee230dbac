import { Big } from 'big.js';
import { baseFactor, dimensionOf, type UnitId } from './units';

// Division and square root are the only inexact steps of big.js; 30 places keep unit round trips exact to the last printed digit.
Big.DP = 30;

/** An exact amount with its unit. The number is never rounded until it is shown or bought. */
export interface Amount {
  readonly amount: Big;
  readonly unit: UnitId;
}

/** The same amount as it travels in files and JSON: a decimal string and a unit. */
export interface AmountText {
  readonly amount: string;
  readonly unit: UnitId;
}

/** Makes an amount. `value` a decimal string, Big or finite number. @throws Error when `value` is not a number. */
export const amountOf = (value: string | number | Big, unit: UnitId): Amount => ({ amount: new Big(value), unit });

/** Reads an amount from its file form. @throws Error when the text is not a decimal number. */
export const amountFrom = (text: AmountText): Amount => amountOf(text.amount, text.unit);

/** Writes an amount in its file form; plain decimal notation, never an exponent; at most 12 decimals. */
export const amountText = (a: Amount): AmountText => ({ amount: plain(a.amount), unit: a.unit });

/** A decimal string without exponent and without trailing zeros, at most 12 decimals. */
export function plain(value: Big): string {
  const fixed = value.round(12).toFixed();
  return fixed.includes('.') ? fixed.replace(/0+$/, '').replace(/\.$/, '') : fixed;
}

/** The same amount in another unit of the same dimension, exact to 30 decimals. @throws RangeError across dimensions, or between different counts. */
export function convert(a: Amount, unit: UnitId): Amount {
  if (a.unit === unit) return a;
  const from = dimensionOf(a.unit);
  if (from !== dimensionOf(unit) || from === 'count') {
    throw new RangeError(`cannot turn ${a.unit} into ${unit} without a density or a piece weight`);
  }
  return { amount: a.amount.times(baseFactor(a.unit)).div(baseFactor(unit)), unit };
}

/** An amount multiplied by a pure number. */
export const scaleAmount = (a: Amount, factor: Big | number | string): Amount => ({ amount: a.amount.times(factor), unit: a.unit });

/** Negative, zero or positive as `a` is less than, equal to or more than `b`. @throws RangeError across dimensions. */
export const compareAmounts = (a: Amount, b: Amount): number => a.amount.cmp(convert(b, a.unit).amount);
