import { amountText, parseAmount, type AmountText, type UnitId } from '../measure';
import { measureAt } from './line/measure';
import { tidyLine } from './line/tidy';
import { unitAt } from './line/units';

/** Longest entry that is looked into, in letters. */
const longest = 60;
const number = /^[\p{N}.,/\u2044 -]*[\p{N}]/u;

const kept = (amount: AmountText): AmountText | null => (/^\d{1,12}(?:\.\d{1,12})?$/.test(amount.amount) ? amount : null);

/**
 * An amount as a cook types it into a field: "2.4 kg", "1½ cups", "1 lb 4 oz", "3 cloves". The whole text has to be one amount; a range is none.
 * @param bare unit of a number without one; without it such a number is none.
 */
export function readAmount(text: string, bare?: UnitId): AmountText | null {
  const tidy = tidyLine(text);
  if (tidy.length > longest) return null;
  const measured = measureAt(tidy, 0);
  if (measured !== null && measured.end === tidy.length) {
    return measured.amount.high === undefined ? kept(amountText({ amount: measured.amount.low, unit: measured.unit })) : null;
  }
  const digits = number.exec(tidy)?.[0] ?? '';
  const value = parseAmount(digits);
  if (value === null) return null;
  if (digits.length === tidy.length) return bare === undefined ? null : kept(amountText({ amount: value, unit: bare }));
  const unit = unitAt(tidy, digits.length);
  return unit?.spelled === undefined || unit.end !== tidy.length ? null : kept(amountText({ amount: value.times(unit.spelled.times), unit: unit.spelled.unit }));
}
