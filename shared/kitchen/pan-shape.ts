import type { Event, Pan } from '../event';
import { figure, just, entered, minus, divide, plus, power, squareRoot, times, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { flatWokVessel, roundVessel, straightVessel, type Vessel } from './rules';

/** A pan as geometry, with the terms its figures show. Lengths of the vessel in metres. */
export interface PanShape {
  readonly vessel: Vessel;
  /** Figures in millimetres (area in mm²): flat bottom's radius, centre of the curve, height of the curve, area inside the wall. */
  readonly bottom: Term;
  readonly centre: Figure;
  readonly curved: Figure;
  readonly wall: Figure;
  readonly depth: Term;
}

/** The shape of pan number `at` of the event's list. A rim nobody entered takes the reference value. */
export function panShape(event: Event, pan: Pan, at: number): PanShape {
  const path = `kitchen.pans[${at}]`;
  const assumed = settle(event, 'pan.rim.assumed');
  const across = pan.rimMm ?? pan.widthMm ?? pan.lengthMm ?? assumed.value * 1000;
  const rim: Term = pan.rimMm === undefined
    ? { ...settledTerm('rim', assumed), value: across, unit: 'mm' }
    : entered('rim', { word: 'kitchen.term.rim' }, across, 'mm', `${path}.rimMm`);
  const depth = entered('depth', { word: 'kitchen.term.depth' }, pan.depthMm, 'mm', `${path}.depthMm`);
  const flat = pan.shape === 'flatWok' ? Math.min(pan.bottomMm ?? across / 3, across) : 0;
  const bottom = entered('bottom', { word: 'kitchen.term.bottom' }, flat / 2, 'mm', `${path}.bottomMm`);
  const vessel = vesselOf(pan, across / 1000, flat / 1000);
  return {
    vessel, bottom, depth,
    centre: figure(mm(vessel.centre), 'mm', () => ({ rule: 'pan.curve', ...curveSum(vessel, rim, depth, bottom, pan.shape) })),
    curved: figure(mm(vessel.curvedHeight), 'mm', () => ({ rule: 'pan.curveHeight', ...curvedHeightSum(vessel, rim, depth, bottom, pan.shape) })),
    wall: figure(vessel.wallArea * 1e6, 'mm²', () => wallWorking(pan, rim, path)),
  };
}

const mm = (metres: number): number => metres * 1000;

function vesselOf(pan: Pan, across: number, flat: number): Vessel {
  const depth = pan.depthMm / 1000;
  if (pan.shape === 'round') return roundVessel(across, depth);
  if (pan.shape === 'flatWok') return flatWokVessel(across, flat, depth);
  if (pan.shape === 'straight') return straightVessel((Math.PI * across ** 2) / 4, depth);
  return straightVessel(((pan.lengthMm ?? across * 1000) * (pan.widthMm ?? across * 1000)) / 1e6, depth);
}

const isStraight = (shape: Pan['shape']): boolean => shape === 'straight' || shape === 'rectangular';
const half = divide('rim', 2);

function curveSum(v: Vessel, rim: Term, depth: Term, bottom: Term, shape: Pan['shape']) {
  if (isStraight(shape)) return { terms: [depth], sum: times('depth', 0) };
  // Deeper than half a sphere: the curve is the half sphere (or the slice up to its widest), the wall goes on straight.
  if (v.curvedHeight < v.depth) return { terms: [rim, bottom], sum: squareRoot(minus(power(half, 2), power('bottom', 2))) };
  return { terms: [rim, depth, bottom], sum: divide(minus(plus(power(half, 2), power('depth', 2)), power('bottom', 2)), times(2, 'depth')) };
}

function curvedHeightSum(v: Vessel, rim: Term, depth: Term, bottom: Term, shape: Pan['shape']) {
  if (isStraight(shape)) return { terms: [depth], sum: times('depth', 0) };
  if (v.curvedHeight < v.depth) return { terms: [rim, bottom], sum: squareRoot(minus(power(half, 2), power('bottom', 2))) };
  return { terms: [depth], sum: just('depth') };
}

function wallWorking(pan: Pan, rim: Term, path: string) {
  if (pan.shape !== 'rectangular') return { rule: 'pan.wall', terms: [rim], sum: times(Math.PI / 4, power('rim', 2)) };
  const side = (key: 'length' | 'width', value: number | undefined): Term =>
    entered(key, { word: key === 'length' ? 'kitchen.term.length' : 'kitchen.term.width' }, value ?? Number(rim.value), 'mm', `${path}.${key}Mm`);
  return { rule: 'pan.wallSides', terms: [side('length', pan.lengthMm), side('width', pan.widthMm)], sum: times('length', 'width') };
}
