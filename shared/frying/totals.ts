import type { Event } from '../event';
import { computed, countOf, divide, entered, figure, most, plus, roundUp, sumOf, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { purchaseLitres } from './rules';
import type { DishSchedule } from './schedule';
import type { Batch, Bowl, OilPlan, WaitPlan } from './types';

const schedule = 'frying.method.schedule';
const list = (key: string, word: string, value: readonly number[], unit: string): Term => computed(key, { word }, value, unit, schedule);
const pieces = (batches: readonly Batch[]): Term => list('batches', 'frying.term.batchPieces', batches.map((b) => b.pieces), 'pieces');

/** Batches a dish needs if every one were full: its pieces over the most that go into one of its pans at once, rounded up. */
function fullBatches({ dish, parts }: DishSchedule, batches: readonly Batch[]): Figure | null {
  const mine = batches.filter((b) => b.dish === dish.id);
  const loads = parts.map((p) => p.load.plan.pieces);
  const largest = Math.max(0, ...loads.map((l) => l.value));
  if (mine.length === 0 || largest <= 0) return null;
  const all = mine.reduce((sum, b) => sum + b.pieces, 0);
  const terms = loads.map((l, i) => worked(`load${i}`, { word: 'frying.term.pieces' }, l));
  return figure(Math.ceil(all / largest - 1e-9), 'batches', () => ({
    rule: 'fry.fullBatches', terms: [pieces(mine), ...terms], sum: roundUp(divide(sumOf('batches'), most(...terms.map((t) => t.key)))),
  }));
}

/**
 * Number of batches: the list of their pieces, counted; never fewer than full batches could be. The rest is forced by the hold limit and the
 * lead: a piece may not wait for its batch to fill.
 */
export const batchCount = (dishes: readonly DishSchedule[], batches: readonly Batch[]): Figure => figure(batches.length, 'batches', () => {
  const full = dishes.flatMap((d) => {
    const least = fullBatches(d, batches);
    return least === null ? [] : [{ name: d.dish.name, least }];
  });
  const terms = full.map(({ name, least }, i) => worked(`full${i}`, { word: 'frying.term.fullBatches', params: { dish: name } }, least));
  const counted = countOf('batches');
  return { rule: 'fry.batches', terms: [pieces(batches), ...terms], sum: terms.length === 0 ? counted : most(counted, plus(...terms.map((t) => t.key))) };
});

/** Fewest batches any plan could have: each dish's, with its pans to itself, added up. Worked out when asked for, as it solves every dish once more. */
export function batchBound(dishes: readonly DishSchedule[]): Figure {
  const bound = dishes.map((d) => ({ name: d.dish.name, least: d.atLeast() }));
  return figure(bound.reduce((sum, b) => sum + b.least, 0), 'batches', () => {
    const terms = bound.map((b, i) => computed(`dish${i}`, { word: 'frying.term.aloneBatches', params: { dish: b.name } }, b.least, 'batches', 'frying.method.alone'));
    return terms.length === 0 ? { rule: 'fry.bound', terms: [pieces([])], sum: countOf('batches') } : { rule: 'fry.bound', terms, sum: plus(...terms.map((t) => t.key)) };
  });
}

/** How long the pieces of a dish wait, from the minutes of each of its batches; null when nothing of it is fried. */
export function waitPlan({ dish, waits }: DishSchedule, batches: readonly Batch[]): WaitPlan[] {
  const mine = batches.filter((b) => b.dish === dish.id);
  if (mine.length === 0) return [];
  const [minutes, fried] = [waits.reduce((a, b) => a + b, 0), mine.reduce((sum, b) => sum + b.pieces, 0)];
  const all = figure(minutes, 'min', () => ({ rule: 'fry.waiting', terms: [list('waits', 'frying.term.batchWaits', waits, 'min')], sum: sumOf('waits') }));
  return [{
    dish: dish.id, minutes: all, smallestBatch: mine.reduce((least, b) => Math.min(least, b.pieces), Infinity),
    perPiece: figure(minutes / fried, 'min', () => ({ rule: 'fry.waitingEach', terms: [worked('waiting', { word: 'frying.term.waiting' }, all), pieces(mine)], sum: divide('waiting', sumOf('batches')) })),
  }];
}

/** Pieces fried: the pieces of all batches. */
export const pieceCount = (batches: readonly Batch[]): Figure =>
  figure(batches.reduce((sum, b) => sum + b.pieces, 0), 'pieces', () => ({ rule: 'fry.pieces', terms: [pieces(batches)], sum: sumOf('batches') }));

const bowlList = (bowls: readonly Bowl[]): Term => list('bowls', 'frying.term.bowlKg', bowls.map((b) => b.batterKg), 'kg');

/** Kilograms of batter a bowl holds. */
function bowlKg(event: Event): Figure {
  const [fill, density] = [settle(event, 'bowl.fill'), settle(event, 'batter.kgPerLitre')];
  return figure(event.kitchen.bowlLitres * fill.value * density.value, 'kg', () => ({
    rule: 'fry.bowlHolds', terms: [entered('litres', { word: 'frying.term.bowlLitres' }, event.kitchen.bowlLitres, 'L', 'kitchen.bowlLitres'), settledTerm('fill', fill), settledTerm('density', density)],
    sum: times('litres', 'fill', 'density'),
  }));
}

/** Number of bowls of batter: counted; more than the batter would fill where a bowl grows too old. A bowl holds one piece at least. */
export const bowlCount = (event: Event, bowls: readonly Bowl[]): Figure => {
  const holds = bowlKg(event);
  const largest = Math.max(0, ...bowls.map((b) => b.batterKg));
  // A bowl smaller than one piece still takes one; then the bound by weight says nothing.
  const bounded = bowls.length > 0 && largest <= holds.value + 1e-9;
  return figure(bowls.length, 'bowls', () => bounded
    ? { rule: 'fry.bowls', terms: [bowlList(bowls), worked('holds', { word: 'frying.term.bowlHolds' }, holds)], sum: most(countOf('bowls'), roundUp(divide(sumOf('bowls'), 'holds'))) }
    : { rule: 'fry.bowls', terms: [bowlList(bowls)], sum: countOf('bowls') });
};

/** Batter of all bowls, kg. */
export const batterKg = (bowls: readonly Bowl[]): Figure =>
  figure(bowls.reduce((sum, b) => sum + b.batterKg, 0), 'kg', () => ({ rule: 'fry.batter', terms: [bowlList(bowls)], sum: sumOf('bowls') }));

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
export function oilToBuy(event: Event, fill: Figure, uptake: Figure, changes: Figure | null): Figure {
  const drip = settle(event, 'oil.lossExtra');
  const fresh = changes === null ? [] : [worked('changes', { word: 'frying.term.changeFills' }, changes)];
  return figure(purchaseLitres(fill.value + (changes?.value ?? 0), uptake.value, drip.value), 'L', () => ({
    rule: 'fry.oilPurchase', terms: [worked('fill', { word: 'frying.term.fill' }, fill), ...fresh, worked('uptake', { word: 'frying.term.uptake' }, uptake), settledTerm('drip', drip)],
    sum: plus('fill', ...fresh.map((t) => t.key), times('uptake', plus(1, 'drip'))),
  }));
}
