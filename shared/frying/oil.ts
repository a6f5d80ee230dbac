import type { Event } from '../event';
import { computed, divide, entered, figure, just, plus, sumOf, times, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { depthOf, fillShareOf, freeRimOf } from '../kitchen';
import type { DishSchedule } from './schedule';
import { heatUpFrom } from './heat';
import { loadedOil } from './load-limits';
import type { SizedLoad } from './load';
import { uptakeLitres } from './rules';
import type { Batch, OilPlan } from './types';

/** The heaviest load of a pan: it decides how the oil is heated and how high it stands. */
export interface PanLoad {
  readonly load: SizedLoad;
  readonly pieces: number;
}

/** Oil of every pan that fries something. */
export function oilPlans(event: Event, batches: readonly Batch[], dishes: readonly DishSchedule[]): OilPlan[] {
  return event.kitchen.pans.flatMap((pan, at) => {
    const mine = batches.filter((b) => b.pan === pan.id);
    const heaviest = heaviestLoad(mine, dishes);
    if (heaviest === null) return [];
    const fill = figure(pan.oilLitres, 'L', () => ({ rule: 'fry.fill', terms: [entered('litres', { word: 'kitchen.term.coldOil' }, pan.oilLitres, 'L', `kitchen.pans[${at}].oilLitres`)], sum: just('litres') }));
    const { load, pieces } = heaviest;
    const loaded = loadedOil(load.inputs, computed('pieces', { word: 'frying.term.pieces' }, pieces, 'pieces', 'frying.method.schedule'), pieces);
    const { shape } = load.inputs;
    return [{
      pan: pan.id, fillLitres: fill, uptakeLitres: uptakeOf(event, mine, dishes), heatUpMinutes: heatUpFrom(event, load, settledTerm('cold', settle(event, 'oil.coldC'))), topUps: topUps(event, pan.oilLitres, mine, dishes),
      loadedFreeRimMm: freeRimOf(shape, depthOf(shape, loaded)), loadedFillShare: fillShareOf(loaded, load.inputs.state.fullLitres),
    }];
  });
}

/** The heaviest load among batches of one pan; null when nothing is fried in it. Of one dish the batch with the most pieces weighs most. */
export function heaviestLoad(mine: readonly Batch[], dishes: readonly DishSchedule[]): PanLoad | null {
  const most = new Map<string, Batch>();
  for (const b of mine) if (b.pieces > (most.get(b.dish)?.pieces ?? 0)) most.set(b.dish, b);
  return [...most.values()].flatMap((b) => loadOf(dishes, b)).reduce<PanLoad | null>((best, l) => (best === null || weight(l) > weight(best) ? l : best), null);
}

const weight = (l: PanLoad): number => l.pieces * l.load.inputs.pieceKg.value;

function loadOf(dishes: readonly DishSchedule[], b: Batch): PanLoad[] {
  const part = dishes.find((d) => d.dish.id === b.dish)?.parts.find((p) => p.line.pans.some((s) => s.pan.id === b.pan));
  return part === undefined ? [] : [{ load: part.load, pieces: b.pieces }];
}

/** Litres of oil that leave a pan with one batch. */
export const batchUptake = (event: Event, b: Batch, dishes: readonly DishSchedule[]): number => {
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
