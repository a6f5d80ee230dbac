import { Big } from 'big.js';
import type { Preferences } from '../event';
import { convertFood, dimensionOf, isUnitId, type Amount, type FoodWeights, type UnitId } from '../measure';
import type { Ingredient } from '../reference';
import { goods } from './goods';
import type { Need } from './types';

/** One food to be bought in one unit: a row of the table, or what the table does not know or cannot turn into its buying unit. */
export interface Purchase {
  /** Unique among the purchases: the id, and the unit too where one food is bought in several. */
  readonly key: string;
  readonly id: string;
  readonly row: Ingredient | undefined;
  readonly unit: UnitId;
  /** True when amounts could be turned into the unit the shop sells by. */
  readonly sold: boolean;
  readonly needs: readonly PurchaseNeed[];
}

/** A need with what has to be bought for it, in the unit of its purchase. */
export interface PurchaseNeed {
  readonly need: Need;
  /** As purchased: edible ÷ edible share, rounded up at the ninth decimal so that shares add up exactly in files too. */
  readonly bought: Amount;
}

/** Percent of what is bought that is eaten; above 0. */
export const ediblePercent = (row: Ingredient | undefined): number => (row !== undefined && row.epPercent > 0 ? row.epPercent : 100);

const noWeights: FoodWeights = { gramsPerMl: null, gramsPer: {} };
const decimals = 9;
const dust = new Big('1e-20');

// Table facts only: the same question always has the same answer, so keeping it changes no plan and saves most of the long divisions.
const perUnit = new Map<string, Big | null>();

/** As purchased, in `to`, for one `from` of a food ready to use: weights, then × 100 ÷ edible percent. Null when the weights do not tell. */
function boughtPerUnit(id: string, row: Ingredient | undefined, from: UnitId, to: UnitId): Big | null {
  const key = `${id} ${from} ${to}`;
  const kept = perUnit.get(key);
  if (kept !== undefined) return kept;
  const one = convertFood({ amount: new Big(1), unit: from }, to, row ?? noWeights);
  const found = one === null ? null : one.amount.times(100).div(ediblePercent(row));
  if (row !== undefined) perUnit.set(key, found);
  return found;
}

/** Up at the ninth decimal; the dust of a repeating fraction (30 decimals kept) does not count. */
const asPurchased = (amount: Big, factor: Big, unit: UnitId): Amount => {
  const exact = amount.times(factor);
  return { amount: (exact.gt(dust) ? exact.minus(dust) : exact).round(decimals, Big.roundUp), unit };
};

/** The unit a food is written in on the list; null for an unknown food. */
function buyingUnit(row: Ingredient | undefined, units: Preferences['units']): UnitId | null {
  const unit = row?.buyUnit[units];
  return unit !== undefined && isUnitId(unit) ? unit : null;
}

/** The unit an amount of a food without a known buying unit is bought in: spoons and cups measure in the kitchen, not in the shop. */
const plainUnit = (unit: UnitId, units: Preferences['units']): UnitId => (dimensionOf(unit) !== 'volume' || unit === 'L' || unit === 'ml' ? unit : units === 'us' ? 'floz' : 'ml');

/** Groups needs into purchases: one per food, and a further one for amounts that no density or piece weight brings into the same unit. */
export function purchases(needs: readonly Need[], units: Preferences['units']): Purchase[] {
  const found = new Map<string, { key: string; id: string; row: Ingredient | undefined; unit: UnitId; sold: boolean; needs: PurchaseNeed[] }>();
  for (const need of needs) {
    const { ingredient: id, amount } = need;
    const row = goods(id);
    if (row?.section === 'tap') continue;
    const wanted = buyingUnit(row, units);
    const sold = wanted !== null && boughtPerUnit(id, row, amount.unit, wanted) !== null;
    const key = sold ? id : [...found.keys()].find((k) => sameKind(found.get(k), need)) ?? `${id} ${amount.unit}`;
    const purchase = found.get(key) ?? { key, id, row, unit: sold ? wanted : plainUnit(amount.unit, units), sold, needs: [] };
    const factor = boughtPerUnit(id, row, amount.unit, purchase.unit) ?? new Big(1);
    purchase.needs.push({ need, bought: asPurchased(amount.amount, factor, purchase.unit) });
    found.set(key, purchase);
  }
  return [...found.values()];
}

/** True when a need can join a purchase of the same food that is kept in the recipe's own unit. */
function sameKind(purchase: { id: string; unit: UnitId; sold: boolean } | undefined, need: Need): boolean {
  return purchase !== undefined && !purchase.sold && purchase.id === need.ingredient && convertFood(need.amount, purchase.unit, noWeights) !== null;
}
