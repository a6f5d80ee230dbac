import { computed, divide, exponential, figure, least, logarithm, minus, most as highest, plus, power, roundDown, times, worked, workingOf, type Figure, type Part, type Sum, type Term } from '../figure';
import { settledTerm } from '../household';
import { depthOf, fillShareOf, freeRimOf, vesselDepth, vesselVolume } from '../kitchen';
import { packingRatio } from '../reference';
import type { LoadInputs } from './load-inputs';
import { dip, mostCircles } from './rules';
import type { LoadLimit } from './types';

/** Looked at up to so many pieces; no household pan takes more. */
const most = 400;

/** Largest n up to `most` for which `fits` holds; `fits` is true up to some n and false beyond. */
function largest(fits: (n: number) => boolean): number {
  let low = 0;
  let high = most + 1;
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if (fits(mid)) low = mid;
    else high = mid;
  }
  return low;
}
/**
 * Whole pieces found by trying, shown so that a wrong number would show: with so many the limit is kept and with one more it is not. `room` is
 * the part of a step towards the next piece that is left: from 0 up to, not with, 1; rounded down it adds nothing.
 */
const found = (room: Part): Sum => least(most, highest(0, plus('tried', roundDown(room))));
const tried = (n: number): Term => computed('tried', { word: 'frying.term.tried' }, n, 'pieces', 'frying.method.tried');
const withPieces = (n: number): { readonly word: string; readonly params: { readonly n: number } } => ({ word: 'frying.term.withPieces', params: { n } });

/** Degrees the oil cools with n pieces. */
export const dipOf = (i: LoadInputs, n: number): number => dip({
  load: n * i.pieceKg.value, heat: i.heat.value, power: i.netKw.value, heatCapacity: i.capacity.value, tau: i.tau.value, fryTime: i.frying.fryMinutes * 60,
}).drop;

/** Hot litres with n pieces floating in the oil: they displace their own mass. */
export const loadedLitres = (i: LoadInputs, n: number): number => i.state.hotOilLitres.value + ((n * i.pieceKg.value) / i.oilDensity.value) * 1000;
const loadedRim = (i: LoadInputs, n: number): number => i.shape.vessel.depth - vesselDepth(i.shape.vessel, loadedLitres(i, n) / 1000);

/** Pieces that each limit alone would allow. */
export function loadLimits(i: LoadInputs): Readonly<Record<LoadLimit, Figure>> {
  return { space: space(i), dip: dipLimit(i), heat: heatLimit(i), oilRatio: ratioLimit(i), rim: rimLimit(i) };
}

function space(i: LoadInputs): Figure {
  const radii = i.surfaceMm.value / (i.pieceMm.value + i.gap.value * 1000);
  const tight = mostCircles(radii);
  const cover = Math.floor(i.coverage.value * (i.surfaceMm.value / i.pieceMm.value) ** 2 + 1e-9);
  return figure(Math.min(tight, cover), 'pieces', () => ({
    rule: 'fry.space',
    terms: [worked('surface', { word: 'frying.term.surface' }, i.surfaceMm), worked('piece', { word: 'frying.term.pieceMm' }, i.pieceMm), settledTerm('coverage', i.coverage),
      worked('tight', { word: 'frying.term.tight' }, tightFigure(i, tight, radii))],
    sum: least(roundDown(times('coverage', power(divide('surface', 'piece'), 2))), 'tight'),
  }));
}

/** Radii of the round that holds so many pieces side by side. */
const packing = (key: string, count: number): Term => computed(key, { word: 'frying.term.packed', params: { n: count } }, packingRatio(count), '', 'frying.method.packing');

/** Pieces that can lie side by side at all, by the table of circle packings. */
function tightFigure(i: LoadInputs, n: number, radii: number): Figure {
  const ratio = figure(radii, '', () => ({
    rule: 'fry.radii', terms: [worked('surface', { word: 'frying.term.surface' }, i.surfaceMm), worked('piece', { word: 'frying.term.pieceMm' }, i.pieceMm), settledTerm('gap', i.gap)],
    sum: divide('surface', plus('piece', times(1000, 'gap'))),
  }));
  return figure(n, 'pieces', () => ({
    rule: 'fry.tight', terms: [tried(n), worked('ratio', { word: 'frying.term.radii' }, ratio), packing('this', n), packing('next', n + 1)],
    sum: plus('tried', roundDown(divide(minus('ratio', 'this'), minus('next', 'this')))),
  }));
}

