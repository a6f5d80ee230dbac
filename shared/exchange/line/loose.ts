import { Big } from 'big.js';
import { plain, type AmountText } from '../../measure';
import { ingredient } from '../../reference';
import { numberAt } from './number';
import { tidyLine } from './tidy';
import { countWord, unitAt } from './units';

/** A measure of the hand: how many of what, and about how much that is. */
export interface LooseMeasure {
  readonly amount: AmountText;
  /** As a cook says it: "1 handful". */
  readonly words: string;
}

/** Grams of one of them, of leaves and of other food (common practice, no source). They are by hand: a start for the eye, no weight to hold anybody to. */
const grams: Readonly<Record<string, { readonly leaves: string; readonly other: string }>> = {
  handful: { leaves: '25', other: '40' }, sprig: { leaves: '2', other: '2' }, knob: { leaves: '15', other: '15' }, thumb: { leaves: '15', other: '15' }, pinch: { leaves: '0.4', other: '0.4' },
  dash: { leaves: '0.6', other: '0.6' }, smidgen: { leaves: '0.2', other: '0.2' }, drizzle: { leaves: '10', other: '10' }, splash: { leaves: '10', other: '10' }, glug: { leaves: '20', other: '20' }, squeeze: { leaves: '5', other: '5' },
};

/**
 * About how much so many handfuls, pinches, sprigs, knobs and their like of a food are; null for anything else.
 * @param food id, when it is known: leaves are lighter in the hand.
 */
export function looseMeasure(count: Big, word: string, food: string | undefined): LooseMeasure | null {
  const row = Object.hasOwn(grams, word) ? grams[word] : undefined;
  if (row === undefined || count.lte(0) || count.gt(1000)) return null;
  const isLeaf = food !== undefined && ingredient(food)?.section === 'greens';
  return { amount: { amount: plain(count.times(isLeaf ? row.leaves : row.other)), unit: 'g' }, words: `${plain(count)} ${countWord(word, count.gt(1))}` };
}

/** "1 handful", "a handful", "handful", "2 sprigs": a measure of the hand typed by itself; null for any other text. */
export function readLoose(text: string, food?: string): LooseMeasure | null {
  const bare = tidyLine(text).toLowerCase().replace(/^an? /, '').replace(/^(\d* ?)(?:good|small|large|big|generous) /, '$1');
  const tidy = /^\p{L}/u.test(bare) && numberAt(bare, 0) === null ? `1 ${bare}` : bare;
  const number = numberAt(tidy, 0);
  const unit = number === null ? null : unitAt(tidy, number.end);
  if (number === null || unit === null || unit.end !== tidy.length) return null;
  const word = unit.countedIn ?? (unit.spelled?.unit === 'pinch' ? 'pinch' : undefined);
  return word === undefined ? null : looseMeasure(number.value, word, food);
}
