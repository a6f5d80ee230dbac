import { numberIn, numberOr, textIn, type RuleInputs, type RulesTable } from '../../kitchen';
import { massBalance, purchaseLitres, uptakeLitres } from './balance';
import { dip, recoverySeconds, worstDrop } from './dip';
import { batterHeat, frozenHeat, kjPerKg, type BatterHeat } from './energy';
import { cycleSeconds, kgPerHour, kgPerHourByPower } from './throughput';

const heatOf = (i: RuleInputs, water: string): BatterHeat => ({
  water: numberIn(i, water), lost: numberIn(i, 'dw'), from: numberIn(i, 'T0_C'), to: numberOr(i, 'Tend_C', 100),
  waterCp: numberOr(i, 'cw', 4.19), solidsCp: numberOr(i, 'cs', 1.7), latent: numberOr(i, 'hfg', 2257),
});
const loadKg = (i: RuleInputs): number => (numberIn(i, 'pieces') * numberIn(i, 'piece_g')) / 1000;

/** The rules of heat and oil in frying by id. */
export const fryTable: RulesTable = {
  'fry.dip': (i) => {
    const { drop, at } = dip({
      load: numberIn(i, 'load_kg'), heat: numberIn(i, 'e_kJ_kg'), power: numberIn(i, 'usefulNet_kW'), heatCapacity: numberIn(i, 'C_kJ_K'),
      tau: numberIn(i, 'tau_s'), fryTime: numberIn(i, 'fryTime_s'),
    });
    return { drop_K: drop, timeOfMinimum_s: at };
  },
  'fry.worstCaseDrop': (i) => ({ drop_K: worstDrop(numberIn(i, 'load_kg'), numberIn(i, 'e_kJ_kg'), numberIn(i, 'C_kJ_K')) }),
  'fry.recoveryTime': (i) => ({ time_s: recoverySeconds(numberIn(i, 'C_kJ_K'), numberIn(i, 'dT_K'), numberIn(i, 'usefulNet_kW')) }),
  'fry.energyPerKgBatter': (i) => ({ kJ_kg: batterHeat(heatOf(i, 'w0')) }),
  'fry.energyPerKgFrozenFries': (i) => ({ kJ_kg: frozenHeat(heatOf(i, 'w'), numberIn(i, 'cIce'), numberIn(i, 'fusion')) }),
  'fry.energyUnit': (i) => {
    const value = kjPerKg(numberIn(i, 'value'), textIn(i, 'unit'));
    if (value === null) throw new RangeError(`no such unit of heat per mass: ${textIn(i, 'unit')}`);
    return { kJ_kg: value };
  },
  'fry.throughputPower': (i) => ({ kg_h: kgPerHourByPower(numberIn(i, 'usefulNet_kW'), numberIn(i, 'e_kJ_kg')) }),
  'fry.throughputSurface': (i) => ({ kg_h: kgPerHour(loadKg(i), numberIn(i, 'fryTime_s') + numberIn(i, 'handling_s')) }),
  'fry.throughput': (i) => {
    const cycle = cycleSeconds(numberIn(i, 'fryTime_s'), numberIn(i, 'handling_s'), loadKg(i), numberIn(i, 'e_kJ_kg'), numberIn(i, 'usefulNet_kW'));
    return { kg_h: kgPerHour(loadKg(i), cycle), cycle_s: cycle };
  },
  'fry.massBalance': (i) => {
    const b = massBalance(numberIn(i, 'batterWater'), numberIn(i, 'batterFatDryBasis'), numberIn(i, 'productWater'), numberIn(i, 'productFatDryBasis'));
    return { yield: b.yield, waterLost: b.waterLost, oilGained: b.oilGained };
  },
  'fry.oilPurchase': (i) => {
    const uptake = uptakeLitres(numberIn(i, 'batter_kg'), numberIn(i, 'oilUptakePerKgBatter'), numberIn(i, 'rho20_kg_L'));
    return { uptake_L: uptake, buy_L: purchaseLitres(numberIn(i, 'fill_L') * numberOr(i, 'freshFills', 1), uptake, numberIn(i, 'dripFraction')) };
  },
};
