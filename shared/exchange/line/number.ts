import { Big } from 'big.js';
import { parseAmount } from '../../measure';

/** A number found in a text. `end`: offset after it. */
export interface FoundNumber {
  readonly value: Big;
  readonly end: number;
  /** "1,500" or "1.500": a thousand and a half for some, one and a half for others. `value` is the thousands reading. */
  readonly grouped?: 'comma' | 'point';
}

const signs = '¼½¾\u2150-\u215e';
const slash = '[/\u2044\u2215]';
const mixed = new RegExp(`(\\d{1,6})(?: |-| ?(?:and|&) )(\\d{1,4}) ?${slash} ?(\\d{1,4})(?![\\d/])`, 'y');
const fraction = new RegExp(`(\\d{1,6}) ?${slash} ?(\\d{1,4})(?![\\d/])`, 'y');
const signed = new RegExp(`(?:(\\d{1,6})(?: | ?- ?| ?(?:and|&) )?)?([${signs}])(?![${signs}\\d])`, 'y');
const groups = /\d{1,3}(?:,\d{3})+(?:\.\d{1,6})?(?![\d,])/y;
const decimal = /(?:\d{1,12}(?:[.,]\d{1,12})?|[.,]\d{1,12})(?!\d|[.,]\d)/y;
const half = / and (?:a|one) half\b/iy;

function at(pattern: RegExp, text: string, start: number): RegExpExecArray | null {
  pattern.lastIndex = start;
  return pattern.exec(text);
}

const found = (value: Big | null, match: RegExpExecArray): FoundNumber | null => (value === null ? null : { value, end: match.index + match[0].length });

/** A number written with digits and fraction signs. */
function digits(text: string, start: number): FoundNumber | null {
  const withFraction = at(mixed, text, start);
  if (withFraction !== null) return found(parseAmount(`${withFraction[1] ?? ''} ${withFraction[2] ?? ''}/${withFraction[3] ?? ''}`), withFraction);
  const plainFraction = at(fraction, text, start);
  if (plainFraction !== null) return found(parseAmount(`${plainFraction[1] ?? ''}/${plainFraction[2] ?? ''}`), plainFraction);
  const withSign = at(signed, text, start);
  if (withSign !== null) return found(parseAmount(`${withSign[1] ?? ''}${withSign[2] ?? ''}`), withSign);
  const grouped = at(groups, text, start);
  if (grouped !== null && !grouped[0].startsWith('0')) {
    const value = new Big(grouped[0].replaceAll(',', ''));
    const end = grouped.index + grouped[0].length;
    return /^\d{1,3},\d{3}$/.test(grouped[0]) ? { value, end, grouped: 'comma' } : { value, end };
  }
  const plainNumber = at(decimal, text, start);
  if (plainNumber === null) return null;
  const end = plainNumber.index + plainNumber[0].length;
  if (/^[1-9]\d{0,2}\.\d{3}$/.test(plainNumber[0])) return { value: new Big(plainNumber[0].replace('.', '')), end, grouped: 'point' };
  const value = parseAmount(/^[.,]/.test(plainNumber[0]) ? `0${plainNumber[0]}` : plainNumber[0]);
  if (value === null) return null;
  const more = at(half, text, end);
  return more === null ? { value, end } : { value: value.plus('0.5'), end: end + more[0].length };
}

const wordValues: Readonly<Record<string, string>> = {
  one: '1', two: '2', three: '3', four: '4', five: '5', six: '6', seven: '7', eight: '8', nine: '9', ten: '10', eleven: '11', twelve: '12',
};
const words = new RegExp(`(?:(${Object.keys(wordValues).join('|')})( and (?:a|one) half)?|(a half|half an?|half|one half)|(a quarter)|(three quarters|three-quarters))(?: of an?)?(?![a-z])`, 'iy');

/** Small numbers in words: "two", "one and a half", "half a". */
function inWords(text: string, start: number): FoundNumber | null {
  const match = at(words, text, start);
  if (match === null) return null;
  const [all, word, plusHalf, halfWord, quarter] = match;
  const end = start + all.length;
  if (word !== undefined) return { value: new Big(wordValues[word.toLowerCase()] ?? 0).plus(plusHalf === undefined ? 0 : '0.5'), end };
  return { value: new Big(halfWord !== undefined ? '0.5' : quarter !== undefined ? '0.25' : '0.75'), end };
}

/** The number that starts at an offset: `2`, `2.5`, `2,5`, `1½`, `1 1/2`, `1-1/2`, `1 and 1/2`, `.5`, `one and a half`; null when there is none. */
export const numberAt = (text: string, start: number): FoundNumber | null => digits(text, start) ?? inWords(text, start);
