import type { Big } from 'big.js';
import { dimensionOf, fractionText, kitchenAmount, plain, type UnitId } from '../measure';
import { say, type Formats } from '../words';
import type { LineAmount, ReadLine } from './line/types';
import { countWord } from './line/units';

/** Formats for one system of units: lines are told in the units asked for, or each in those it was written in. */
export type FormatsOf = (system: 'metric' | 'us') => Formats;

const usUnits: ReadonlySet<UnitId> = new Set<UnitId>(['oz', 'lb', 'tsp', 'tbsp', 'floz', 'cup', 'pint', 'quart', 'gallon']);
/** System a unit belongs to; spoons and cups are US ones, counted things go with either. */
export const systemOf = (unit: UnitId | undefined): 'metric' | 'us' => (unit !== undefined && usUnits.has(unit) ? 'us' : 'metric');

/** No-break spaces are for paper and screen; in a line that is read by other programs a space is a space. */
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

const bothEnds = ({ low, high }: LineAmount, formats: Formats, write: (value: Big) => string): string => {
  const [from, to] = [write(low), high === undefined ? '' : write(high)];
  if (to === '' || to === from) return from;
  // "1 clove to 2 cloves" names its unit once.
  const [start, end] = [/^(\S+) (\S+)$/.exec(from), /^(\S+) (\S+)$/.exec(to)];
  const same = start !== null && end !== null && start[2]?.replace(/e?s$/, '') === end[2]?.replace(/e?s$/, '');
  return say(formats, 'recipe.line.range', { low: same ? (start[1] ?? from) : from, high: to });
};

/** A count in kitchen fractions; above ten in whole numbers. */
const countText = (value: Big): string => kitchenAmount({ amount: value, unit: 'piece' }, 'metric').map((part) => part.text).join(' ');

/** Number and unit of a line, kitchen-rounded; things counted keep their word and the size of each. Empty when the line has no amount. */
function amountWords(line: ReadLine, system: 'metric' | 'us' | undefined, formatsOf: FormatsOf): string {
  const { amount, unit, countedIn, pack } = line;
  if (amount === undefined) return '';
  const measured = (a: LineAmount, of: UnitId): string => {
    const formats = formatsOf(system ?? systemOf(of));
    return bothEnds(a, formats, (value) => spaced(formats.amount({ amount: plain(value), unit: of })));
  };
  if (unit !== undefined && (dimensionOf(unit) !== 'count' || (unit !== 'piece' && pack === undefined))) return measured(amount, unit);
  const formats = formatsOf(system ?? 'metric');
  const count = bothEnds(amount, formats, countText);
  // The size of a pack is a fact of the shop and is not rounded.
  const size = pack === undefined ? '' : ` (${bothEnds(pack.size.amount, formats, fractionText)} ${pack.size.unit === 'floz' ? 'fl oz' : pack.size.unit})`;
  const word = countedIn === undefined ? '' : ` ${countWord(countedIn, (amount.high ?? amount.low).gt(1))}`;
  return `${count}${size}${word}`;
}

/** A line as a cook reads it: "2.5 kg potatoes, peeled", "7 (400 g) cans chickpeas". Remarks about the old amount are left out. */
export function lineText(line: ReadLine, formatsOf: FormatsOf, system?: 'metric' | 'us'): string {
  // Nothing was scaled in a line whose amount says nothing exact ("a few sprigs"): it is told as it was written.
  if (line.amount === undefined && line.rest !== undefined) return line.text.trim();
  const head = [amountWords(line, system, formatsOf), line.item].filter((part) => part !== '').join(' ');
  const taste = line.toTaste && !/\bas (?:needed|required|desired|necessary)\b/i.test(line.preparation ?? '') ? say(formatsOf('metric'), 'recipe.line.toTaste') : '';
  const text = [head, line.preparation ?? '', taste].filter((part) => part !== '').join(', ');
  // A number that was not understood has not been scaled: the cook sees it beside the line it comes from.
  return line.rest === undefined ? text : say(formatsOf('metric'), 'recipe.line.asWritten', { text, line: line.text.trim() });
}

