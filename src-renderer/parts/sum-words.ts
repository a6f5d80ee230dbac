import { evaluate, type Sum, type TermValues, type Working } from '../../shared/figure';
import type { Speaker } from '../app/speak';

// How tightly each operation binds; a looser part inside a tighter one gets brackets.
const looseness: Partial<Record<Sum['op'], number>> = { roundUp: 4, roundDown: 4, round: 4, exp: 4, countOf: 4, plus: 3, minus: 3, times: 2, divide: 2, power: 1 };

/** A number as it stands in a sum: whole ones whole, others to four figures. */
export function sumNumber(t: Speaker, value: number): string {
  if (!Number.isFinite(value)) return String(value);
  const size = Math.abs(value);
  if (Number.isInteger(value) || size >= 1000) return t.formats.number(value, Number.isInteger(value) ? 0 : 1);
  if (size >= 100) return t.formats.number(value, 1);
  if (size >= 1) return t.formats.number(value, 3);
  return size === 0 ? '0' : t.formats.number(value, Math.min(9, 3 - Math.floor(Math.log10(size))));
}

function listWords(t: Speaker, values: TermValues, sum: Sum | undefined): string {
  const list = sum?.op === 'term' ? values[sum.key] : undefined;
  if (!Array.isArray(list)) return '';
  const numbers = list.map(Number);
  const shown = numbers.length > 12 ? [...numbers.slice(0, 6).map((n) => sumNumber(t, n)), '…', ...numbers.slice(-2).map((n) => sumNumber(t, n))] : numbers.map((n) => sumNumber(t, n));
  return shown.join(' + ');
}

/** The arithmetic in figures: "68 × 4 + 21 × 2". */
export function sumWords(t: Speaker, sum: Sum, values: TermValues): string {
  // What adds or takes away nothing is left out, and a sum of one is that one.
  const withoutNothing = (parts: readonly Sum[]): readonly Sum[] => parts.filter((p, at) => at === 0 || sumWords(t, p, values) !== '0');
  const bare = (part: Sum): Sum => {
    const [only, ...others] = part.op === 'plus' || part.op === 'minus' ? withoutNothing(part.args) : [];
    return only !== undefined && others.length === 0 ? bare(only) : part;
  };
  const inner = (given: Sum, outer: number, strict: boolean): string => {
    const part = bare(given);
    const text = sumWords(t, part, values);
    const own = looseness[part.op] ?? 0;
    return own > outer || (strict && own === outer) ? `(${text})` : text;
  };
  const joined = (sign: string, own: number, strictTail: boolean, parts: readonly Sum[]): string =>
    parts.map((p, at) => inner(p, own, strictTail && at > 0)).join(` ${sign} `);
  switch (sum.op) {
    case 'number': return sumNumber(t, sum.value);
    case 'term': { const v = values[sum.key]; return typeof v === 'number' ? sumNumber(t, v) : listWords(t, values, sum); }
    case 'sumOf': return `(${listWords(t, values, sum.args[0])})`;
    case 'countOf': { const first = sum.args[0]; const list = first?.op === 'term' ? values[first.key] : undefined; return t('sum.countOf', { n: Array.isArray(list) ? list.length : 0 }); }
    case 'plus': return joined('+', 3, false, withoutNothing(sum.args));
    case 'minus': return joined('−', 3, true, withoutNothing(sum.args));
    case 'times': return joined('×', 2, false, sum.args);
    case 'divide': return joined('÷', 2, true, sum.args);
    case 'power': return t('sum.power', { base: inner(sum.args[0] ?? sum, 0, false), exponent: inner(sum.args[1] ?? sum, 0, false) });
    case 'min': return t('sum.least', { parts: sum.args.map((p) => sumWords(t, p, values)).join('; ') });
    case 'max': return t('sum.most', { parts: sum.args.map((p) => sumWords(t, p, values)).join('; ') });
    case 'roundUp': case 'roundDown': case 'round': case 'exp': case 'ln': case 'sqrt':
      return t(`sum.${sum.op}`, { of: sum.args.map((p) => sumWords(t, p, values)).join(', ') });
  }
}

/** The whole line: the sum, and what it comes to. */
export function workingLine(t: Speaker, made: Working, shown: string): string {
  const values: TermValues = Object.fromEntries(made.terms.map((term) => [term.key, term.value]));
  const exact = evaluate(made.sum, values);
  const text = sumWords(t, made.sum, values);
  return text === shown || text === sumNumber(t, exact) ? `= ${shown}` : `${text} = ${shown}`;
}
