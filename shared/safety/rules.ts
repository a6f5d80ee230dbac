import type { Rule } from './rule';
import { allergenInDish, nothingLeft, sharedOil } from './rules/allergens';
import { kidneyBeans, slowCookedBeans, warmSoak } from './rules/beans';
import { honey } from './rules/children';
import { circuitLoad } from './rules/circuits';
import { coldSpace } from './rules/cold-space';
import { burnerInside, cylinderInside } from './rules/gas';
import { coldHolding, coldMargin, coldUk, hotHolding, hotMargin, hotRice, hotUk } from './rules/holding';
import { childCup, hotCup } from './rules/hot-cup';
import { potLift } from './rules/lifting';
import { milkCold, milkCools, milkDispenser } from './rules/milk';
import { oilHeat, oilRange } from './rules/oil-heat';
import { oilHalf, oilThird, rimGone, rimLow } from './rules/oil-level';
import { oilRest } from './rules/oil-rest';
import { plantsInOil } from './rules/plant-in-oil';
import { higherRisk, labelGroups, ukPlug } from './rules/region';
import { riceClock } from './rules/rice';
import { friedClock, timeOut, timeOutHot } from './rules/time-out';
import { watchedOil } from './rules/watch';

/** Every rule the product judges today; all others of the table are "not checked yet". */
export const rules: readonly Rule[] = [
  hotHolding, hotMargin, hotUk, coldHolding, coldMargin, coldUk, coldSpace, timeOut, timeOutHot, friedClock, kidneyBeans, slowCookedBeans, warmSoak, riceClock, hotRice, plantsInOil, milkCools, milkCold, milkDispenser,
  allergenInDish, nothingLeft, sharedOil, honey, childCup, hotCup, oilRange, oilHeat, oilThird, oilHalf, rimLow, rimGone, watchedOil, oilRest,
  potLift, burnerInside, cylinderInside, circuitLoad, ukPlug, labelGroups, higherRisk,
];
