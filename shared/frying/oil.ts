import type { Event } from '../event';
import { divide, entered, figure, just, logarithm, minus, plus, sumOf, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { depthOf, fillShareOf, freeRimOf, heatUpSeconds, meanCp } from '../kitchen';
import type { DishSchedule } from './schedule';
import { loadedLitres } from './load-limits';
import type { SizedLoad } from './load';
import { uptakeLitres } from './rules';
import type { Batch, OilPlan } from './types';

interface PanLoad {
  readonly load: SizedLoad;
  readonly pieces: number;
}

/** Oil of every pan that fries something. */
export function oilPlans(event: Event, batches: readonly Batch[], dishes: readonly DishSchedule[]): OilPlan[] {
  return event.kitchen.pans.flatMap((pan, at) => {
    const mine = batches.filter((b) => b.pan === pan.id);
    const loads = mine.flatMap((b) => loadOf(dishes, b));
    const heaviest = loads.reduce<PanLoad | null>((best, l) => (best === null || weight(l) > weight(best) ? l : best), null);
    if (heaviest === null) return [];
    const fill = figure(pan.oilLitres, 'L', () => ({ rule: 'fry.fill', terms: [entered('litres', { word: 'kitchen.term.coldOil' }, pan.oilLitres, 'L', `kitchen.pans[${at}].oilLitres`)], sum: just('litres') }));
    const loaded = loadedOil(heaviest);
    const shape = heaviest.load.inputs.shape;
    return [{
      pan: pan.id, fillLitres: fill, uptakeLitres: uptakeOf(event, mine, dishes), heatUpMinutes: heatUp(event, heaviest.load), topUps: topUps(event, pan.oilLitres, mine, dishes),
      loadedFreeRimMm: freeRimOf(shape, depthOf(shape, loaded)), loadedFillShare: fillShareOf(loaded, heaviest.load.inputs.state.fullLitres),
    }];
  });
}

const weight = (l: PanLoad): number => l.pieces * l.load.inputs.pieceKg.value;

function loadOf(dishes: readonly DishSchedule[], b: Batch): PanLoad[] {
  const part = dishes.find((d) => d.dish.id === b.dish)?.parts.find((p) => p.line.pans.some((s) => s.pan.id === b.pan));
  return part === undefined ? [] : [{ load: part.load, pieces: b.pieces }];
}

function loadedOil({ load, pieces }: PanLoad): Figure {
  const i = load.inputs;
  return figure(loadedLitres(i, pieces), 'L', () => ({
    rule: 'fry.loadedOil',
    terms: [worked('oil', { word: 'kitchen.term.oil' }, i.state.hotOilLitres), { key: 'pieces', label: { word: 'frying.term.pieces' }, value: pieces, unit: 'pieces', origin: { kind: 'definition' } },
      worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), worked('density', { word: 'kitchen.term.hotDensity' }, i.oilDensity)],
    sum: plus('oil', divide(times('pieces', 'mass', 1000), 'density')),
  }));
}

const batchUptake = (event: Event, b: Batch, dishes: readonly DishSchedule[]): number => {
  const frying = dishes.find((d) => d.dish.id === b.dish)?.frying;
  return frying === undefined ? 0 : uptakeLitres((b.pieces * frying.pieceBatterG) / 1000, frying.oilUptakeKgPerKg, settle(event, 'oil.rho20').value / 1000);
};

function uptakeOf(event: Event, mine: readonly Batch[], dishes: readonly DishSchedule[]): Figure {
  const rho = settle(event, 'oil.rho20');
  const kg = mine.map((b) => batchUptake(event, b, dishes) * (rho.value / 1000));
  const taken: Term = { key: 'taken', label: { word: 'frying.term.taken' }, value: kg, unit: 'kg', origin: { kind: 'definition' } };
  return figure((kg.reduce((a, b) => a + b, 0) * 1000) / rho.value, 'L', () => ({ rule: 'fry.uptake', terms: [taken, settledTerm('rho', rho)], sum: divide(times(sumOf('taken'), 1000), 'rho') }));
}

function topUps(event: Event, fill: number, mine: readonly Batch[], dishes: readonly DishSchedule[]): { afterBatch: number; litres: number }[] {
  const step = settle(event, 'fry.topUpStep').value * fill;
  const out: { afterBatch: number; litres: number }[] = [];
  let used = 0;
  mine.forEach((b, i) => {
    used += batchUptake(event, b, dishes);
    // Nothing follows the last batch, so nothing is topped up for it.
    if (used >= step && i < mine.length - 1) {
      out.push({ afterBatch: b.number, litres: used });
      used = 0;
    }
  });
  return out;
}

/** Minutes from cold oil to frying heat, with the loss to the room. */
function heatUp(event: Event, load: SizedLoad): Figure {
  const [a, b, cold, loss, metal] = [settle(event, 'oil.cp.a'), settle(event, 'oil.cp.b'), settle(event, 'oil.coldC'), settle(event, 'loss.UA'), settle(event, `${load.inputs.state.pan.material}.cp`)];
  const i = load.inputs;
  const target = i.frying.targetC;
  const room = event.kitchen.roomC;
  const net = i.netKw.value;
  const power = net + (loss.value * (target - room)) / 1000;
  const capacity = i.oilKg.value * meanCp(a.value, b.value, cold.value, target) + i.state.pan.massKg * metal.value;
  const value = heatUpSeconds({ heatCapacity: capacity, power, loss: loss.value / 1000, from: cold.value, to: target, room }) / 60;
  const perKw = divide('loss', 1000);
  const heat = plus(times('oil', plus('a', times('b', divide(plus('cold', 'target'), 2)))), times('pan', 'metal'));
  return figure(value, 'min', () => ({
    rule: 'fry.heatUp',
    terms: [worked('oil', { word: 'frying.term.oilKg' }, i.oilKg), settledTerm('a', a), settledTerm('b', b), settledTerm('cold', cold), settledTerm('metal', metal), settledTerm('loss', loss),
      worked('net', { word: 'frying.term.net' }, i.netKw), { key: 'pan', label: { word: 'frying.term.panKg' }, value: i.state.pan.massKg, unit: 'kg', origin: { kind: 'entered', path: `kitchen.pans.${i.state.pan.id}.massKg` } },
      { key: 'target', label: { word: 'frying.term.targetC' }, value: target, unit: 'degC', origin: i.fryTerm.origin ?? { kind: 'definition' } }, entered('room', { word: 'frying.term.room' }, room, 'degC', 'kitchen.roomC')],
    sum: divide(times(divide(heat, perKw), logarithm(divide(plus('net', times(perKw, minus('target', 'cold'))), 'net'))), 60),
  }));
}
