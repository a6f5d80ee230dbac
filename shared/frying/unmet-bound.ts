import type { Event } from '../event';
import { computed, divide, figure, least, minus, most, plus, roundUp, sumOf, times, worked, type Figure, type Sum, type Term } from '../figure';
import { aloneShort, type DishPart } from './dish-parts';
import { portionMinutes, shortWindows, wholeShort, type PanTimeBound, type SharedDish, type ShortWindow } from './exact';
import type { FryLine } from './lines';
import type { DishSchedule } from './schedule';
import type { UnmetBound } from './types';

const total = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

/** A dish with all its portions, and its part on each line. */
interface Fried {
  readonly schedule: DishSchedule;
  readonly wanted: readonly number[];
  readonly onLine: readonly (DishPart | null)[];
}

/**
 * Who goes short of all fried dishes together, and how many would in any plan: the more of two proofs, each dish with its pans to itself, or the
 * stretches of time in which all dishes together want more than their pans can fry (`shortWindows`). Null when nobody goes short.
 */
export function unmetBound(event: Event, dishes: readonly DishSchedule[]): UnmetBound | null {
  const each = dishes.map((d) => total(d.served.unmet));
  if (total(each) === 0) return null;
  const lines = [...new Set(dishes.flatMap((d) => d.parts.map((p) => p.line)))];
  const fried = dishes.map((schedule): Fried => ({
    schedule, wanted: portionMinutes(schedule.dish.demand.values.map((n) => Math.max(0, Math.round(n))), schedule.dish.demand.fromMinute),
    onLine: lines.map((line) => schedule.parts.find((p) => p.line === line) ?? null),
  }));
  const unmet = figure(total(each), 'pieces', () => ({ rule: 'fry.unmet', terms: [computed('unmet', { word: 'frying.term.unmetEach' }, each, 'pieces', 'frying.method.schedule')], sum: sumOf('unmet') }));
  const alone = fried.map((f, i) => ((each[i] ?? 0) === 0 ? 0 : shortAlone(event, f)));
  const windows = shortWindows(fried.map(sharedDish), lines.map((l) => l.pans.length));
  const atLeast = total(alone) >= total(windows.map(wholeShort)) ? aloneFigure(fried, alone) : windowsFigure(fried, lines, windows);
  return {
    unmet, atLeast,
    gap: figure(unmet.value - atLeast.value, 'pieces', () => ({ rule: 'fry.unmetGap', terms: [worked('unmet', { word: 'frying.term.unmetAll' }, unmet), worked('least', { word: 'frying.term.unmetLeast' }, atLeast)], sum: minus('unmet', 'least') })),
  };
}

/** Exact for one line; of several unequal ones the stretches have to tell. */
function shortAlone(event: Event, { schedule, wanted }: Fried): number {
  const [part] = schedule.parts;
  if (part === undefined) return wanted.length;
  return schedule.parts.length === 1 ? aloneShort(event, schedule.frying, part, wanted) : 0;
}

const sharedDish = ({ schedule, wanted, onLine }: Fried): SharedDish => ({
  wanted, hold: Math.floor(schedule.frying.holdMinutes), fry: onLine.map((p) => p?.load.plan.fryMinutes ?? null),
  load: onLine.map((p) => p?.load.plan.pieces.value ?? null), cycle: onLine.map((p) => (p === null ? null : Math.max(p.load.plan.cycleMinutes.value, p.load.plan.fryMinutes))),
});

const aloneFigure = (fried: readonly Fried[], alone: readonly number[]): Figure => figure(total(alone), 'pieces', () => {
  const terms = fried.map(({ schedule }, i) => computed(`dish${i}`, { word: 'frying.term.aloneShort', params: { dish: schedule.dish.name } }, alone[i] ?? 0, 'pieces', 'frying.method.alone'));
  return { rule: 'fry.unmetAlone', terms, sum: plus(...terms.map((t) => t.key)) };
});

const windowsFigure = (fried: readonly Fried[], lines: readonly FryLine[], windows: readonly ShortWindow[]): Figure => figure(total(windows.map(wholeShort)), 'pieces', () => {
  const terms = windows.map((w, i) => worked(`stretch${i}`, { word: 'frying.term.shortFrom', params: { from: w.from, to: w.to } }, windowFigure(fried, lines, w)));
  return { rule: 'fry.unmetWindows', terms, sum: plus(...terms.map((t) => t.key)) };
});

function windowFigure(fried: readonly Fried[], lines: readonly FryLine[], w: ShortWindow): Figure {
  const { because } = w;
  return figure(wholeShort(w), 'pieces', () => 'batches' in because
    ? {
        rule: 'fry.windowBatches',
        terms: [computed('wanted', { word: 'frying.term.wantedEach' }, w.wanted, 'pieces', 'frying.method.demand'), computed('batches', { word: 'frying.term.bestBatches' }, because.batches, 'pieces', 'frying.method.mostBatches')],
        sum: roundUp(minus(sumOf('wanted'), sumOf('batches'))),
      }
    : { rule: 'fry.windowMinutes', ...panTimeSum(fried, lines, w, because) });
}

/** Portions of a dish in a minute of a pan of one line. */
const rate = (dish: number, line: number): Sum => divide(`load${dish}at${line}`, `cycle${dish}at${line}`);

/** The prices made again from loads and cycles, so that a wrong one would show. */
function panTimeSum(fried: readonly Fried[], lines: readonly FryLine[], w: ShortWindow, because: PanTimeBound): { readonly terms: Term[]; readonly sum: Sum } {
  const used = lines.flatMap((line, l) => ((because.gives[l] ?? 0) > 0 ? [{ line, l }] : []));
  const rated = (i: number, l: number): boolean => fried[i]?.onLine[l] !== null;
  const price = (l: number): Sum => (rated(because.pivot, l) ? rate(because.pivot, l) : most(...w.dishes.filter((i) => rated(i, l)).map((i) => rate(i, l))));
  const terms: Term[] = [
    ...used.map(({ line, l }) => computed(`minutes${l}`, { word: 'frying.term.panMinutes', params: { station: line.station.name } }, because.gives[l] ?? 0, 'min', 'frying.method.panTime')),
    ...w.dishes.map((i, k) => computed(`wanted${i}`, { word: 'frying.term.wantedThen', params: { dish: fried[i]?.schedule.dish.name ?? '' } }, w.wanted[k] ?? 0, 'pieces', 'frying.method.demand')),
    ...w.dishes.flatMap((i) => used.flatMap(({ line, l }): Term[] => {
      const part = fried[i]?.onLine[l] ?? null;
      const params = { dish: fried[i]?.schedule.dish.name ?? '', station: line.station.name };
      return part === null ? [] : [worked(`load${i}at${l}`, { word: 'frying.term.loadOf', params }, part.load.plan.pieces), worked(`cycle${i}at${l}`, { word: 'frying.term.cycleOf', params }, part.load.plan.cycleMinutes)];
    })),
  ];
  const spared = w.dishes.flatMap((i) => {
    const needs = used.filter(({ l }) => rated(i, l)).map(({ l }) => divide(price(l), rate(i, l)));
    return needs.length === 0 ? [] : [times(`wanted${i}`, most(0, minus(1, least(...needs))))];
  });
  return { terms, sum: roundUp(minus(plus(...w.dishes.map((i) => `wanted${i}`)), plus(...used.map(({ l }) => times(`minutes${l}`, price(l))), ...spared))) };
}
