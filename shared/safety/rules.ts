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
import { oilHot, oilRest } from './rules/oil-rest';
import { plantsInOil } from './rules/plant-in-oil';
import { higherRisk, labelGroups, ukPlug } from './rules/region';
import { riceClock } from './rules/rice';
import { friedClock, timeOut, timeOutHot } from './rules/time-out';
import { watchedOil } from './rules/watch';
import { bigCooling, coolingStep, madeTooEarly, oldRice, reheatedTwice, riceCools, riceCoolsLong, slowCooling, slowReheat } from './rules/ahead';
import { behind, behindSure, toldRules } from './rules/behind';
import { farCarry, heavyPot, hotCarry, hotOilMoved, muchTooHeavy, teamLift } from './rules/carrying';
import { childLine, cutOut, dryFood, extinguisher, nextFlame, outdoorFryer, spentOil, starchyFood } from './rules/fire';
import { adultsPour, flaskTable, hotMilk, veryHotCup } from './rules/flask-table';
import { carbonMonoxide, freshAir, gasEnough, leaks } from './rules/gas-air';
import { handwash, illHelper, openFood, tongs } from './rules/hands';
import { caterer, emergencyKnown, occasion, venue } from './rules/occasion';
import { asafoetida, beanFamily, coconut, peanutAndPulses } from './rules/pulses-and-nuts';
import { chilliBowl, childCaffeine, decafOffered, roundFood, tornPieces, wholeNuts } from './rules/small-guests';
import { extensionCord, fullCircuit, protectedSocket } from './rules/sockets';
import { chilledEggs, cookedForHolding, eggsCooked } from './rules/eggs';
import { cardComplete, cardsCurrent } from './rules/dish-cards';
import { chilledInTime } from './rules/mixed-cold';
import { icedTea } from './rules/iced-tea';
import { leftoverDays } from './rules/leftover-days';
import { microwaveStand } from './rules/microwave';
import { milkJug } from './rules/milk-jug';
import { shelfPickle, vinegarShare } from './rules/pickles';
import { smallPlatters } from './rules/platters';
import { pulsesCooked } from './rules/pulses-cooked';
import { trayDepth, wholePot } from './rules/trays';
import { batterOld, batterTooOld, onIce, relishOut, temperatureChecks } from './rules/waiting';

/** Every rule of the table: judged, told on a sheet, or standing behind another. A test holds the list to the table. */
export const rules: readonly Rule[] = [
  hotHolding, hotMargin, hotUk, coldHolding, coldMargin, coldUk, coldSpace, timeOut, timeOutHot, friedClock, kidneyBeans, slowCookedBeans, warmSoak, riceClock, hotRice, plantsInOil, milkCools, milkCold, milkDispenser,
  allergenInDish, nothingLeft, sharedOil, honey, childCup, hotCup, oilRange, oilHeat, oilThird, oilHalf, rimLow, rimGone, watchedOil, oilRest,
  oilHot, extinguisher, outdoorFryer, nextFlame, spentOil, cutOut, dryFood, childLine, starchyFood, carbonMonoxide, freshAir, leaks, gasEnough, fullCircuit, extensionCord, protectedSocket,
  heavyPot, muchTooHeavy, teamLift, hotCarry, farCarry, hotOilMoved, flaskTable, adultsPour, veryHotCup, hotMilk, handwash, tongs, illHelper, openFood, occasion, caterer, venue, emergencyKnown,
  temperatureChecks, onIce, relishOut, batterOld, batterTooOld, slowCooling, coolingStep, bigCooling, reheatedTwice, slowReheat, madeTooEarly, oldRice, riceCools, riceCoolsLong,
  beanFamily, peanutAndPulses, asafoetida, coconut, roundFood, tornPieces, wholeNuts, childCaffeine, decafOffered, chilliBowl, ...toldRules,
  behind('HH-04', 'warn', hotMargin), behind('HH-06', 'warn', hotMargin), behind('TC-03', 'stop', timeOut), behind('TC-04', 'stop', timeOut), behind('TC-05', 'caution', timeOut), behindSure('PR-06', 'caution'), behind('BO-02', 'warn', plantsInOil), behind('BO-03', 'stop', plantsInOil),
  behindSure('SC-01', 'caution'), behindSure('SC-02', 'caution'), behindSure('SC-05', 'caution'), behindSure('CD-07', 'caution'), behindSure('AC-02', 'caution'), behindSure('LF-03', 'warn'), behind('HY-04', 'caution', handwash),
  chilledEggs, eggsCooked, cookedForHolding, chilledInTime, trayDepth, wholePot, microwaveStand, smallPlatters, leftoverDays, pulsesCooked, shelfPickle, vinegarShare, milkJug, icedTea, cardComplete, cardsCurrent,
  behind('RH-03', 'caution', hotHolding),
  potLift, burnerInside, cylinderInside, circuitLoad, ukPlug, labelGroups, higherRisk,
];
