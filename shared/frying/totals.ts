import type { Event } from '../event';
import { countOf, figure, plus, sumOf, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { purchaseLitres } from './rules';
import type { Batch, Bowl, OilPlan } from './types';

const list = (key: string, word: string, value: readonly number[], unit: string): Term => ({ key, label: { word }, value, unit, origin: { kind: 'definition' } });

/** Number of batches: the list of their pieces, counted. */
export const batchCount = (batches: readonly Batch[]): Figure =>
  figure(batches.length, 'batches', () => ({ rule: 'fry.batches', terms: [list('batches', 'frying.term.batchPieces', batches.map((b) => b.pieces), 'pieces')], sum: countOf('batches') }));

/** Pieces fried: the pieces of all batches. */
export const pieceCount = (batches: readonly Batch[]): Figure =>
  figure(batches.reduce((sum, b) => sum + b.pieces, 0), 'pieces', () => ({ rule: 'fry.pieces', terms: [list('batches', 'frying.term.batchPieces', batches.map((b) => b.pieces), 'pieces')], sum: sumOf('batches') }));

/** Number of bowls of batter. */
export const bowlCount = (bowls: readonly Bowl[]): Figure =>
  figure(bowls.length, 'bowls', () => ({ rule: 'fry.bowls', terms: [list('bowls', 'frying.term.bowlKg', bowls.map((b) => b.batterKg), 'kg')], sum: countOf('bowls') }));

/** Batter of all bowls, kg. */
export const batterKg = (bowls: readonly Bowl[]): Figure =>
  figure(bowls.reduce((sum, b) => sum + b.batterKg, 0), 'kg', () => ({ rule: 'fry.batter', terms: [list('bowls', 'frying.term.bowlKg', bowls.map((b) => b.batterKg), 'kg')], sum: sumOf('bowls') }));

const total = (of: readonly Figure[]): number => of.reduce((sum, f) => sum + f.value, 0);
const eachOf = (rule: string, word: string, of: readonly Figure[]): Figure => figure(total(of), 'L', () => {
  const terms = of.map((f, i) => worked(`pan${i + 1}`, { word, params: { n: i + 1 } }, f));
  // Without any pan in use there is nothing to add up; the empty list says so.
  return terms.length === 0 ? { rule, terms: [list('none', word, [], 'L')], sum: sumOf('none') } : { rule, terms, sum: plus(...terms.map((t) => t.key)) };
});

/** Oil of the first fills of all pans in use, L. */
export const fillTotal = (oil: readonly OilPlan[]): Figure => eachOf('fry.fills', 'frying.term.panFill', oil.map((o) => o.fillLitres));
/** Oil the food takes up over the day, L. */
export const uptakeTotal = (oil: readonly OilPlan[]): Figure => eachOf('fry.uptakes', 'frying.term.panUptake', oil.map((o) => o.uptakeLitres));

/** Oil to have in the house, L: fills, uptake, and what drips and splashes. Rule `fry.oilPurchase`. */
export function oilToBuy(event: Event, fill: Figure, uptake: Figure): Figure {
  const drip = settle(event, 'oil.lossExtra');
  return figure(purchaseLitres(fill.value, uptake.value, drip.value), 'L', () => ({
    rule: 'fry.oilPurchase', terms: [worked('fill', { word: 'frying.term.fill' }, fill), worked('uptake', { word: 'frying.term.uptake' }, uptake), settledTerm('drip', drip)],
    sum: plus('fill', times('uptake', plus(1, 'drip'))),
  }));
}
