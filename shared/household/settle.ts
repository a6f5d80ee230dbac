import type { Event } from '../event';
import type { Origin, Term } from '../figure';
import { parameter, parameterSource } from '../reference';

/** A value in force: the household's own figure when the event has one, else the reference value. */
export interface Settled {
  readonly id: string;
  readonly value: number;
  readonly unit: string;
  readonly origin: Origin;
  readonly label: string;
}

/**
 * The value in force of a reference parameter.
 * @param id row id of `shared/reference` parameters, e.g. `fry.dw`.
 * @throws RangeError when the table has no such row.
 */
export function settle(event: Event, id: string): Settled {
  const reference = parameter(id);
  const own = event.houseFigures.find((h) => h.figure === id);
  return own === undefined
    ? { id, value: reference.value, unit: reference.unit, label: reference.label, origin: { kind: 'table', source: parameterSource(id), row: id } }
    : { id, value: own.value, unit: reference.unit, label: reference.label, origin: { kind: 'house', why: own.why, row: id } };
}

/** The settled value as an input of a working. */
export const settledTerm = (key: string, s: Settled): Term =>
  ({ key, label: { text: s.label }, value: s.value, unit: s.unit === '-' ? '' : s.unit, origin: s.origin });
