import type { DispenserPlan } from '../../../shared/drinks';

/** A vessel holds something from this many litres on. */
const somethingLitres = 0.05;

/**
 * Degrees a full vessel loses in the hour after its first fill (negative: it gets warmer); null when it is never filled.
 * Newton's law of cooling with the vessel's own rate, towards the room.
 */
export function firstHourLoss(flask: DispenserPlan, roomC: number): number | null {
  const first = flask.litres.findIndex((litres) => litres > somethingLitres);
  const celsius = flask.celsius[first];
  return celsius === undefined ? null : (celsius - roomC) * (1 - Math.exp(-flask.coolingPerHour.value));
}