/** How far the oil cools with n pieces, K, with its working. Only for a burner that gives more than the pan loses. */
export function fallFigure(i: LoadInputs, n: number, pieces: Term): Figure {
  const seconds = times('fryTime', 60);
  const heat = times('pieces', 'mass', 'heat');
  const peak: Sum = divide(heat, times('tau', minus(1, exponential(times(-1, divide(seconds, 'tau'))))));
  const at = highest(0, least(seconds, times('tau', logarithm(divide(peak, 'power')))));
  return figure(dipOf(i, n), 'K', () => ({
    rule: 'fry.dip',
    terms: [{ ...pieces, key: 'pieces' }, worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), worked('heat', { word: 'frying.term.heat' }, i.heat), worked('power', { word: 'frying.term.net' }, i.netKw),
      worked('capacity', { word: 'frying.term.capacity' }, i.capacity), settledTerm('tau', i.tau), i.fryTerm],
    sum: divide(plus(times(peak, 'tau', minus(1, exponential(times(-1, divide(at, 'tau'))))), times(-1, 'power', at)), 'capacity'),
  }));
}

function dipLimit(i: LoadInputs): Figure {
  const n = i.netKw.value <= 0 ? 0 : largest((k) => dipOf(i, k) <= i.allowedDip.value);
  const power = worked('power', { word: 'frying.term.net' }, i.netKw);
  const fall = (key: string, count: number): Term => worked(key, withPieces(count), fallFigure(i, count, tried(count)));
  return figure(n, 'pieces', () => i.netKw.value <= 0
    ? { rule: 'fry.dipLimit', terms: [power], sum: times(0, 'power') }
    : {
        rule: 'fry.dipLimit', terms: [tried(n), fall('this', n), fall('next', n + 1), settledTerm('allowed', i.allowedDip)],
        sum: found(divide(minus('allowed', 'this'), minus('next', 'this'))),
      });
}

function heatLimit(i: LoadInputs): Figure {
  const n = Math.max(0, Math.floor((i.netKw.value * i.turnSeconds.value) / (i.pieceKg.value * i.heat.value) + 1e-9));
  return figure(n, 'pieces', () => workingOf(
    'fry.heatLimit',
    [worked('power', { word: 'frying.term.net' }, i.netKw), worked('turn', { word: 'frying.term.turn' }, i.turnSeconds), worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), worked('heat', { word: 'frying.term.heat' }, i.heat)],
    i.netKw.value < 0 ? times(0, 'power') : roundDown(divide(times('power', 'turn'), times('mass', 'heat'))),
  ));
}

function ratioLimit(i: LoadInputs): Figure {
  const n = Math.floor(i.oilKg.value / (i.leastRatio.value * i.pieceKg.value) + 1e-9);
  return figure(n, 'pieces', () => ({
    rule: 'fry.oilRatio', terms: [worked('oil', { word: 'frying.term.oilKg' }, i.oilKg), settledTerm('ratio', i.leastRatio), worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg)],
    sum: roundDown(divide('oil', times('ratio', 'mass'))),
  }));
}

function rimLimit(i: LoadInputs): Figure {
  const full = vesselVolume(i.shape.vessel, i.shape.vessel.depth) * 1000;
  const n = largest((k) => loadedRim(i, k) >= i.rimMin.value && loadedLitres(i, k) / full <= i.fillMax.value);
  const oil = (count: number): Figure => loadedOil(i, tried(count), count);
  const rim = (count: number): Figure => freeRimOf(i.shape, depthOf(i.shape, oil(count)));
  const filled = (count: number): Figure => fillShareOf(oil(count), i.state.fullLitres);
  return figure(n, 'pieces', () => ({
    rule: 'fry.rimLimit',
    terms: [tried(n), worked('rim', { word: 'frying.term.rimWith', params: { n } }, rim(n)), worked('rimNext', { word: 'frying.term.rimWith', params: { n: n + 1 } }, rim(n + 1)), settledTerm('least', i.rimMin),
      worked('share', { word: 'frying.term.shareWith', params: { n } }, filled(n)), worked('shareNext', { word: 'frying.term.shareWith', params: { n: n + 1 } }, filled(n + 1)), settledTerm('fill', i.fillMax)],
    sum: found(least(divide(minus('rim', times(1000, 'least')), minus('rim', 'rimNext')), divide(minus('fill', 'share'), minus('shareNext', 'share')))),
  }));
}

/** Hot litres with so many pieces in the oil, with the working. */
export function loadedOil(i: LoadInputs, pieces: Term, n: number): Figure {
  return figure(loadedLitres(i, n), 'L', () => ({
    rule: 'fry.loadedOil',
    terms: [worked('oil', { word: 'kitchen.term.oil' }, i.state.hotOilLitres), { ...pieces, key: 'pieces' }, worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), worked('density', { word: 'kitchen.term.hotDensity' }, i.oilDensity)],
    sum: plus('oil', divide(times('pieces', 'mass', 1000), 'density')),
  }));
}
