import type { BrewPlace } from './brew-place';
import { placeRounds, type PlacedRound } from './brewing';
import { bookHands, handsFree } from './calendar';
import { giveUpBefore, settleNewest, wantedAt, wantedBetween, type DrinkLine, type Filling } from './drink-line';
import { evenAgain, evenShare, fillLitres, freshC } from './fill-share';
import { cooled } from './rules';
import { liftLitres } from './rounds';
import { filledC, serve } from './serving';
import type { Vessel } from './vessels';

/** Brews, fills and serves the next filling of a drink, or moves on a minute when nothing can be brewed by then. Advances `next`. */
export function nextFilling(place: BrewPlace, line: DrinkLine): void {
  const due = line.next;
  if (due === null) return;
  const vessel = line.vessels[line.fillings.length % Math.max(1, line.vessels.length)];
  if (vessel === undefined || (place.pots.length === 0 && vessel.urn === null) || due > line.last) {
    finish(line);
    return;
  }
  for (const at of [freeHands(place, line, due), due]) {
    if (at === null) continue;
    const filling = fill(place, line, vessel, at);
    if (filling === null) continue;
    take(place, line, filling);
    return;
  }
  line.next = due + 1;
}

/** Nothing more will be filled: what the newest filling does not serve is given up. */
function finish(line: DrinkLine): void {
  if (oneVessel(line)) settleNewest(line, Number.POSITIVE_INFINITY);
  giveUpBefore(line, line.last + 1);
  line.next = null;
}

/** With one vessel the newest filling is ended by the next; of several, each is drunk to its end while the next stands ready. */
const oneVessel = (line: DrinkLine): boolean => line.vessels.length === 1;

/** Ends the filling before, pours this one, and finds when the next is wanted. */
function take(place: BrewPlace, line: DrinkLine, filling: Filling): void {
  const { at } = filling.serving;
  const sharedMinute = oneVessel(line) && line.fillings.length > 0;
  if (oneVessel(line)) settleNewest(line, at);
  giveUpBefore(line, at);
  // The filling before may have given the first cups of this minute.
  if (sharedMinute) filling.serving = serveFrom(line, filling);
  line.fillings.push(filling);
  const pot = filling.vessel.pot ?? filling.vessel.urn?.pot.id;
  if (pot !== undefined) place.calendar.book(`pot ${pot}`, at, Math.max(filling.serving.until, at + 1));
  const most = liftLitres(place.event, filling.rounds[0]?.pot.massKg ?? 0);
  // What an urn brews is carried nowhere.
  const trips = filling.vessel.urn === null ? Math.max(1, Math.ceil(filling.litres / most - 1e-9)) : 0;
  bookHands(place.calendar, place.hands, at - place.values.pourMinutes, at + place.values.tripMinutes * trips);
  const more = wantedBetween(line, at, line.last + 1) - filling.serving.served > 1e-9;
  if (!more || !oneVessel(line)) settleNewest(line, Number.POSITIVE_INFINITY);
  line.next = more ? dueAfter(place, line, filling) : null;
}

const serveFrom = (line: DrinkLine, { vessel, serving, litres, rounds }: Filling): Filling['serving'] =>
  serve(line.brewing, vessel, { at: serving.at, litres, celsius: serving.celsius[0] ?? 0, oldAt: oldAt(line, rounds) }, (t) => wantedAt(line, t), line.last);

const oldAt = (line: DrinkLine, rounds: readonly PlacedRound[]): number => rounds.reduce((oldest, r) => Math.min(oldest, r.readyAt), Number.POSITIVE_INFINITY) + line.brewing.goodForMinutes;

/**
 * Minute the next filling is wanted: some minutes before this one runs dry, cools or grows old, as soon as no more than two cups would be
 * left, and not before its vessel is free.
 */
function dueAfter(place: BrewPlace, line: DrinkLine, { serving }: Filling): number {
  const dry = serving.litres.findIndex((l) => l <= 1e-9);
  const end = dry < 0 ? serving.until : serving.at + dry;
  const twoCups = (2 * line.brewing.cupMl) / 1000;
  const free = oneVessel(line) ? 0 : line.fillings.at(-line.vessels.length)?.serving.until ?? 0;
  const soonest = Math.max(serving.at + 1, end - place.values.refillLead, free);
  for (let t = soonest; t < end; t += 1) {
    if ((serving.litres[t - serving.at] ?? 0) <= twoCups + 1e-9) return t;
  }
  return Math.max(soonest, end);
}

/** A minute near `due` in which nobody is filling another drink: the first filling earlier, a later one a little later or earlier. null when there is none. */
function freeHands({ calendar, values, hands }: BrewPlace, line: DrinkLine, due: number): number | null {
  const free = (at: number): boolean => handsFree(calendar, hands, at - values.pourMinutes, at + values.tripMinutes);
  const newest = line.fillings.at(-1)?.serving;
  const latest = newest === undefined ? due : newest.until;
  for (let at = due; at <= latest; at += 1) if (free(at)) return at;
  const earliest = newest === undefined ? due - values.firstAhead : Math.max(newest.at + 1, due - values.laterAhead);
  for (let at = due - 1; at >= earliest; at -= 1) if (free(at)) return at;
  return null;
}

/** Where a vessel's drink is brewed: on the stove, or in itself. An urn is as full as it may be at the size its maker gives it. */
const brewedIn = (place: BrewPlace, { urn }: Vessel): BrewPlace => (urn === null ? place : { ...place, pots: [urn.pot], burners: [urn.burner] });

/** A filling poured at `at` with the rounds it takes; null, and nothing booked, when nothing can be brewed by then or nobody would be served. */
function fill(place: BrewPlace, line: DrinkLine, vessel: Vessel, at: number): Filling | null {
  const { calendar, values } = place;
  line.share = line.share === null ? evenShare(place, line, vessel, at) : evenAgain(place, line, vessel, at, line.share);
  const { booked } = calendar;
  const wanted = fillLitres(place, line, vessel, at, line.share);
  const rounds = placeRounds(brewedIn(place, vessel), line.dish, line.brewing, wanted, at, wanted >= wantedBetween(line, at, line.last + 1) - 1e-9);
  const litres = Math.min(vessel.litres, rounds.reduce((sum, r) => sum + r.size.litres, 0));
  if (litres > 0) {
    const poured = { at, litres, celsius: filledC(values, line.brewing, vessel, litres, potC(place, line, rounds)), oldAt: oldAt(line, rounds) };
    const serving = serve(line.brewing, vessel, poured, (t) => wantedAt(line, t), line.last);
    if (serving.served > 1e-9) return { vessel, rounds, litres, serving };
  }
  calendar.backTo(booked);
  return null;
}

/** Temperature in the pots when poured: strained hot, and cooled while it waited. */
function potC(place: BrewPlace, line: DrinkLine, rounds: readonly PlacedRound[]): number {
  const fresh = freshC(place, line);
  if (!line.brewing.hot) return fresh;
  const total = rounds.reduce((sum, r) => sum + r.size.litres, 0);
  return rounds.reduce((sum, r) => sum + (cooled(fresh, place.event.kitchen.roomC, place.values.openCooling, (r.pouredAt - r.readyAt) / 60) * r.size.litres) / total, 0);
}
