import { figure, plus, times, type Figure, type Term } from '../figure';
import type { Purchase } from './purchase';

/** Of a purchase, what goes into reserve bowls: each dish's need times the part of its batter that is in them. Null where none is. Unit: the purchase's. */
export function reserveFigure({ needs, unit }: Purchase, nameOf: (origin: string) => Term['label']): Figure | null {
  const kept = needs.filter(({ need }) => (need.reserve ?? 0) > 0);
  if (kept.length === 0) return null;
  const named = (origin: string): string => { const label = nameOf(origin); return 'text' in label ? label.text : origin; };
  return figure(kept.reduce((sum, { need, bought }) => sum + bought.amount.toNumber() * (need.reserve ?? 0), 0), unit, () => ({
    rule: 'buying.reserve',
    terms: kept.flatMap(({ need, bought }, i): Term[] => [
      { key: `n${i}`, label: { word: 'buying.term.ofDish', params: { dish: named(need.origin) } }, value: bought.amount.toNumber(), unit, origin: { kind: 'recipe', recipe: need.origin } },
      { key: `s${i}`, label: { word: 'buying.term.inReserve', params: { dish: named(need.origin) } }, value: need.reserve ?? 0, unit: '', origin: { kind: 'computed', method: 'buying.method.inReserve' } },
    ]),
    sum: plus(...kept.map((_, i) => times(`n${i}`, `s${i}`))),
  }));
}
