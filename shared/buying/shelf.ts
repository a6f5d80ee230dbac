import { Big } from 'big.js';
import type { Preferences } from '../event';
import { convertFood, isUnitId, type UnitId } from '../measure';
import type { Ingredient } from '../reference';
import { readySizes, type Sizes } from './packs';

// Facts of the table only: the same question always has the same answer, so keeping it changes no plan.
const shelves = new Map<string, Sizes | null>();

/**
 * Pack sizes of a food in the unit of the list; null when it is sold loose. Rounded down at the ninth decimal, so that a pack never counts
 * for more than it holds.
 */
export function shelfOf(row: Ingredient, units: Preferences['units'], unit: UnitId): Sizes | null {
  const key = `${row.id} ${units} ${unit}`;
  const kept = shelves.get(key);
  if (kept !== undefined) return kept;
  const sizes = row.packs[units].flatMap((p) => {
    const size = isUnitId(p.unit) ? convertFood({ amount: new Big(p.amount), unit: p.unit }, unit, row) : null;
    return size === null ? [] : [size.amount.round(9, Big.roundDown)];
  });
  const shelf = readySizes(sizes);
  shelves.set(key, shelf);
  return shelf;
}
