import { measureAt, settleGroups } from './line/measure';
import { rangeAt } from './line/range';
import { plainText, tidyLine } from './line/tidy';
import type { LineAmount } from './line/types';
import { field, isGroup, listOf } from './recipe-graph';
import type { ImportedYield } from './recipe-types';

const portionWord = /^(?:servings?|serves|portions?|people|persons?|guests?|helpings?|adults?|portionen|personen|personnes|personas|porciones|porzioni|personer)$/i;

const numberText = (value: unknown): string | undefined => (typeof value === 'number' || typeof value === 'string' ? String(value) : undefined);

/** Wordings of a yield as text: numbers, texts and quantities with a unit, alone or in a list. */
function textsOf(raw: unknown): string[] {
  return listOf(raw).slice(0, 20).flatMap((one): string[] => {
    if (typeof one === 'number' && Number.isFinite(one)) return [String(one)];
    if (typeof one === 'string') return [tidyLine(one)];
    if (!isGroup(one)) return [];
    const [value, low, high] = ['value', 'minValue', 'maxValue'].map((key) => field(one, key));
    const number = numberText(value) ?? [numberText(low), numberText(high)].filter((end) => end !== undefined).join('-');
    if (number === '') return [];
    const unit = field(one, 'unitText') ?? field(one, 'unitCode') ?? field(one, 'name');
    return [plainText(`${number} ${typeof unit === 'string' ? unit : ''}`)];
  }).filter((text) => text !== '');
}

interface Part { readonly amount: LineAmount; readonly kind: 'portions' | 'made' | 'bare'; readonly made?: ImportedYield['made'] }

/** One number of a wording with the word beside it. */
function partsOf(text: string): Part[] {
  const parts: Part[] = [];
  let at = 0;
  while (at < text.length && at < 200) {
    const starts = /^(?:\p{N}|[.,]\d)/u.test(text.slice(at, at + 2)) && !/[\p{L}\p{N}.,/]$/u.test(text.slice(0, at));
    const range = starts ? rangeAt(text, at) : null;
    if (range === null) {
      at++;
      continue;
    }
    const measured = measureAt(text, at);
    const amount = measured?.amount ?? settleGroups(range, 'g');
    const before = /([\p{L}]+)[ :]*(?:about |up to |approx\.? )?$/u.exec(text.slice(0, at))?.[1] ?? '';
    const word = /^[ -]?(?:(?:large|small|medium|generous|adult) )*([\p{L}]+)/u.exec(text.slice(range.end))?.[1] ?? '';
    if (measured !== null) parts.push({ amount: measured.amount, kind: 'made', made: { amount: measured.amount, unit: measured.unit, word: '' } });
    else if (amount !== null && (portionWord.test(word) || /^(?:serves|feeds|for|portions|servings)$/i.test(before))) parts.push({ amount, kind: 'portions' });
    else if (amount !== null) parts.push(word === '' ? { amount, kind: 'bare' } : { amount, kind: 'made', made: { amount, unit: 'piece', word } });
    at = measured?.end ?? range.end;
  }
  return parts;
}

/** Reads `recipeYield`: 4, "4 servings", ["4", "4 servings"], "24 biscuits", "Serves 4 to 6", a QuantitativeValue. A bare number counts portions. */
export function readYield(raw: unknown): ImportedYield {
  const texts = textsOf(raw);
  const parts = texts.flatMap(partsOf);
  const portions = parts.find((part) => part.kind === 'portions') ?? parts.find((part) => part.kind === 'bare' && !parts.some((other) => other.kind === 'made' && other.amount.low.eq(part.amount.low)));
  const made = parts.find((part) => part.kind === 'made')?.made;
  return { texts, ...(portions === undefined || portions.amount.low.lte(0) ? {} : { portions: portions.amount }), ...(made === undefined || made.amount.low.lte(0) ? {} : { made }) };
}
