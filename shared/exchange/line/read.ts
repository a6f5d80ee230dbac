import { bracketMeasure, takeBrackets } from './bracket';
import { describe, hasOpenNumber } from './describe';
import { isMeasure } from './measure';
import { quantityAt, unitBehindManner, type FoundQuantity } from './quantity';
import { tidyLine } from './tidy';
import type { LineAmount, Measured, ReadLine } from './types';

/** Longest line that is looked into, in letters. Longer ones are kept and left to the cook. */
export const longestLine = 500;

const filled = (parts: readonly (string | undefined)[], joint: string): string => parts.filter((part) => part !== undefined && part !== '').join(joint);

interface Begun extends Partial<Omit<FoundQuantity, 'end'>> {
  /** What stands behind the amount. */
  readonly behind: string;
  readonly aside?: string;
  /** An amount that says nothing exact: "a few", "some". */
  readonly vague?: string;
}

const lead = /^(?:about|approx\.|approximately|approx|around|roughly|circa|ca\.|~) ?/i;
const vague = /^(?:a (?:few|little|bit|lot|touch|couple)|some|several|plenty|lots|(?=(?:handfuls|pinches|dashes|splashes|glugs|sprigs) of )|a good(?= glug| handful| pinch| splash| knob| drizzle)|an? (?:generous|small|large|good) amount)\b(?: of\b)?/i;
const article = /^an? /i;

const from = (text: string, { end, ...found }: FoundQuantity): Begun => ({ ...found, behind: text.slice(end) });

/** "a few sprigs of thyme": something, but not how much. */
function vaguely(text: string): Begun | null {
  const open = vague.exec(text);
  if (open === null) return null;
  const counted = unitBehindManner(text, open[0].length);
  const word = counted?.countedIn ?? counted?.spelled?.unit;
  return { vague: open[0].trim() || (word ?? ''), behind: text.slice(counted?.end ?? open[0].length), ...(word === undefined ? {} : { countedIn: word }) };
}

/** "Pinch of salt": one. */
const bareCount = /^(?=(?:(?:small|large|big|good|generous) )?(?:(?:pinch|dash|handful|bunch)(?: of)? |(?:splash|drizzle|knob|glug|sprig|smidgen|squeeze) of )\S)/i;

/** The amount in front of the line; "a" and "an" are one. */
function begin(text: string): Begun | null {
  const about = lead.exec(text)?.[0] ?? '';
  const aside = about === '' ? {} : { aside: about.trim() };
  const rest = text.slice(about.length);
  const open = vaguely(rest);
  if (open !== null) return { ...open, ...aside };
  const counted = rest.replace(article, '1 ').replace(bareCount, '1 ');
  const found = quantityAt(counted, 0);
  return found === null ? null : { ...from(counted, found), ...aside };
}

const ofOne = /^((?:finely |freshly )?(?:grated |squeezed )?(?:juice|zest|rind)(?: (?:and|&) (?:finely |freshly )?(?:grated |squeezed )?(?:juice|zest|rind))?) (?:(?:of|from) (?=\S)|(?=\d|½|an? ))/i;

/** "Juice of 1 lemon": one lemon, of which the juice. */
function partOf(text: string): Begun | null {
  const match = ofOne.exec(text);
  const found = match === null ? null : begin(text.slice(match[0].length));
  return found?.amount === undefined ? null : { ...found, manner: filled([match?.[1]?.toLowerCase(), found.manner], ', ') };
}

/** The amount at the end of the line: "Rice 500 g", "Onion - 2", "Chickpea flour: 1 cup". A bare number needs a sign before it. */
function atEnd(text: string): Begun | null {
  const starts = [...text.matchAll(/(?<=[\s:–—-])(?=[\d.½¼¾⅓⅔⅛])/g)].slice(0, 6).map((match) => match.index);
  for (const start of starts) {
    const found = quantityAt(text, start);
    const before = text.slice(0, start);
    if (found === null || !/^[\s.]*$/.test(text.slice(found.end)) || !/\p{L}/u.test(before)) continue;
    if (found.unit === undefined && found.countedIn === undefined && !/[:–—-]\s*$/.test(before)) continue;
    const { end: _end, ...rest } = found;
    return { ...rest, behind: before.replace(/[\s,:–—-]+$/, '') };
  }
  return null;
}

/** The amount in the line's only bracket: "Spinach (about 150 g)". */
function inBracket(text: string): Begun | null {
  const { outside, inside } = takeBrackets(text);
  const held = inside.length === 1 && /^\p{L}/u.test(outside) ? bracketMeasure(inside[0] ?? '') : null;
  return held?.about !== true || held.each ? null : { amount: held.measured.amount, unit: held.measured.unit, behind: outside, aside: 'about' };
}

