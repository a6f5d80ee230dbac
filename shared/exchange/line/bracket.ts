import { measureAt } from './measure';
import type { Measured } from './types';

/** What stands in a bracket, when it is an amount and nothing else. */
export interface BracketMeasure {
  readonly measured: Measured;
  /** "each", "apiece": of every one that is counted. */
  readonly each: boolean;
  /** Only round about. */
  readonly about: boolean;
}

const before = /^(?:(?:about|approx\.?|approximately|around|roughly|or|=|ca\.?|circa) )?/i;
const after = /^\.?,? ?(each|apiece|per (?:can|tin|piece|one)|in total|total|net|weight|in weight)?\.?$/i;

/** Reads "400 g", "about 150 g each", "14.5-ounce". Null when anything else stands there. */
export function bracketMeasure(inside: string): BracketMeasure | null {
  const text = inside.trim();
  const lead = before.exec(text)?.[0] ?? '';
  const found = measureAt(text, lead.length);
  if (found === null) return null;
  // "240 ml/8 fl oz": the first of two says it all.
  const second = /^ ?[/|] ?/.exec(text.slice(found.end));
  const end = second === null ? found.end : (measureAt(text, found.end + second[0].length)?.end ?? found.end);
  const tail = after.exec(text.slice(end));
  if (tail === null) return null;
  return { measured: { amount: found.amount, unit: found.unit }, each: /each|apiece|per/i.test(tail[1] ?? ''), about: lead !== '' && !/^or/i.test(lead) };
}

/** A text without its brackets, and what stood in them. An unclosed bracket stays in the text. */
export function takeBrackets(text: string): { readonly outside: string; readonly inside: readonly string[] } {
  const inside: string[] = [];
  const outside = text.replace(/ ?(?:\(([^()]*)\)|\[([^[\]]*)\])/g, (_all, round: string | undefined, square: string | undefined) => {
    const held = (round ?? square ?? '').trim();
    if (held !== '') inside.push(held);
    return '';
  });
  return { outside: outside.replace(/ +/g, ' ').replace(/ ,/g, ',').trim(), inside };
}

const opening = / ?[([]/y;

/** The bracket that starts at an offset: what stands in it and the offset after it. */
export function bracketAt(text: string, start: number): { readonly inside: string; readonly end: number } | null {
  opening.lastIndex = start;
  const open = opening.exec(text);
  if (open === null) return null;
  const from = start + open[0].length;
  const close = text.indexOf(open[0].endsWith('(') ? ')' : ']', from);
  return close < 0 ? null : { inside: text.slice(from, close), end: close + 1 };
}
