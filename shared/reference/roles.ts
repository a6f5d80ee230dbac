import rows from './roles.json';

/** One starting value of a role's portion with its range and where it comes from. */
export interface PortionValue {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly status: string;
}

/** What one adult takes of a dish of a role, when it is the only one of its group, on a stay of 90 minutes. */
export interface RolePortion {
  readonly role: string;
  /** Dishes of one group share one appetite. */
  readonly group: string;
  readonly servedAs: string;
  /** Pieces, grams and millilitres; null where the role is not served so. */
  readonly piece: PortionValue | null;
  readonly g: PortionValue | null;
  readonly ml: PortionValue | null;
  readonly note: string;
}

const byRole: ReadonlyMap<string, RolePortion> = new Map(rows.map((r) => [r.role, r]));

/** Portions of all roles, in the order of the table. */
export const rolePortions: readonly RolePortion[] = rows;

/** Portion of a role. @throws RangeError when the table has no such role (a programming fault, never user input). */
export function rolePortion(role: string): RolePortion {
  const found = byRole.get(role);
  if (found === undefined) throw new RangeError(`no portion for the role "${role}"`);
  return found;
}