/** "2 garlic cloves" counts cloves; "4 cloves" alone leaves open what of. */
function cloves(begun: Begun, item: string): Pick<ReadLine, 'item' | 'unit'> {
  const garlic = /^(.*\bgarlic) cloves?$/i.exec(item);
  if (garlic !== null && begun.unit === undefined && begun.countedIn === undefined && begun.amount !== undefined) return { item: garlic[1] ?? item, unit: 'clove' };
  if (item === '' && begun.unit === 'clove') return { item: 'cloves' };
  return { item, ...(begun.unit === undefined ? {} : { unit: begun.unit }) };
}

/** So many of a weight each; of ranges the lower ends. */
const timesEach = (each: LineAmount, count: LineAmount): LineAmount => ({ low: each.low.times(count.low) });

/** Brackets with numbers: the same amount once more, a remark beside a count, or something the cook has to look at. */
function numberBrackets(begun: Begun, held: readonly string[]): { readonly also?: Measured; readonly weighs?: Measured; readonly asides: readonly string[]; readonly open: readonly string[] } {
  const asides: string[] = [];
  const isWeight = begun.bracket !== undefined && bracketMeasure(begun.bracket)?.about === true;
  const open = begun.bracket === undefined || isWeight || !hasOpenNumber(begun.bracket) ? [] : [begun.bracket];
  let also = begun.also;
  let weighs: Measured | undefined;
  for (const inside of [...(begun.bracket !== undefined && isWeight ? [begun.bracket] : []), ...held]) {
    const read = bracketMeasure(inside);
    const measured = begun.unit !== undefined && isMeasure(begun.unit);
    if (read === null || begun.amount === undefined) open.push(inside);
    else if (measured && !read.each && also === undefined) also = read.measured;
    else {
      asides.push(inside);
      if (!measured && read.about && begun.pack === undefined && weighs === undefined) weighs = read.each ? { ...read.measured, amount: timesEach(read.measured.amount, begun.amount) } : read.measured;
    }
  }
  return { ...(also === undefined ? {} : { also }), ...(weighs === undefined ? {} : { weighs }), asides, open };
}

function finish(text: string, begun: Begun): ReadLine {
  const { outside, inside } = takeBrackets(begun.behind);
  const described = describe(outside);
  const { item, unit } = cloves(begun, described.item);
  const tastes = inside.filter((held) => /^(?:or )?(?:to taste|as needed|as required)$/i.test(held));
  const words = [...(begun.bracket === undefined ? [] : [begun.bracket]), ...inside].filter((held) => !tastes.includes(held) && !hasOpenNumber(held));
  const { also, weighs, asides, open } = numberBrackets(begun, inside.filter(hasOpenNumber));
  const preparation = filled([begun.manner, described.preparation, ...words], ', ');
  const aside = filled([begun.aside, ...asides, ...open], '; ');
  const unread = filled([begun.vague, ...(/^each\b/i.test(item) ? [item] : []), ...[item, described.preparation].filter(hasOpenNumber), ...open.map((held) => `(${held})`)], ' … ');
  const { amount, countedIn, pack } = begun;
  const nothing = !/\p{L}/u.test(item) || (amount === undefined && (hasOpenNumber(item) || outside.endsWith(':')));
  // "2-inch piece of ginger" says how long, not how many.
  const sized = amount === undefined && /^\p{N}/u.test(item) ? item : '';
  const rest = nothing ? text.trim() : filled([unread, sized], ' … ');
  return {
    text, item, toTaste: described.toTaste || tastes.length > 0,
    ...(amount === undefined ? {} : { amount }), ...(unit === undefined ? {} : { unit }), ...(countedIn === undefined ? {} : { countedIn }),
    ...(preparation === '' ? {} : { preparation }), ...(pack === undefined ? {} : { pack }), ...(also === undefined ? {} : { also }), ...(weighs === undefined ? {} : { weighs }),
    ...(aside === '' ? {} : { aside }), ...(rest === '' ? {} : { rest }),
    read: nothing ? 'none' : rest === '' ? 'whole' : 'part',
  };
}

/**
 * Reads one ingredient line: amount or range, unit, food, preparation, size of packs, "to taste". Nothing is guessed: what was not understood stands in
 * `rest`, and the line itself in `text`. Never throws, whatever the text.
 */
export function readIngredientLine(line: string): ReadLine {
  const text = tidyLine(line);
  if (text === '' || line.length > longestLine) return { text: line, item: '', toTaste: false, rest: line, read: 'none' };
  const begun = begin(text) ?? partOf(text) ?? atEnd(text) ?? inBracket(text) ?? { behind: text };
  return finish(line, begun);
}
