import type { Rule } from './rule';
import { allergenInDish, nothingLeft, sharedOil } from './rules/allergens';
import { kidneyBeans, slowCookedBeans, warmSoak } from './rules/beans';
import { honey } from './rules/children';
import { circuitLoad } from './rules/circuits';
import { burnerInside, cylinderInside } from './rules/gas';
import { coldHolding, coldMargin, hotHolding, hotMargin } from './rules/holding';
import { childCup, hotCup } from './rules/hot-cup';
import { potLift } from './rules/lifting';
import { milkCold, milkCools } from './rules/milk';
import { oilHeat, oilRange } from './rules/oil-heat';
import { oilHalf, oilThird, rimGone, rimLow } from './rules/oil-level';
import { oilRest } from './rules/oil-rest';
import { plantsInOil } from './rules/plant-in-oil';
import { riceClock } from './rules/rice';
import { friedClock, timeOut, timeOutHot } from './rules/time-out';
import { watchedOil } from './rules/watch';

/** Every rule the product judges today; all others of the table are "not checked yet". */
export const rules: readonly Rule[] = [
  hotHolding, hotMargin, coldHolding, coldMargin, timeOut, timeOutHot, friedClock, kidneyBeans, slowCookedBeans, warmSoak, riceClock, plantsInOil, milkCools, milkCold,
  allergenInDish, nothingLeft, sharedOil, honey, childCup, hotCup, oilRange, oilHeat, oilThird, oilHalf, rimLow, rimGone, watchedOil, oilRest,
  potLift, burnerInside, cylinderInside, circuitLoad,
];
