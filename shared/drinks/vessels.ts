import type { CoolTest, Dispenser, Event, Pot } from '../event';
import { divide, entered, figure, just, logarithm, minus, power, times, type Figure } from '../figure';
import { settle, settledTerm, type Settled } from '../household';
import { boilingPoint, type BurnerState } from '../kitchen';
import { coolingRate, scaledRate } from './rules';

/** A brewing urn: pot and burner in one, of nobody else's use. */
export interface BrewingUrn {
  readonly pot: Pot;
  readonly burner: BurnerState;
}

/** Something a drink is served from: a dispenser, or the pot it stands in. */
export interface Vessel {
  readonly id: string;
  readonly name: string;
  readonly litres: number;
  readonly massKg: number;
  /** Pot it really is; null for a dispenser. */
  readonly pot: string | null;
  /** What it brews with when it makes the drink in itself: the urn as a pot and its element as a burner; null when it is only filled. */
  readonly urn: BrewingUrn | null;
  /** Keeps this temperature by itself, °C; null when it cools. */
  readonly heldC: number | null;
  /** Share of the difference to the room lost in an hour, when full. */
  readonly cooling: Figure;
  /** Fill share below which cooling speeds up no further. */
  readonly leastShare: number;
  readonly roomC: number;
}

/** The vessels of a drink: its dispensers, else a pot not yet taken for serving (the largest). Empty when there is neither. */
export function vesselsOf(event: Event, dish: string, potsTaken: ReadonlySet<string>): Vessel[] {
  const own = event.kitchen.dispensers.flatMap((d, at) => (d.dish === dish ? [dispenserVessel(event, d, at)] : []));
  if (own.length > 0) return own;
  const pot = event.kitchen.pots.filter((p) => !potsTaken.has(p.id)).reduce<(typeof event.kitchen.pots)[number] | null>((best, p) => (best === null || p.litres > best.litres ? p : best), null);
  if (pot === null) return [];
  const open = settle(event, 'cool.vesselOpen');
  return [{ id: `pot:${pot.id}`, name: pot.name, litres: pot.litres, massKg: pot.massKg, pot: pot.id, urn: null, heldC: null, cooling: openCooling(open), ...surroundings(event) }];
}

const surroundings = (event: Event): Pick<Vessel, 'leastShare' | 'roomC'> => ({ leastShare: settle(event, 'brew.leastShare').value, roomC: event.kitchen.roomC });

const openCooling = (open: Settled): Figure => figure(open.value, '', () => ({ rule: 'drinks.cooling', terms: [settledTerm('rate', open)], sum: just('rate') }));

/** Id under which an urn is booked as pot and burner. */
const urnId = (dispenser: string): string => `urn:${dispenser}`;

/** True for the pot that a brewing urn is. */
export const isUrn = (pot: string): boolean => pot.startsWith('urn:');

function urnOf(event: Event, d: Dispenser, at: number): BrewingUrn | null {
  if (d.brewsW === undefined) return null;
  const share = settle(event, 'eta.element');
  const [id, name, watts] = [urnId(d.id), d.name, d.brewsW];
  return {
    pot: { id, name, litres: d.litres, massKg: d.massKg },
    burner: {
      burner: { id, name, kind: 'electric', ratedW: watts, place: 'indoor', portable: false },
      usefulW: figure(watts * share.value, 'W', () => ({ rule: 'burner.useful', terms: [entered('rated', { word: 'kitchen.term.rated' }, watts, 'W', `kitchen.dispensers[${at}].brewsW`), settledTerm('share', share)], sum: times('rated', 'share') })),
    },
  };
}

function dispenserVessel(event: Event, d: Dispenser, at: number): Vessel {
  return {
    id: d.id, name: d.name, litres: d.litres, massKg: d.massKg, pot: null, urn: urnOf(event, d, at),
    // A heated urn cannot keep a drink hotter than it boils here.
    heldC: d.insulation === 'heated' || d.brewsW !== undefined ? Math.min(settle(event, 'hold.heatedC').value, boilingPoint(event).value) : null,
    cooling: coolingOf(event, d, at), ...surroundings(event),
  };
}

/** The rate that two readings of hot water left standing give. Rule `drinks.coolingTested`. */
function testedCooling(test: CoolTest, path: string): Figure {
  return figure(coolingRate(test.startC, test.endC, test.roomC, test.minutes / 60), '', () => ({
    rule: 'drinks.coolingTested',
    terms: [entered('first', { word: 'drinks.term.testFirst' }, test.startC, 'degC', `${path}.startC`), entered('later', { word: 'drinks.term.testLater' }, test.endC, 'degC', `${path}.endC`),
      entered('room', { word: 'drinks.term.testRoom' }, test.roomC, 'degC', `${path}.roomC`), entered('minutes', { word: 'drinks.term.testMinutes' }, test.minutes, 'min', `${path}.minutes`)],
    sum: divide(logarithm(divide(minus('first', 'room'), minus('later', 'room'))), divide('minutes', 60)),
  }));
}

function coolingOf(event: Event, d: Dispenser, at: number): Figure {
  if (d.coolTest !== undefined) return testedCooling(d.coolTest, `kitchen.dispensers[${at}].coolTest`);
  const measured = d.coolingPerHour;
  if (measured !== undefined) return figure(measured, '', () => ({ rule: 'drinks.cooling', terms: [entered('rate', { word: 'drinks.term.cooling' }, measured, '', `kitchen.dispensers[${at}].coolingPerHour`)], sum: just('rate') }));
  if (d.insulation === 'none' || d.insulation === 'heated' || d.brewsW !== undefined) return openCooling(settle(event, 'cool.vesselOpen'));
  const rate = settle(event, d.insulation === 'foam' ? 'disp.k' : 'flask.k');
  const size = settle(event, d.insulation === 'foam' ? 'disp.kLitres' : 'flask.kLitres');
  return figure(scaledRate(rate.value, size.value, d.litres), '', () => ({
    rule: 'newton.sizeScaling', terms: [settledTerm('rate', rate), settledTerm('size', size), entered('litres', { word: 'drinks.term.vesselLitres' }, d.litres, 'L', `kitchen.dispensers[${at}].litres`)],
    sum: times('rate', power(divide('litres', 'size'), -1 / 3)),
  }));
}
