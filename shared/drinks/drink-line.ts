import type { Brewing } from '../event';
import { settle } from '../household';
import { seriesAt } from '../measure';
import type { DishPlan } from '../menu';
import type { BrewPlace } from './brew-place';
import { placeRounds, type PlacedRound } from './brewing';
import { book } from './calendar';
import { cooled } from './rules';
import { filledC, serve, type Serving } from './serving';
import type { Vessel } from './vessels';

/** A filling with its rounds and how it was drunk. */
export interface Filling {
  readonly vessel: Vessel;
  readonly rounds: readonly PlacedRound[];
  readonly litres: number;
  readonly serving: Serving;
}

/** One drink being planned forward in time; `next` is the next minute somebody goes without. */
export interface DrinkLine {
  readonly dish: DishPlan;
  readonly brewing: Brewing;
  readonly vessels: readonly Vessel[];
  readonly last: number;
  /** Litres still wanted in each minute from the first of the demand. */
  readonly wanted: number[];
  readonly fillings: Filling[];
  next: number | null;
  unmetLitres: number;
}

/** A drink at its first minute of demand. Litres are cups × cup size. */
export function drinkLine(dish: DishPlan, brewing: Brewing, vessels: readonly Vessel[]): DrinkLine {
  const wanted = dish.demand.values.map((cups) => (cups * brewing.cupMl) / 1000);
  return { dish, brewing, vessels, last: dish.lastServed ?? 0, wanted, fillings: [], next: dish.firstServed, unmetLitres: 0 };
}

const wantedAt = (line: DrinkLine, minute: number): number => seriesAt({ fromMinute: line.dish.demand.fromMinute, values: line.wanted }, minute);

/** Brews, fills and serves the next filling of a drink, or gives up the minute nobody can be served in. Advances `next`. */
export function nextFilling(place: BrewPlace, line: DrinkLine): void {
  const from = line.next;
  const vessel = line.vessels[line.fillings.length % Math.max(1, line.vessels.length)];
  if (from === null) return;
  const filling = vessel === undefined ? null : fill(place, line, vessel, from);
  if (filling === null || filling.serving.served <= 1e-9) {
    drop(line, from);
    return;
  }
  line.fillings.push(filling);
  if (vessel?.pot !== null && vessel !== undefined) book(place.calendar, `pot ${vessel.pot}`, filling.serving.at, Math.max(filling.serving.until, filling.serving.at + 1));
  settleServed(line, filling.serving.served);
}

function fill(place: BrewPlace, line: DrinkLine, vessel: Vessel, from: number): Filling | null {
  const { event } = place;
  const ahead = line.fillings.length === 0 ? Math.round(settle(event, 'brew.fillLead').value) : 0;
  const at = from - ahead;
  const litres = Math.min(vessel.litres, Math.ceil(ahead10(line, from, at + line.brewing.goodForMinutes) - 1e-9) / 10);
  const rounds = placeRounds(place, line.dish, line.brewing, litres, at);
  const brewed = Math.min(vessel.litres, rounds.reduce((sum, r) => sum + r.size.litres, 0));
  if (brewed <= 0) return null;
  const oldest = Math.min(...rounds.map((r) => r.readyAt));
  const celsius = filledC(event, line.brewing, vessel, brewed, potC(place, line, rounds));
  const serving = serve(line.brewing, vessel, { at, litres: brewed, celsius, oldAt: oldest + line.brewing.goodForMinutes }, (t) => wantedAt(line, t), line.last);
  return { vessel, rounds, litres: brewed, serving };
}

/** Tenths of a litre wanted from a minute until another. */
function ahead10(line: DrinkLine, from: number, until: number): number {
  let sum = 0;
  for (let t = from; t <= line.last && t < until; t += 1) sum += wantedAt(line, t);
  return sum * 10;
}

/** Temperature in the pot when poured: strained hot and cooled while it waited; water from the tap; other cold drinks from the cold. */
function potC({ event }: BrewPlace, line: DrinkLine, rounds: readonly PlacedRound[]): number {
  if (!line.brewing.hot) return line.brewing.method === 'water' ? event.kitchen.waterC : settle(event, 'drink.coldC').value;
  const total = rounds.reduce((sum, r) => sum + r.size.litres, 0);
  const strained = settle(event, 'brew.strainedC').value;
  const open = settle(event, 'cool.vesselOpen').value;
  return rounds.reduce((sum, r) => sum + (cooled(strained, event.kitchen.roomC, open, (r.pouredAt - r.readyAt) / 60) * r.size.litres) / total, 0);
}

/** Takes served litres off the demand, first minute first. */
function settleServed(line: DrinkLine, litres: number): void {
  let left = litres;
  for (let t = line.next ?? 0; t <= line.last; t += 1) {
    const at = t - line.dish.demand.fromMinute;
    const take = Math.min(left, line.wanted[at] ?? 0);
    if ((line.wanted[at] ?? 0) > 0) line.wanted[at] = (line.wanted[at] ?? 0) - take < 1e-9 ? 0 : (line.wanted[at] ?? 0) - take;
    left -= take;
    if ((line.wanted[at] ?? 0) > 0) {
      line.next = t;
      return;
    }
  }
  line.next = null;
}

/** Nobody can be served in this minute: its litres are unmet. */
function drop(line: DrinkLine, minute: number): void {
  const at = minute - line.dish.demand.fromMinute;
  line.unmetLitres += line.wanted[at] ?? 0;
  line.wanted[at] = 0;
  settleServed(line, 0);
}
