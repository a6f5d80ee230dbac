import type { Event } from '../event';
import { settle } from '../household';
import { minutes } from '../measure';
import type { BrewPlace } from './brew-place';
import { isMadeAhead } from './made-ahead';
import { roundFigures } from './round-figures';
import type { DrinkLine } from './drink-line';
import type { PlacedRound } from './brewing';
import { ingredientsOf } from './round-lines';
import { isUrn } from './vessels';
import { apartOf } from './sweetening';
import type { BrewRound, Fill } from './types';

/** All rounds, numbered in order of start, and the fills that take from them. */
export function numberRounds(place: BrewPlace, lines: readonly DrinkLine[]): { readonly rounds: readonly BrewRound[]; readonly fills: readonly Fill[] } {
  const placed = lines.flatMap((line) => line.fillings.flatMap((f) => f.rounds.map((round) => ({ line, round }))))
    .sort((a, b) => a.round.startAt - b.round.startAt || a.round.readyAt - b.round.readyAt);
  const numberOf = new Map(placed.map(({ round }, i) => [round, i + 1]));
  const rounds = placed.map(({ line, round }, i) => brewRound(place, line, round, i + 1));
  const fills = lines.flatMap((line) => line.fillings.flatMap((f, at) => {
    const before = line.fillings.slice(0, at).findLast((other) => other.vessel === f.vessel);
    let room = f.litres;
    return f.rounds.map((round, i): Fill => {
      const litres = Math.min(room, round.size.litres);
      room -= litres;
      return {
        dispenser: f.vessel.id, at: minutes(f.serving.at), litres, round: numberOf.get(round) ?? 0, leftLitres: i === 0 ? (before?.serving.left ?? 0) : 0,
        trips: f.vessel.urn !== null ? 0 : Math.max(1, Math.ceil(litres / liftLitres(place.event, round.pot.massKg) - 1e-9)),
      };
    });
  }));
  return { rounds, fills: fills.sort((a, b) => a.at - b.at || a.round - b.round) };
}

/** Most litres one person carries in a pot: the settled limit, less what the pot weighs over the one it was set for (1 kg a litre). */
export function liftLitres(event: Event, vesselKg: number): number {
  return Math.max(1, settle(event, 'lift.loneLitres').value - Math.max(0, vesselKg - settle(event, 'lift.loneVesselKg').value));
}

function brewRound(place: BrewPlace, line: DrinkLine, r: PlacedRound, number: number): BrewRound {
  const { water, heat } = roundFigures(place, line.brewing, r, r.size);
  const madeAhead = isMadeAhead(line.dish.recipe);
  return {
    number, drink: line.dish.id, pot: isUrn(r.pot.id) ? r.pot.id.slice('urn:'.length) : r.pot.id, burner: isUrn(r.pot.id) ? null : (r.burner?.burner.id ?? null), inUrn: isUrn(r.pot.id), startAt: minutes(r.startAt), boilAt: minutes(r.startAt + r.size.boilMinutes), readyAt: minutes(r.readyAt), startHands: r.size.startHands, finishHands: r.size.finishHands,
    litres: r.size.litres, waterLitres: water, heatMinutes: heat, ingredients: ingredientsOf(line.dish, line.brewing, r.size.litres, water.value), apart: apartOf(line.dish.recipe),
    madeAhead, note: madeAhead ? { id: 'drinks.note.madeAhead', params: { drink: line.dish.name, litres: r.size.litres } } : null,
  };
}
