import { just, figure, minus, most, plus, times, worked, type Figure, type Term } from '../figure';
import { settledTerm, type Settled } from '../household';
import type { Amount } from '../measure';

/** An amount that lessens the need, with where it was entered; null when it comes from several entries or another unit. */
export interface Lessens {
  readonly key: 'larder' | 'bought';
  readonly amount: Amount;
  readonly path: string | null;
}

const lessTerm = ({ key, amount, path }: Lessens): Term => ({
  key, label: { word: `buying.term.${key}` }, value: amount.amount.toNumber(), unit: amount.unit,
  origin: path === null ? { kind: 'computed', method: 'buying.method.held' } : { kind: 'entered', path },
});

/** What is missing: need less what is in the house and what is bought; never below nothing. All in the unit of the need. */
export function missingFigure(need: Figure, less: readonly Lessens[], value: number): Figure {
  const there = less.filter((l) => l.amount.amount.gt(0));
  if (there.length === 0) return need;
  return figure(Math.max(0, value), need.unit, () => ({
    rule: 'buying.missing',
    terms: [worked('need', { word: 'buying.term.need' }, need), ...there.map(lessTerm)],
    sum: most(there.reduce((sum, l) => minus(sum, l.key), just('need')), 0),
  }));
}

/** What is bought: the packs a search chose, or loose goods up to what a counter weighs. Never less than what is missing, which stands beside it. */
export function buyFigure(missing: Figure, packs: readonly { readonly count: number; readonly size: Amount }[], buy: Amount, loose: boolean): Figure {
  return figure(buy.amount.toNumber(), buy.unit, () => {
    const short = worked('missing', { word: 'buying.term.missing' }, missing);
    if (packs.length === 0) return { rule: 'buying.packs', terms: [short], sum: just('missing') };
    const sizes = packs.map(({ size }, i): Term => ({
      key: `size${i}`, label: { word: loose ? 'buying.term.loose' : 'buying.term.size' }, value: size.amount.toNumber(), unit: size.unit,
      origin: loose ? { kind: 'computed', method: 'buying.method.loose' } : { kind: 'table', source: 'common-practice', row: 'packs' },
    }));
    if (loose) return { rule: 'buying.packs', terms: [short, ...sizes], sum: most('size0', 'missing') };
    const counts = packs.map(({ count }, i): Term => ({ key: `count${i}`, label: { word: 'buying.term.packs' }, value: count, unit: 'packs', origin: { kind: 'computed', method: 'buying.method.packs' } }));
    return { rule: 'buying.packs', terms: [short, ...counts, ...sizes], sum: most(plus(...packs.map((_, i) => times(`count${i}`, `size${i}`))), 'missing') };
  });
}

/** What is missing is less than portions feel: nothing more is bought. The working keeps the difference. */
export const coveredFigure = (missing: Figure, need: Figure, within: Settled): Figure => figure(0, missing.unit, () => ({
  rule: 'buying.covered',
  terms: [worked('missing', { word: 'buying.term.missing' }, missing), worked('need', { word: 'buying.term.need' }, need), settledTerm('within', within)],
  sum: most(minus('missing', times('need', 'within')), 0),
}));
