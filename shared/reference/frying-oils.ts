import rows from './frying-oils.json';
import { smokePoints, type SmokePoint } from './safety-rules';

/**
 * A fat to fry in. The refined oils of a plant that is an allergen count as carrying it: the careful side, as in the ingredient table
 * (common practice, no source).
 */
export interface FryingOil {
  /** Kind as the event keeps it; the key of its smoke point too. */
  readonly id: string;
  readonly name: string;
  /** Id on the shopping list; the ingredient table need not have it. */
  readonly ingredient: string;
  /** Ids of the allergen groups it carries; null when the kind does not tell (a blend). */
  readonly allergens: readonly string[] | null;
  /** When it begins to smoke, in °C. */
  readonly smoke: SmokePoint;
}

/** Every frying oil the tables know, in the order of the table. */
export const fryingOils: readonly FryingOil[] = rows.flatMap((row) => {
  const smoke = smokePoints.find((p) => p.oil === row.id);
  return smoke === undefined ? [] : [{ ...row, smoke }];
});

/** The words of a kind as an id: small letters and digits joined by dashes. */
const asId = (kind: string): string => kind.toLowerCase().split(/[^a-z0-9]+/).filter((word) => word !== '').join('-');

/**
 * The row of a kind of frying oil, named by its id, its name or its ingredient in any spelling of spaces and capitals; null when the tables do
 * not know it. There is no usual oil to fall back on: what is not known must be said.
 */
export function fryingOil(kind: string): FryingOil | null {
  const id = asId(kind);
  return fryingOils.find((o) => o.id === id) ?? fryingOils.find((o) => o.ingredient === id || asId(o.name) === id) ?? null;
}

/** Id for the shopping list of an oil the tables do not know: its own words. Never the id of another food. */
export function unknownOilId(kind: string, isFood: (id: string) => boolean): string {
  const id = asId(kind).slice(0, 60);
  return id === '' || isFood(id) ? `oil${id === '' ? '' : `-${id}`}` : id;
}
