import { Big } from 'big.js';
import { numberAt, type FoundNumber } from './number';
import type { LineAmount } from './types';

/** A number or range found in a text. */
export interface FoundRange {
  readonly amount: LineAmount;
  readonly end: number;
  /** A number that two customs read differently ("1,500"). */
  readonly grouped?: FoundNumber['grouped'];
}

const between = / ?(?:[-\u2010-\u2015~]|to\b|or\b) ?/iy;

/** Offset after the sign or word between the ends of a range; null when there is none. */
export function afterRangeSign(text: string, start: number): number | null {
  between.lastIndex = start;
  const match = between.exec(text);
  return match === null ? null : start + match[0].length;
}

/** "2", "1-2", "1 to 1½", "one or two". An end below the beginning is no range: the number alone is taken and the rest stays to be looked at. */
export function rangeAt(text: string, start: number): FoundRange | null {
  const first = numberAt(text, start);
  if (first === null) return null;
  const grouped = first.grouped === undefined ? {} : { grouped: first.grouped };
  const from = afterRangeSign(text, first.end);
  const second = from === null ? null : numberAt(text, from);
  if (second === null || second.value.lte(first.value)) return { amount: { low: first.value }, end: first.end, ...grouped };
  return { amount: { low: first.value, high: second.value }, end: second.end, ...grouped, ...(second.grouped === undefined ? {} : { grouped: second.grouped }) };
}

/** Both ends of an amount multiplied by a number. */
export const timesAmount = (amount: LineAmount, by: Big): LineAmount =>
  ({ low: amount.low.times(by), ...(amount.high === undefined ? {} : { high: amount.high.times(by) }) });
