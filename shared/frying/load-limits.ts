import { countOf, divide, figure, least, power, roundDown, times, worked, type Figure, type Term } from '../figure';
import { settledTerm } from '../household';
import { vesselDepth, vesselVolume } from '../kitchen';
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
const listed = (key: string, word: string, unit: string, count: number, value: (n: number) => number): Term =>
  ({ key, label: { word }, value: Array.from({ length: count }, (_, i) => value(i + 1)), unit, origin: { kind: 'definition' } });

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
    terms: [worked('surface', { word: 'frying.term.surface' }, i.surfaceMm), worked('piece', { word: 'frying.term.pieceMm' }, i.pieceMm), settledTerm('coverage', i.coverage), settledTerm('gap', i.gap),
      listed('packed', 'frying.term.packed', '', tight, packingRatio)],
    sum: least(roundDown(times('coverage', power(divide('surface', 'piece'), 2))), countOf('packed')),
  }));
}

function dipLimit(i: LoadInputs): Figure {
  const n = i.netKw.value <= 0 ? 0 : largest((k) => dipOf(i, k) <= i.allowedDip.value);
  return figure(n, 'pieces', () => ({
    rule: 'fry.dipLimit',
    terms: [listed('falls', 'frying.term.falls', 'K', n, (k) => dipOf(i, k)), settledTerm('allowed', i.allowedDip), worked('power', { word: 'frying.term.net' }, i.netKw),
      worked('heat', { word: 'frying.term.heat' }, i.heat), worked('capacity', { word: 'frying.term.capacity' }, i.capacity), worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), settledTerm('tau', i.tau)],
    sum: countOf('falls'),
  }));
}

function heatLimit(i: LoadInputs): Figure {
  const n = Math.max(0, Math.floor((i.netKw.value * i.turnSeconds.value) / (i.pieceKg.value * i.heat.value) + 1e-9));
  return figure(n, 'pieces', () => ({
    rule: 'fry.heatLimit',
    terms: [worked('power', { word: 'frying.term.net' }, i.netKw), worked('turn', { word: 'frying.term.turn' }, i.turnSeconds), worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), worked('heat', { word: 'frying.term.heat' }, i.heat)],
    sum: i.netKw.value < 0 ? times(0, 'power') : roundDown(divide(times('power', 'turn'), times('mass', 'heat'))),
  }));
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
  return figure(n, 'pieces', () => ({
    rule: 'fry.rimLimit',
    terms: [listed('rims', 'frying.term.rims', 'mm', n, (k) => loadedRim(i, k) * 1000), settledTerm('least', i.rimMin), settledTerm('share', i.fillMax), worked('oil', { word: 'kitchen.term.oil' }, i.state.hotOilLitres)],
    sum: countOf('rims'),
  }));
}
