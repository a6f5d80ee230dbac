import { Big } from 'big.js';
import type { Preferences } from '../event';
import { convertFood, isUnitId, type Amount, type FoodWeights, type UnitId } from '../measure';
import { ingredient, type Ingredient } from '../reference';
import type { Need } from './types';

/** One food to be bought in one unit: a row of the table, or what the table does not know or cannot turn into its buying unit. */
export interface Purchase {
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

const decimals = 9;

/** Edible amount as purchased: × 100 ÷ edible percent. */
function asPurchased(a: Amount, row: Ingredient | undefined): Amount {
  return { amount: a.amount.times(100).div(ediblePercent(row)).round(decimals, Big.roundUp), unit: a.unit };
}

/** The unit a food is written in on the list; null for an unknown food. */
function buyingUnit(row: Ingredient | undefined, units: Preferences['units']): UnitId | null {
  const unit = row?.buyUnit[units];
  return unit !== undefined && isUnitId(unit) ? unit : null;
}

const noWeights: FoodWeights = { gramsPerMl: null, gramsPer: {} };

/** Groups needs into purchases: one per food, and a further one for amounts that no density or piece weight brings into the same unit. */
export function purchases(needs: readonly Need[], units: Preferences['units']): Purchase[] {
  const found = new Map<string, { id: string; row: Ingredient | undefined; unit: UnitId; sold: boolean; needs: PurchaseNeed[] }>();
  for (const need of needs) {
    const row = ingredient(need.ingredient);
    if (row?.section === 'tap') continue;
    const wanted = buyingUnit(row, units);
    const inWanted = wanted === null ? null : convertFood(need.amount, wanted, row ?? noWeights);
    const amount = inWanted ?? need.amount;
    const key = inWanted === null ? [...found.keys()].find((k) => sameKind(found.get(k), need)) ?? `${need.ingredient} ${need.amount.unit}` : need.ingredient;
    const purchase = found.get(key) ?? { id: need.ingredient, row, unit: amount.unit, sold: inWanted !== null, needs: [] };
    const inUnit = convertFood(amount, purchase.unit, noWeights) ?? amount;
    purchase.needs.push({ need, bought: asPurchased(inUnit, row) });
    found.set(key, purchase);
  }
  return [...found.values()];
}

/** True when a need can join a purchase of the same food that is kept in the recipe's own unit. */
function sameKind(purchase: { id: string; unit: UnitId; sold: boolean } | undefined, need: Need): boolean {
  return purchase !== undefined && !purchase.sold && purchase.id === need.ingredient && convertFood(need.amount, purchase.unit, noWeights) !== null;
}
