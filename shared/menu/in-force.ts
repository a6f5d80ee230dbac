import type { Event } from '../event';
import type { Origin, Term } from '../figure';
import { isUnitId, type UnitId } from '../measure';

/** A number with where it comes from, ready to be an input of a working. */
export interface Known {
  readonly value: number;
  readonly unit: string;
  readonly origin: Origin;
}

/** Origin of a table row; a row that is true by definition says so. */
export const tableOrigin = (source: string, row: string): Origin =>
  source === 'definition' ? { kind: 'definition' } : { kind: 'table', source, row };

/** The household's own figure by its key, with its unit when it names one; null when there is none. */
export function houseFigure(event: Event, key: string): (Known & { readonly unitId: UnitId | null }) | null {
  const own = event.houseFigures.find((h) => h.figure === key);
  if (own === undefined) return null;
  return { value: own.value, unit: own.unit, unitId: isUnitId(own.unit) ? own.unit : null, origin: { kind: 'house', why: own.why, row: key } };
}

/** The house figure of that key if there is one above or at zero, else the table's value. */
export function inForce(event: Event, key: string, value: number, unit: string, source: string): Known {
  const own = houseFigure(event, key);
  return own !== null && own.value >= 0 ? { value: own.value, unit, origin: own.origin } : { value, unit, origin: tableOrigin(source, key) };
}

/** A known number as a term under a label of the words. */
export const knownTerm = (key: string, word: string, known: Known, params?: Readonly<Record<string, string | number>>): Term =>
  ({ key, label: params === undefined ? { word } : { word, params }, value: known.value, unit: known.unit, origin: known.origin });
