import rows from './parameters.json';

/** One starting value with its range and where it comes from. `status` is one of: seen, seen (secondary), derived, from memory, common practice, no source, definition. */
export interface Parameter {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Least and most a household's own value may be; derived from the range where the row does not say (see `legalRange`). */
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly status: string;
  readonly source: string;
  readonly note: string;
}

const byId: ReadonlyMap<string, Parameter> = new Map(rows.map((r) => [r.id, r]));

/** All starting values, in the order of the table. */
export const parameters: readonly Parameter[] = rows;

/** A starting value by id. @throws RangeError when the table has no such row (a programming fault, never user input). */
export function parameter(id: string): Parameter {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`no reference parameter "${id}"`);
  return found;
}

/** Source id under which a parameter's row is named in a working: `parameter:<id>`. */
export const parameterSource = (id: string): string => `parameter:${parameter(id).id}`;
