import type { Burner, Event, Frying, Pan } from '../event';
import { planKitchen } from '../kitchen';
import type { Message } from '../words';
import type { DishPart } from './dish-parts';
import { sizeLoad } from './load';

const half = 0.5;
const smallerShare = 0.8;
const widerMm = 40;
const strongerW = 1000;

/** A change to the pan or its burner, and how it is said with its gain. */
interface Change {
  readonly pan?: (p: Pan) => Pan;
  readonly burner?: (b: Burner) => Burner;
  readonly frying?: (f: Frying) => Frying;
  readonly say: (pieces: number, now: number) => Message;
}

/** So many watts more, of which as large a share reaches the pan; a burner measured with water boils it the sooner. */
export function strongerBy(b: Burner, watts: number): Burner {
  const ratedW = b.ratedW + watts;
  return { ...b, ratedW, ...(b.boilTest === undefined ? {} : { boilTest: { ...b.boilTest, minutes: (b.boilTest.minutes * b.ratedW) / ratedW } }) };
}
const stronger: Change = { burner: (b) => strongerBy(b, strongerW), say: (pieces, now) => ({ id: 'frying.remedy.burner', params: { watts: strongerW, pieces, now } }) };
const moreOil: Change = { pan: (p) => ({ ...p, oilLitres: p.oilLitres + half }), say: (pieces, now) => ({ id: 'frying.remedy.moreOil', params: { litres: half, pieces, now } }) };
const lessOil: Change = { pan: (p) => ({ ...p, oilLitres: Math.max(0.2, p.oilLitres - half) }), say: (pieces, now) => ({ id: 'frying.remedy.lessOil', params: { litres: half, pieces, now } }) };
const wider: Change = {
  pan: (p) => ({ ...p, ...(p.rimMm === undefined ? {} : { rimMm: p.rimMm + widerMm }), ...(p.widthMm === undefined ? {} : { widthMm: p.widthMm + widerMm }) }),
  say: (pieces, now) => ({ id: 'frying.remedy.wider', params: { mm: widerMm, pieces, now } }),
};
/** A fifth less batter in each piece, and the minutes that a smaller piece needs (time follows the square of the size: mass to the power 2/3). */
const smaller: Change = {
  frying: (f) => ({ ...f, pieceBatterG: Math.max(2, Math.round(f.pieceBatterG * smallerShare)), fryMinutes: f.fryMinutes * smallerShare ** (2 / 3) }),
  say: (pieces, now) => ({ id: 'frying.remedy.smaller', params: { percent: Math.round((1 - smallerShare) * 100), pieces, now } }),
};
const all: readonly Change[] = [moreOil, lessOil, stronger, wider, smaller];

/** What would let more pieces in, each with its gain, the easiest first, each worked out through pan, burner and load again; last another pan, with what is fried in an hour. */
export function loadRemedies(event: Event, part: DishPart): Message[] {
  const now = part.load.plan.pieces.value;
  const more = all.map((change) => ({ change, pieces: piecesWith(event, part, change) })).filter(({ pieces }) => pieces > now)
    .map(({ change, pieces }) => change.say(pieces, now));
  return [...more, secondPan(event, part)];
}

/** One more pan like these on a burner of its own: what all of them fry in an hour then, and now. Always helps, but wants a pan, a burner and eyes on it. */
function secondPan(event: Event, { line, load }: DishPart): Message {
  const { state, frying } = load.inputs;
  const alone = line.sharing === 1 ? load : sizeLoad(event, state, frying, '', 1);
  const now = load.plan.kgPerHour.value * line.pans.length;
  return { id: 'frying.remedy.secondPan', params: { kg: now + alone.plan.kgPerHour.value, now } };
}

function piecesWith(event: Event, part: DishPart, change: Change): number {
  const { pan, burner } = part.load.inputs.state;
  const changedPan = change.pan === undefined ? pan : change.pan(pan);
  const changedBurner = change.burner === undefined ? burner.burner : change.burner(burner.burner);
  // Only this pan and its burner matter to the load; the rest of the kitchen stays out of the sum.
  const changed: Event = { ...event, kitchen: { ...event.kitchen, pans: [changedPan], burners: [changedBurner] } };
  const state = planKitchen(changed).pans[0];
  return state === undefined ? 0 : sizeLoad(changed, state, change.frying?.(part.load.inputs.frying) ?? part.load.inputs.frying, '', part.line.sharing).plan.pieces.value;
}
