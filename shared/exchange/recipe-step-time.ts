import type { Step } from '../event';
import { rangeAt } from './line/range';

/** Minutes that the words of a step state, with somebody busy and by itself; null where they state none. `does`: what runs by itself, as far as its verb says. */
export interface StepTime {
  readonly active: number;
  readonly passive: number;
  readonly does: Step['does'];
}

/** Longest time read from words; longer ones are kept to it, as the file does. Unit: minutes. */
const longest = 2880;

/** Verbs whose time runs by itself, and what the step then does (common practice, no source). "Boil" and "fry" keep somebody at the pot. */
const byItself: readonly (readonly [RegExp, Step['does']])[] = [
  [/^soak/, 'soak'], [/^(?:chill|refrigerat|fridge)/, 'chill'], [/^freez/, 'freeze'], [/^cool/, 'cool'], [/^(?:thaw|defrost)/, 'thaw'], [/^(?:simmer|stew|brais|poach)/, 'simmer'], [/^(?:bak|roast|oven)/, 'bake'],
  [/^(?:rest|stand|sit|marinat|prov|proof|ris|infus|steep|set|ferment)/, 'rest'],
];
/** Verbs that keep somebody at it. */
const busy = /^(?:toast|fry|saut|stir|whisk|beat|knead|cook|boil|steam|brown|sear|grill|griddl|blanch|blend|mix|fold|cut|chop|slic|peel|wash|heat|warm|melt|grind|mash|sweat|soften|reduc|bring|add|blister|temper|roll|shape|rub|drain|rins|press|work)/;
const verbs = /[\p{L}]+/gu;

/** "every 10 minutes", "after 5 minutes", "for the last 5 minutes" tell a moment, not how long the step takes. */
const moment = /(?:every|after|within|last|final|first|each|per|halfway|than)\s+(?:(?:about|around|or so|the|another)\s+)?$/i;
const unit = /[\s-]*(hours?|hrs?|h|minutes?|mins?|min\.?)(?![\p{L}])/iyu;
const article = /\b(?:half an hour|an hour(?: and a half)?|a minute)\b/giu;
const written: Readonly<Record<string, string>> = { 'half an hour': '30 minutes', 'an hour': '60 minutes', 'an hour and a half': '90 minutes', 'a minute': '1 minute' };
const perSide = /^\s*(?:per|each|on each|on either|a|for each)\s+side/i;
const joins = /^[\s,]*(?:and|plus)?\s*$/i;
const instead = /\bor\b[^.;]*$/i;

interface Found { readonly from: number; readonly end: number; readonly minutes: number; readonly isHours: boolean }

function unitAt(text: string, at: number): { readonly end: number; readonly isHours: boolean } | null {
  unit.lastIndex = at;
  const found = unit.exec(text);
  return found === null ? null : { end: unit.lastIndex, isHours: (found[1] ?? '').toLowerCase().startsWith('h') };
}

/** Every length of time in a text, ranges by their longer end. */
function times(text: string): Found[] {
  const found: Found[] = [];
  for (let at = 0; at < text.length; at++) {
    if (/[\p{L}\p{N}]/u.test(text[at - 1] ?? ' ') || !/[\p{L}\p{N}]/u.test(text[at] ?? '')) continue;
    const range = rangeAt(text, at);
    const of = range === null ? null : unitAt(text, range.end);
    if (range === null || of === null) continue;
    const last = found.at(-1);
    const value = (range.amount.high ?? range.amount.low).toNumber() * (of.isHours ? 60 : 1);
    // "1 hour 30 minutes" is one length.
    if (last?.isHours === true && !of.isHours && joins.test(text.slice(last.end, at))) found[found.length - 1] = { from: last.from, end: of.end, minutes: last.minutes + value, isHours: false };
    else found.push({ from: at, end: of.end, minutes: value, isHours: of.isHours });
    at = of.end - 1;
  }
  return found;
}

/** What the verb nearest before a time does: by itself (its kind) or with somebody busy (null). Within the sentence; "leave to cool", "in the fridge" count by the nearest. */
function kindBefore(text: string, at: number): Step['does'] | null {
  const start = Math.max(text.lastIndexOf('. ', at), text.lastIndexOf('; ', at), 0);
  const words = [...text.slice(start, at).toLowerCase().matchAll(verbs)].map(([word]) => word).toReversed();
  for (const word of words) {
    const found = byItself.find(([pattern]) => pattern.test(word));
    if (found !== undefined) return found[1];
    if (busy.test(word)) return null;
  }
  return null;
}

/**
 * Reads how long a step takes, where its words state it plainly: a number or a range (the longer end counts) and minutes or hours. Lengths of one step
 * add up; "10 minutes, or 12 for a darker one" is the longer. Pure; 0 to 2,880 minutes.
 */
export function readStepTime(given: string): StepTime | null {
  const text = given.replace(article, (words) => written[words.toLowerCase()] ?? words);
  let [active, passive, before] = [0, 0, 0];
  let does: Step['does'] = 'other';
  let last: { readonly minutes: number; readonly isPassive: boolean } | null = null;
  for (const { from, end, minutes: length } of times(text)) {
    if (moment.test(text.slice(0, from))) continue;
    const minutes = length * (perSide.test(text.slice(end)) ? 2 : 1);
    const kind = kindBefore(text, from);
    const isPassive = kind !== null;
    const replaced = last !== null && last.isPassive === isPassive && instead.test(text.slice(before, from)) ? Math.min(last.minutes, minutes) : 0;
    if (isPassive) passive += minutes - replaced;
    else active += minutes - replaced;
    if (kind !== null && does === 'other') does = kind;
    last = { minutes, isPassive };
    before = end;
  }
  return last === null ? null : { active: Math.min(active, longest), passive: Math.min(passive, longest), does };
}
