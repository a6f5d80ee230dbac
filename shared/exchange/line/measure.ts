import { Big } from 'big.js';
import { baseFactor, dimensionOf, type UnitId } from '../../measure';
import { afterRangeSign, rangeAt, timesAmount, type FoundRange } from './range';
import type { LineAmount, Measured } from './types';
import { unitAt } from './units';

/** A weight or measure found in a text. */
export interface FoundMeasure extends Measured {
  readonly end: number;
}

/** True for units of mass and volume. */
export const isMeasure = (unit: UnitId): boolean => dimensionOf(unit) !== 'count';

/**
 * Which number "1,500" or "1.500" is, by its unit: grams and millilitres are never given to three decimals, kilograms and litres never in
 * thousands. Null where it stays open; a comma before cups or spoons and a point before grams may mean either.
 */
export function settleGroups({ amount, grouped }: FoundRange, unit: UnitId | undefined): LineAmount | null {
  if (grouped === undefined) return amount;
  const small = unit === 'g' || unit === 'ml';
  if (grouped === 'comma') return small ? amount : null;
  return small || unit === undefined ? null : timesAmount(amount, new Big('0.001'));
}

/** One number or range with its unit of mass or volume. */
function simple(text: string, start: number): FoundMeasure | null {
  const range = rangeAt(text, start);
  const found = range === null ? null : unitAt(text, range.end);
  if (range === null || found?.spelled === undefined || !isMeasure(found.spelled.unit)) return null;
  const amount = settleGroups(range, found.spelled.unit);
  return amount === null ? null : { amount: timesAmount(amount, found.spelled.times), unit: found.spelled.unit, end: found.end };
}

const inUnit = (m: Measured, unit: UnitId): Big => m.amount.low.times(baseFactor(m.unit)).div(baseFactor(unit));
const joint = / ?(?:(?:plus|and|&|\+|,) ?)?/iy;

/** "1 lb 4 oz", "1 cup plus 2 tablespoons": the second part, in the unit of the first. */
function withSecondPart(text: string, first: FoundMeasure): FoundMeasure {
  if (first.amount.high !== undefined) return first;
  joint.lastIndex = first.end;
  const second = simple(text, first.end + (joint.exec(text)?.[0].length ?? 0));
  if (second === null || second.amount.high !== undefined || dimensionOf(second.unit) !== dimensionOf(first.unit)) return first;
  return { amount: { low: first.amount.low.plus(inUnit(second, first.unit)) }, unit: first.unit, end: second.end };
}

/** "1 cup to 2 cups": a range whose ends each carry a unit. */
function asRange(text: string, first: FoundMeasure): FoundMeasure {
  if (first.amount.high !== undefined) return first;
  const from = afterRangeSign(text, first.end);
  const second = from === null ? null : simple(text, from);
  if (from === null || second === null || dimensionOf(second.unit) !== dimensionOf(first.unit)) return first;
  // "1 cup or 240 ml" says one amount twice.
  if (second.unit !== first.unit && /or/i.test(text.slice(first.end, from))) return first;
  const high = inUnit(second, first.unit);
  return high.gt(first.amount.low) && second.amount.high === undefined ? { amount: { low: first.amount.low, high }, unit: first.unit, end: second.end } : first;
}

/** The weight or measure that starts at an offset, with its second part or upper end; null when there is none. */
export function measureAt(text: string, start: number): FoundMeasure | null {
  const first = simple(text, start);
  if (first === null) return null;
  const ranged = asRange(text, first);
  return ranged === first ? withSecondPart(text, first) : ranged;
}
