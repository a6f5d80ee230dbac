import { Big } from 'big.js';
import { bracketAt, bracketMeasure } from './bracket';
import { isMeasure, measureAt, settleGroups } from './measure';
import { rangeAt, timesAmount, type FoundRange } from './range';
import type { LineAmount, ReadLine } from './types';
import { unitAt, type FoundUnit } from './units';

/** The amount at the beginning of a line, and how far it goes. */
export interface FoundQuantity extends Pick<ReadLine, 'amount' | 'unit' | 'countedIn' | 'pack' | 'also'> {
  /** Words about the measure: "heaped", "large". */
  readonly manner?: string;
  /** Brackets read on the way that belong to no amount. */
  readonly bracket?: string;
  readonly end: number;
}

const manners = / ?((?:(?:extra|very|large|lg|medium|med|small|sm|big|heaping|heaped|scant|generous|good|level|rounded|packed|firmly|lightly|loosely|thick|thin|fat|fresh|full|good-sized|overflowing|[\d½¼¾./]+(?:-[\d½¼¾./]+)?[- ]?(?:inch|cm))[ -])+)/iy;

interface MannerUnit extends FoundUnit { readonly manner?: string }

/** A unit, also behind words such as "heaped" or "large". */
export function unitBehindManner(text: string, start: number): MannerUnit | null {
  const direct = unitAt(text, start);
  if (direct !== null) return direct;
  manners.lastIndex = start;
  const words = manners.exec(text);
  if (words === null) return null;
  const found = unitAt(text, start + words[0].length);
  return found === null ? null : { ...found, manner: (words[1] ?? '').trim() };
}

const sizeSign = /[ -]?(?:inch(?:es)?\b|in\.|cm\b|mm\b|["″”])/iy;
const times = / ?[x×*] ?(?=\d)/iy;
const endOf = (pattern: RegExp, text: string, start: number): number | null => {
  pattern.lastIndex = start;
  const match = pattern.exec(text);
  return match === null ? null : start + match[0].length;
};

const countUnit = (found: MannerUnit | null): Pick<FoundQuantity, 'unit' | 'countedIn' | 'manner'> => ({
  ...(found?.spelled === undefined ? {} : { unit: found.spelled.unit }),
  ...(found?.countedIn === undefined ? {} : { countedIn: found.countedIn }),
  ...(found?.manner === undefined ? {} : { manner: found.manner }),
});

/** "2 (400 g) cans", "2 x 400 g cans", "1 14-oz can": a count of things of one size. */
function packsAt(text: string, count: FoundRange): FoundQuantity | null {
  const make = (size: { readonly amount: LineAmount; readonly unit: FoundQuantity['unit'] & string }, end: number, need: boolean): FoundQuantity | null => {
    const counted = unitBehindManner(text, end);
    const fits = counted !== null && (counted.spelled === undefined || !isMeasure(counted.spelled.unit));
    if (need && !fits) return null;
    return { amount: count.amount, pack: { count: count.amount, size: { amount: size.amount, unit: size.unit } }, ...(fits ? countUnit(counted) : {}), end: fits ? counted.end : end };
  };
  const bracket = bracketAt(text, count.end);
  if (bracket !== null) {
    const held = bracketMeasure(bracket.inside);
    if (held !== null) return make(held.measured, bracket.end, false);
    // "1 (2-inch) piece": a remark, and the thing counted behind it.
    const counted = unitBehindManner(text, bracket.end);
    return counted === null || count.grouped !== undefined || (counted.spelled !== undefined && isMeasure(counted.spelled.unit)) ? null : { amount: count.amount, ...countUnit(counted), bracket: bracket.inside, end: counted.end };
  }
  const cross = endOf(times, text, count.end);
  const crossed = cross === null ? null : measureAt(text, cross);
  if (crossed !== null) return make(crossed, crossed.end, false);
  const sized = text[count.end] === ' ' ? measureAt(text, count.end + 1) : null;
  return sized === null ? null : make(sized, sized.end, true);
}

/** What stands behind a weight or measure and says the same once more: "500 g/1 lb 2 oz", "1 cup (120 g)". */
function alsoAt(text: string, end: number): Pick<FoundQuantity, 'also' | 'bracket' | 'end'> {
  const stroke = /^(?: ?[/|=] ?| or )/i.exec(text.slice(end));
  const other = stroke === null ? null : measureAt(text, end + stroke[0].length);
  if (other !== null) return { also: { amount: other.amount, unit: other.unit }, end: other.end };
  const bracket = bracketAt(text, end);
  const held = bracket === null ? null : bracketMeasure(bracket.inside);
  if (bracket === null || held === null) return { end };
  return held.each ? { bracket: bracket.inside, end: bracket.end } : { also: held.measured, end: bracket.end };
}

/** What stands behind a count: "1 can (400 g)" and "2 cans (400 g each)" are sizes; "2 cans (800 g)" could be either and is left to the cook. */
function sizeBehind(text: string, amount: LineAmount, end: number): Pick<FoundQuantity, 'pack' | 'bracket' | 'end'> {
  const bracket = bracketAt(text, end);
  const held = bracket === null ? null : bracketMeasure(bracket.inside);
  if (bracket === null || held === null) return { end };
  if (held.each || (amount.high === undefined && amount.low.eq(1))) return { pack: { count: amount, size: held.measured }, end: bracket.end };
  return { bracket: bracket.inside, end: bracket.end };
}

/** Reads the amount that starts at an offset. Null when no amount starts there, as in "2-inch piece of ginger". */
export function quantityAt(text: string, start: number): FoundQuantity | null {
  const measured = measureAt(text, start);
  if (measured !== null) return { amount: measured.amount, unit: measured.unit, ...alsoAt(text, measured.end) };
  const range = rangeAt(text, start);
  if (range === null || endOf(sizeSign, text, range.end) !== null) return null;
  const packs = packsAt(text, range);
  if (packs !== null) return packs;
  const found = unitBehindManner(text, range.end);
  const amount = settleGroups(range, found?.spelled?.unit);
  if (amount === null) return null;
  if (found === null) return /^[\d%°A-Za-z]/.test(text.slice(range.end)) ? null : { amount, end: range.end };
  const all = timesAmount(amount, found.spelled?.times ?? new Big(1));
  const behind = found.spelled !== undefined && isMeasure(found.spelled.unit) ? alsoAt(text, found.end) : sizeBehind(text, all, found.end);
  return { amount: all, ...countUnit(found), ...behind };
}
