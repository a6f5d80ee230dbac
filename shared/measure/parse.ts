import { Big } from 'big.js';

const signValues: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2], '\u2153': [1, 3], '\u2154': [2, 3], '¼': [1, 4], '¾': [3, 4], '\u215b': [1, 8], '\u215c': [3, 8], '\u215d': [5, 8], '\u215e': [7, 8],
  '\u2155': [1, 5], '\u2156': [2, 5], '\u2157': [3, 5], '\u2158': [4, 5], '\u2159': [1, 6], '\u215a': [5, 6],
};
const sign = `[${Object.keys(signValues).join('')}]`;
const decimal = /^\d{1,12}(?:[.,]\d{1,12})?$/;
const withFraction = /^(?:(\d{1,12})[ -]+)?(\d{1,6})\s*[/\u2044]\s*(\d{1,6})$/;
const withSign = new RegExp(`^(\\d{1,12})?\\s*(${sign})$`);

/**
 * Reads a number as a cook writes it: `2.5`, `2,5`, `1½`, `½`, `1 1/2`, `1-1/2`, `3/4`. Zero or more; a third is kept to 30 decimals.
 * Null when it is not such a number.
 */
export function parseAmount(text: string): Big | null {
  const trimmed = text.trim();
  if (decimal.test(trimmed)) return new Big(trimmed.replace(',', '.'));
  const signed = withSign.exec(trimmed);
  if (signed !== null) {
    const [above, below] = signValues[signed[2] ?? ''] ?? [0, 1];
    return new Big(above).div(below).plus(signed[1] ?? 0);
  }
  const fraction = withFraction.exec(trimmed);
  if (fraction === null) return null;
  const below = Number(fraction[3]);
  return below === 0 ? null : new Big(fraction[2] ?? 0).div(below).plus(fraction[1] ?? 0);
}
