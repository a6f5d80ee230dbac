import { impliedMoisture, riceWaterKg, soakFactor, yieldFromMoisture } from './cooking';
import { has, numberIn, type RulesTable } from './inputs';

/** Pound in kilograms and US gallon in litres (exact definitions, NIST Handbook 44, Appendix C). */
const poundKg = 0.45359237;
const gallonL = 3.785411784;
/** Moisture of dry beans, from memory; the register gives no input for it. */
const dryBeanMoisture = 0.12;

/** The rules of rice and pulses by id. */
export const cookingTable: RulesTable = {
  'cook.yield': (i) => {
    const ratio = numberIn(i, 'cooked_lb') / numberIn(i, 'dry_lb');
    return { yield: ratio, impliedCookedMoisture: impliedMoisture(dryBeanMoisture, ratio) };
  },
  'cook.yieldFromMoisture': (i) => ({ yield: yieldFromMoisture(numberIn(i, 'rawMoisture'), numberIn(i, 'cookedMoisture')) }),
  'rice.waterForMoisture': (i) => ({ water_kg: riceWaterKg(numberIn(i, 'rice_kg'), numberIn(i, 'rawMoisture'), numberIn(i, 'cookedMoisture'), numberIn(i, 'evap_L')) }),
  'rice.waterRatio': (i) => {
    const water = has(i, 'water_gal') ? numberIn(i, 'water_gal') * gallonL : (numberIn(i, 'water_qt') * gallonL) / 4;
    return { L_per_kg: water / (numberIn(i, 'rice_lb') * poundKg) };
  },
  'pulse.soakFactor': (i) => ({ soakedMass: soakFactor(numberIn(i, 'uptakeFraction')) }),
};
