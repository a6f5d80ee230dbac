import type { Event, Frying, Pan } from '../event';
import { countOf, divide, entered, figure, minus, most, plus, power, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm, type Settled } from '../household';
import { oilDensityAt, panShape, type PanShape, type PanState } from '../kitchen';
import { heatOfBatter } from './batter-heat';
import { pieceDiameter } from './rules';

/** Everything the load of one dish in one pan depends on, as figures with their workings. Seconds, kW, kg, mm, kJ, degrees. */
export interface LoadInputs {
  readonly shape: PanShape;
  readonly state: PanState;
  readonly frying: Frying;
  /** Batter of one piece, kg. */
  readonly pieceKg: Figure;
  /** Across a fried piece, mm. */
  readonly pieceMm: Figure;
  readonly surfaceMm: Figure;
  /** Burner into the pan less losses to the room, kW. */
  readonly netKw: Figure;
  /** Heat into a kilogram of batter, kJ. */
  readonly heat: Figure;
  /** Oil and pan, kJ per degree. */
  readonly capacity: Figure;
  readonly oilKg: Figure;
  readonly oilDensity: Figure;
  /** Fry time and handling, s. */
  readonly turnSeconds: Figure;
  readonly fryTerm: Term;
  readonly allowedDip: Settled;
  readonly tau: Settled;
  readonly coverage: Settled;
  readonly gap: Settled;
  readonly leastRatio: Settled;
  readonly rimMin: Settled;
  readonly fillMax: Settled;
}

const metal: Readonly<Record<Pan['material'], string>> = { steel: 'steel.cp', iron: 'iron.cp', aluminium: 'aluminium.cp', brass: 'brass.cp' };

/** Gathers the inputs. `sharing` = pans heated by the same burner at once; `recipe` names the source of the dish's frying data. */
export function loadInputs(event: Event, state: PanState, frying: Frying, recipe: string, sharing: number): LoadInputs {
  const s = (id: string): Settled => settle(event, id);
  const at = Math.max(0, event.kitchen.pans.findIndex((p) => p.id === state.pan.id));
  const of = (key: string, word: string, value: number, unit: string): Term => ({ key, label: { word }, value, unit, origin: { kind: 'recipe', recipe } });
  const mass = of('grams', 'frying.term.pieceGrams', frying.pieceBatterG, 'g');
  const pieceKg = figure(frying.pieceBatterG / 1000, 'kg', () => ({ rule: 'fry.pieceMass', terms: [mass], sum: divide('grams', 1000) }));
  const target = of('target', 'frying.term.targetC', frying.targetC, 'degC');
  const fryTerm = of('fryTime', 'frying.term.fryMinutes', frying.fryMinutes, 'min');
  const oilKg = massOfOil(event, state, at);
  return {
    shape: panShape(event, state.pan, at), state, frying, pieceKg, oilKg, fryTerm,
    pieceMm: pieceFigure(pieceKg, s('batter.rho'), s('piece.aspect'), s('piece.expansion')),
    surfaceMm: state.surfaceDiameterMm,
    netKw: netFigure(event, state, target, sharing, s('loss.UA')),
    heat: heatOfBatter(event, frying, of),
    capacity: capacityFigure(oilKg, state.pan, at, s('oil.cp.hot'), s(metal[state.pan.material])),
    oilDensity: oilDensityAt(event, { ...target, value: frying.targetC }),
    turnSeconds: figure((frying.fryMinutes + frying.handlingMinutes) * 60, 's', () => ({
      rule: 'fry.turn', terms: [fryTerm, of('handling', 'frying.term.handlingMinutes', frying.handlingMinutes, 'min')], sum: times(plus('fryTime', 'handling'), 60),
    })),
    allowedDip: s('oil.dropAllowed'), tau: s('fry.tau'), coverage: s('pan.coverage'), gap: s('pan.pieceGap'), leastRatio: s('oil.foodRatio.min'),
    rimMin: s('pan.freeboard.min'), fillMax: s('pan.loadedFill.max'),
  };
}

function massOfOil(event: Event, state: PanState, at: number): Figure {
  const rho = settle(event, 'oil.rho20');
  return figure((state.pan.oilLitres * rho.value) / 1000, 'kg', () => ({
    rule: 'fry.oilMass', terms: [entered('litres', { word: 'kitchen.term.coldOil' }, state.pan.oilLitres, 'L', `kitchen.pans[${at}].oilLitres`), settledTerm('rho', rho)],
    sum: divide(times('litres', 'rho'), 1000),
  }));
}

function pieceFigure(pieceKg: Figure, rho: Settled, aspect: Settled, expansion: Settled): Figure {
  return figure(pieceDiameter(pieceKg.value * expansion.value, rho.value, aspect.value) * 1000, 'mm', () => ({
    rule: 'piece.diameter', terms: [worked('mass', { word: 'frying.term.pieceKg' }, pieceKg), settledTerm('rho', rho), settledTerm('aspect', aspect), settledTerm('expansion', expansion)],
    sum: times(1000, power(divide(times(6, 'mass', 'expansion'), times('rho', Math.PI, 'aspect')), 1 / 3)),
  }));
}

function netFigure(event: Event, state: PanState, target: Term, sharing: number, loss: Settled): Figure {
  const value = state.burner.usefulW.value / sharing / 1000 - (loss.value * (Number(target.value) - event.kitchen.roomC)) / 1000;
  return figure(value, 'kW', () => ({
    rule: 'fry.netPower',
    terms: [worked('useful', { word: 'frying.term.useful' }, state.burner.usefulW), worked('sharing', { word: 'frying.term.sharing' }, sharingFigure(event, state, sharing)),
      settledTerm('loss', loss), target, entered('room', { word: 'frying.term.room' }, event.kitchen.roomC, 'degC', 'kitchen.roomC')],
    sum: divide(minus(divide('useful', 'sharing'), times('loss', minus('target', 'room'))), 1000),
  }));
}

/** Pans that fry on the burner of this one: their oil, counted. */
function sharingFigure(event: Event, state: PanState, sharing: number): Figure {
  const named = new Set(event.kitchen.stations.flatMap((st) => st.pans));
  const pans = event.kitchen.pans.flatMap((pan, at) => (pan.burner === state.pan.burner && named.has(pan.id) ? [{ at, litres: pan.oilLitres }] : []));
  const list: Term = {
    key: 'pans', label: { word: 'frying.term.pansOnBurner' }, value: pans.map((p) => p.litres), unit: 'L', origin: { kind: 'entered', path: pans.map((p) => `kitchen.pans[${p.at}].oilLitres`).join(', ') },
  };
  return figure(sharing, '', () => ({ rule: 'fry.sharing', terms: [list], sum: most(1, countOf('pans')) }));
}

function capacityFigure(oilKg: Figure, pan: Pan, at: number, cp: Settled, metalCp: Settled): Figure {
  return figure(oilKg.value * cp.value + pan.massKg * metalCp.value, 'kJ/K', () => ({
    rule: 'fry.heatCapacity',
    terms: [worked('oil', { word: 'frying.term.oilKg' }, oilKg), settledTerm('cp', cp), entered('pan', { word: 'frying.term.panKg' }, pan.massKg, 'kg', `kitchen.pans[${at}].massKg`), settledTerm('metal', metalCp)],
    sum: plus(times('oil', 'cp'), times('pan', 'metal')),
  }));
}
