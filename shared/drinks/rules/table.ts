import { has, numberIn, type RulesTable } from '../../kitchen';
import { absorbed, dose, waterForServed } from './brew';
import { backTo, cooled, coolingRate, mixed, scaledRate } from './newton';

/** Pound in grams, US gallon and fluid ounce in litres (exact definitions, NIST Handbook 44, Appendix C). */
const poundG = 453.59237;
const gallonL = 3.785411784;
const flozL = 0.0295735295625;
/** Strength of the tasting infusion of ISO 3103: 2 g to 100 mL. */
const testGPerL = 20;

/** Every rule of brewing and cooling by id, with the keys of the rule register. */
export const drinksRulesTable: RulesTable = {
  'tea.doseFromRecipe': (i) => ({ g_per_L: dose(numberIn(i, 'leaf_g'), numberIn(i, 'water_L')) }),
  'tea.absorption': (i) => ({ mL_per_g: absorbed(numberIn(i, 'water_L'), numberIn(i, 'served_L'), numberIn(i, 'leaf_g')) }),
  'tea.doseTestStrength': (i) => ({ leaf_g: testGPerL * numberIn(i, 'water_L') }),
  'tea.waterForServed': (i) => ({ waterIn_L: waterForServed(numberIn(i, 'served_L'), numberIn(i, 'g_per_L'), numberIn(i, 'absorption_mL_g'), numberIn(i, 'evap_L')) }),
  'coffee.dose': (i) => {
    const litres = has(i, 'water_gal') ? numberIn(i, 'water_gal') * gallonL : numberIn(i, 'cups') * numberIn(i, 'cup_floz') * flozL;
    return { g_per_L: dose(numberIn(i, 'coffee_lb') * poundG, litres) };
  },
  'coffee.absorption': (i) => ({ g_per_g: (numberIn(i, 'in_g') - numberIn(i, 'out_g')) / numberIn(i, 'coffee_g') }),
  'coffee.yield': (i) => ({ yield_mL: numberIn(i, 'water_mL') - numberIn(i, 'absorption_mL_g') * numberIn(i, 'coffee_g') }),
  'newton.temperature': (i) => ({ T_C: cooled(numberIn(i, 'T0_C'), numberIn(i, 'ambient_C'), numberIn(i, 'k_per_h'), numberIn(i, 'time_h')) }),
  'newton.rateFromTest': (i) => ({ k_per_h: coolingRate(numberIn(i, 'T0_C'), numberIn(i, 'T1_C'), numberIn(i, 'ambient_C'), numberIn(i, 'time_h')) }),
  'newton.sizeScaling': (i) => ({ k_per_h: scaledRate(numberIn(i, 'k_per_h'), numberIn(i, 'volume_L'), numberIn(i, 'newVolume_L')) }),
  'newton.backExtrapolate': (i) => ({ T0_C: backTo(numberIn(i, 'T1_C'), numberIn(i, 't1_min'), numberIn(i, 'T2_C'), numberIn(i, 't2_min'), numberIn(i, 'ambient_C')) }),
  'mix.preheat': (i) => ({ T_C: mixed(numberIn(i, 'liquid_L'), numberIn(i, 'liquidT_C'), numberIn(i, 'cRho_kJ_LK'), numberIn(i, 'vesselHeat_kJ_K'), numberIn(i, 'vesselT_C')) }),
};
