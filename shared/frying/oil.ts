import type { Event } from '../event';
import { computed, divide, entered, figure, just, logarithm, minus, plus, sumOf, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { depthOf, fillShareOf, freeRimOf, heatUpSeconds, meanCp } from '../kitchen';
import type { DishSchedule } from './schedule';
import { loadedOil } from './load-limits';
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
    const { load, pieces } = heaviest;
    const loaded = loadedOil(load.inputs, computed('pieces', { word: 'frying.term.pieces' }, pieces, 'pieces', 'frying.method.schedule'), pieces);
    const { shape } = load.inputs;
    return [{
      pan: pan.id, fillLitres: fill, uptakeLitres: uptakeOf(event, mine, dishes), heatUpMinutes: heatUp(event, load), topUps: topUps(event, pan.oilLitres, mine, dishes),
      loadedFreeRimMm: freeRimOf(shape, depthOf(shape, loaded)), loadedFillShare: fillShareOf(loaded, load.inputs.state.fullLitres),
    }];
  });
}

const weight = (l: PanLoad): number => l.pieces * l.load.inputs.pieceKg.value;

function loadOf(dishes: readonly DishSchedule[], b: Batch): PanLoad[] {
  const part = dishes.find((d) => d.dish.id === b.dish)?.parts.find((p) => p.line.pans.some((s) => s.pan.id === b.pan));
  return part === undefined ? [] : [{ load: part.load, pieces: b.pieces }];
}

const batchUptake = (event: Event, b: Batch, dishes: readonly DishSchedule[]): number => {
  const frying = dishes.find((d) => d.dish.id === b.dish)?.frying;
  return frying === undefined ? 0 : uptakeLitres((b.pieces * frying.pieceBatterG) / 1000, frying.oilUptakeKgPerKg, settle(event, 'oil.rho20').value / 1000);
};

/** A number of a dish's recipe as an input. */
const ofRecipe = (key: string, word: string, value: number, unit: string, recipe: string, dish: string): Term => ({ key, label: { word, params: { dish } }, value, unit, origin: { kind: 'recipe', recipe } });

function uptakeOf(event: Event, mine: readonly Batch[], dishes: readonly DishSchedule[]): Figure {
  const rho = settle(event, 'oil.rho20');
  const litres = mine.reduce((sum, b) => sum + batchUptake(event, b, dishes), 0);
  return figure(litres, 'L', () => {
    const fried = dishes.flatMap(({ dish, frying }) => {
      const pieces = mine.filter((b) => b.dish === dish.id).map((b) => b.pieces);
      return pieces.length === 0 ? [] : [{ name: dish.name, recipe: dish.recipe.id, frying, pieces }];
    });
    const terms = fried.flatMap(({ name, recipe, frying, pieces }, i) => [
      computed(`pieces${i}`, { word: 'frying.term.batchPiecesOf', params: { dish: name } }, pieces, 'pieces', 'frying.method.schedule'),
      ofRecipe(`grams${i}`, 'frying.term.pieceGramsOf', frying.pieceBatterG, 'g', recipe, name), ofRecipe(`taken${i}`, 'frying.term.takenOf', frying.oilUptakeKgPerKg, 'kg/kg', recipe, name),
    ]);
    return { rule: 'fry.uptake', terms: [...terms, settledTerm('rho', rho)], sum: divide(plus(...fried.map((_, i) => times(sumOf(`pieces${i}`), `grams${i}`, `taken${i}`))), 'rho') };
  });
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
  const at = event.kitchen.pans.findIndex((p) => p.id === i.state.pan.id);
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
      worked('net', { word: 'frying.term.net' }, i.netKw), entered('pan', { word: 'frying.term.panKg' }, i.state.pan.massKg, 'kg', `kitchen.pans[${at}].massKg`),
      { key: 'target', label: { word: 'frying.term.targetC' }, value: target, unit: 'degC', origin: i.fryTerm.origin ?? { kind: 'definition' } }],
    sum: divide(times(divide(heat, perKw), logarithm(divide(plus('net', times(perKw, minus('target', 'cold'))), 'net'))), 60),
  }));
}
