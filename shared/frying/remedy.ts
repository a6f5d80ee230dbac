import type { Burner, Event, Pan } from '../event';
import { planKitchen } from '../kitchen';
import type { Message } from '../words';
import type { DishPart } from './dish-parts';
import { sizeLoad } from './load';
import type { LoadLimit } from './types';

const half = 0.5;
const widerMm = 40;
const strongerW = 1000;

/** A change to the pan or its burner, and how it is said with its gain. */
interface Change {
  readonly pan?: (p: Pan) => Pan;
  readonly burner?: (b: Burner) => Burner;
  readonly say: (pieces: number, now: number) => Message;
}

const stronger: Change = { burner: (b) => ({ ...b, ratedW: b.ratedW + strongerW }), say: (pieces, now) => ({ id: 'frying.remedy.burner', params: { watts: strongerW, pieces, now } }) };
const moreOil: Change = { pan: (p) => ({ ...p, oilLitres: p.oilLitres + half }), say: (pieces, now) => ({ id: 'frying.remedy.moreOil', params: { litres: half, pieces, now } }) };
const lessOil: Change = { pan: (p) => ({ ...p, oilLitres: Math.max(0.2, p.oilLitres - half) }), say: (pieces, now) => ({ id: 'frying.remedy.lessOil', params: { litres: half, pieces, now } }) };
const wider: Change = {
  pan: (p) => ({ ...p, ...(p.rimMm === undefined ? {} : { rimMm: p.rimMm + widerMm }), ...(p.widthMm === undefined ? {} : { widthMm: p.widthMm + widerMm }) }),
  say: (pieces, now) => ({ id: 'frying.remedy.wider', params: { mm: widerMm, pieces, now } }),
};
const changes: Readonly<Record<LoadLimit, readonly Change[]>> = { heat: [stronger], dip: [moreOil, stronger], oilRatio: [moreOil], rim: [lessOil], space: [wider] };

/** What would let more pieces in, with its gain: each change is worked out through the whole kitchen again. null when none of them helps. */
export function loadRemedy(event: Event, part: DishPart): Message | null {
  const now = part.load.plan.pieces.value;
  for (const change of changes[part.load.plan.limitedBy]) {
    const pieces = piecesWith(event, part, change);
    if (pieces > now) return change.say(pieces, now);
  }
  return null;
}

function piecesWith(event: Event, part: DishPart, change: Change): number {
  const { pan, burner } = part.load.inputs.state;
  const changedPan = change.pan === undefined ? pan : change.pan(pan);
  const changedBurner = change.burner === undefined ? burner.burner : change.burner(burner.burner);
  // Only this pan and its burner matter to the load; the rest of the kitchen stays out of the sum.
  const changed: Event = { ...event, kitchen: { ...event.kitchen, pans: [changedPan], burners: [changedBurner] } };
  const state = planKitchen(changed).pans[0];
  return state === undefined ? 0 : sizeLoad(changed, state, part.load.inputs.frying, '', part.line.sharing).plan.pieces.value;
}
