import type { Event, Frying } from '../event';
import { divide, figure, least, most, roundUp, times, worked, type Figure } from '../figure';
import type { PanState } from '../kitchen';
import { loadInputs, type LoadInputs } from './load-inputs';
import { fallFigure, loadLimits } from './load-limits';
import { cycleSeconds, kgPerHour } from './rules';
import type { LoadLimit, LoadPlan } from './types';

/** A load with the inputs it came from. */
export interface SizedLoad {
  readonly plan: Omit<LoadPlan, 'station' | 'dish' | 'remedy' | 'remedies'>;
  readonly inputs: LoadInputs;
  /** The burner can keep the oil at its temperature at all. */
  readonly heats: boolean;
}

/** In this order the first of equal limits is named: what a cook can see first. */
const order: readonly LoadLimit[] = ['rim', 'space', 'heat', 'dip', 'oilRatio'];

/**
 * How many pieces of a dish go into a pan at once: the smallest of what fits, what cools the oil too far, what the burner keeps up with,
 * oil per food, and the rim; at least one. Put-in to put-in is the fry time and handling, or longer when even one piece asks for more heat.
 */
export function sizeLoad(event: Event, state: PanState, frying: Frying, recipe: string, sharing: number): SizedLoad {
  const inputs = loadInputs(event, state, frying, recipe, sharing);
  const limits = loadLimits(inputs);
  const limitedBy = order.reduce((best, id) => (limits[id].value < limits[best].value ? id : best));
  const pieces = figure(Math.max(1, limits[limitedBy].value), 'pieces', () => ({
    rule: 'fry.load', terms: order.map((id) => worked(id, { word: `frying.limit.${id}` }, limits[id])), sum: most(1, least(...order)),
  }));
  const cycle = cycleFigure(inputs, pieces);
  return {
    inputs, heats: inputs.netKw.value > 0,
    plan: {
      pan: state.pan.id, pieces, limitedBy, limits, fryMinutes: Math.max(1, Math.ceil(frying.fryMinutes - 1e-9)), recipeMinutes: frying.fryMinutes, cycleMinutes: cycle, dipC: dipFigure(inputs, pieces),
      kgPerHour: figure(kgPerHour(pieces.value * inputs.pieceKg.value, cycle.value * 60), 'kg/h', () => ({
        rule: 'fry.throughput', terms: [worked('pieces', { word: 'frying.term.pieces' }, pieces), worked('mass', { word: 'frying.term.pieceKg' }, inputs.pieceKg), worked('cycle', { word: 'frying.term.cycle' }, cycle)],
        sum: divide(times('pieces', 'mass', 60), 'cycle'),
      })),
    },
  };
}

/** Whole minutes from put-in to put-in, so that it can stand on a sheet. */
function cycleFigure(i: LoadInputs, pieces: Figure): Figure {
  if (i.netKw.value <= 0) return figure(Math.ceil(i.turnSeconds.value / 60 - 1e-9), 'min', () => ({ rule: 'fry.turnMinutes', terms: [worked('turn', { word: 'frying.term.turn' }, i.turnSeconds)], sum: roundUp(divide('turn', 60)) }));
  const seconds = cycleSeconds(i.turnSeconds.value, 0, pieces.value * i.pieceKg.value, i.heat.value, i.netKw.value);
  return figure(Math.max(1, Math.ceil(seconds / 60 - 1e-9)), 'min', () => ({
    rule: 'fry.cycle',
    terms: [worked('turn', { word: 'frying.term.turn' }, i.turnSeconds), worked('pieces', { word: 'frying.term.pieces' }, pieces), worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), worked('heat', { word: 'frying.term.heat' }, i.heat), worked('power', { word: 'frying.term.net' }, i.netKw)],
    sum: most(1, roundUp(divide(most('turn', divide(times('pieces', 'mass', 'heat'), 'power')), 60))),
  }));
}

function dipFigure(i: LoadInputs, pieces: Figure): Figure {
  if (i.netKw.value <= 0) {
    const fall = (pieces.value * i.pieceKg.value * i.heat.value) / i.capacity.value;
    return figure(fall, 'K', () => ({
      rule: 'fry.worstCaseDrop', terms: [worked('pieces', { word: 'frying.term.pieces' }, pieces), worked('mass', { word: 'frying.term.pieceKg' }, i.pieceKg), worked('heat', { word: 'frying.term.heat' }, i.heat), worked('capacity', { word: 'frying.term.capacity' }, i.capacity)],
      sum: divide(times('pieces', 'mass', 'heat'), 'capacity'),
    }));
  }
  return fallFigure(i, pieces.value, worked('pieces', { word: 'frying.term.pieces' }, pieces));
}
