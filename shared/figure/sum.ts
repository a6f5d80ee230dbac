/**
 * A sum is the arithmetic behind a figure, kept as a small tree so that it can be shown ("68 × 4 + 21 × 2 = 314"),
 * recomputed by a test from the shown inputs, and never drift from what was calculated.
 */
export type Sum =
  | { readonly op: 'term'; readonly key: string }
  | { readonly op: 'number'; readonly value: number }
  | { readonly op: Operation; readonly args: readonly Sum[] };

/** Operations a sum may use. `roundUp`, `roundDown`, `round` go to whole numbers; `sumOf` and `countOf` run over the items of one list term. */
export type Operation =
  | 'plus' | 'minus' | 'times' | 'divide' | 'power' | 'min' | 'max'
  | 'roundUp' | 'roundDown' | 'round' | 'exp' | 'ln' | 'sqrt' | 'sumOf' | 'countOf';

/** A sum, a term's key (string) or a plain number. */
export type Part = Sum | string | number;

const part = (p: Part): Sum =>
  typeof p === 'string' ? { op: 'term', key: p } : typeof p === 'number' ? { op: 'number', value: p } : p;
const node = (op: Operation, parts: readonly Part[]): Sum => ({ op, args: parts.map(part) });

/** The value of a term, unchanged. */
export const just = (p: Part): Sum => part(p);
/** a + b + … */
export const plus = (...parts: Part[]): Sum => node('plus', parts);
/** a − b */
export const minus = (a: Part, b: Part): Sum => node('minus', [a, b]);
/** a × b × … */
export const times = (...parts: Part[]): Sum => node('times', parts);
/** a ÷ b */
export const divide = (a: Part, b: Part): Sum => node('divide', [a, b]);
/** a to the power b */
export const power = (a: Part, b: Part): Sum => node('power', [a, b]);
/** The smallest of the parts. */
export const least = (...parts: Part[]): Sum => node('min', parts);
/** The largest of the parts. */
export const most = (...parts: Part[]): Sum => node('max', parts);
/** Rounded up to a whole number. A remainder below 1e-9 counts as none, so that 19.000000000001 stays 19. */
export const roundUp = (a: Part): Sum => node('roundUp', [a]);
/** Rounded down to a whole number; 18.9999999999 counts as 19. */
export const roundDown = (a: Part): Sum => node('roundDown', [a]);
/** Rounded to the nearest whole number. */
export const rounded = (a: Part): Sum => node('round', [a]);
/** e to the power a */
export const exponential = (a: Part): Sum => node('exp', [a]);
/** Natural logarithm. */
export const logarithm = (a: Part): Sum => node('ln', [a]);
/** Square root. */
export const squareRoot = (a: Part): Sum => node('sqrt', [a]);
/** Sum of all items of a list term. */
export const sumOf = (key: string): Sum => node('sumOf', [key]);
/** Number of items of a list term. */
export const countOf = (key: string): Sum => node('countOf', [key]);

/** Keys of the terms that a sum uses. */
export function keysIn(sum: Sum): Set<string> {
  if (sum.op === 'number') return new Set();
  return sum.op === 'term' ? new Set([sum.key]) : new Set(sum.args.flatMap((arg) => [...keysIn(arg)]));
}

/** Values of the terms by key: a number, or a list for `sumOf` and `countOf`. */
export type TermValues = Readonly<Record<string, number | readonly number[]>>;

function listOf(sum: Sum | undefined, values: TermValues): readonly number[] {
  const value = sum?.op === 'term' ? values[sum.key] : undefined;
  if (!Array.isArray(value)) throw new RangeError('sumOf and countOf need a list term');
  return value.map(Number);
}

/** Recomputes a sum from its terms. @throws RangeError when a term is missing or a list stands where a number is needed. */
export function evaluate(sum: Sum, values: TermValues): number {
  if (sum.op === 'number') return sum.value;
  if (sum.op === 'term') {
    const value = values[sum.key];
    if (typeof value !== 'number') throw new RangeError(`the sum needs the number "${sum.key}"`);
    return value;
  }
  if (sum.op === 'sumOf') return listOf(sum.args[0], values).reduce((a, b) => a + b, 0);
  if (sum.op === 'countOf') return listOf(sum.args[0], values).length;
  const [a = Number.NaN, ...rest] = sum.args.map((arg) => evaluate(arg, values));
  const b = rest[0] ?? Number.NaN;
  switch (sum.op) {
    case 'plus': return rest.reduce((x, y) => x + y, a);
    case 'times': return rest.reduce((x, y) => x * y, a);
    case 'min': return Math.min(a, ...rest);
    case 'max': return Math.max(a, ...rest);
    case 'minus': return a - b;
    case 'divide': return a / b;
    case 'power': return a ** b;
    case 'roundUp': return Math.ceil(a - 1e-9);
    case 'roundDown': return Math.floor(a + 1e-9);
    case 'round': return Math.round(a);
    case 'exp': return Math.exp(a);
    case 'ln': return Math.log(a);
    case 'sqrt': return Math.sqrt(a);
  }
}
