import { numberIn, type RulesTable } from './inputs';
import { heatUpSeconds, hotVolume, meanCp, oilDensity } from './oil';

/** Density line of the rule `oil.hotVolume`, kg/m³ and kg/m³K; the register fixes it. */
const line = { rho20: 920, slope: 0.64 } as const;

/** The oil rules by id. */
export const oilTable: RulesTable = {
  'oil.density': (i) => ({ rho_kg_m3: oilDensity(numberIn(i, 'rho20_kg_m3'), numberIn(i, 'slope_kg_m3_K'), numberIn(i, 'T_C')) }),
  'oil.hotVolume': (i) => ({
    hotVolume_L: hotVolume(numberIn(i, 'coldVolume_L'), oilDensity(line.rho20, line.slope, numberIn(i, 'T1_C')), oilDensity(line.rho20, line.slope, numberIn(i, 'T2_C'))),
  }),
  'oil.meanCp': (i) => ({ cpMean_kJ_kgK: meanCp(numberIn(i, 'a_kJ_kgK'), numberIn(i, 'b_kJ_kgK2'), numberIn(i, 'T1_C'), numberIn(i, 'T2_C')) }),
  'oil.heatUpTime': (i) => ({
    time_s: heatUpSeconds({
      heatCapacity: numberIn(i, 'oil_kg') * numberIn(i, 'cpMean_kJ_kgK') + numberIn(i, 'pan_kg') * numberIn(i, 'panCp_kJ_kgK'),
      power: numberIn(i, 'usefulPower_kW'), loss: numberIn(i, 'lossCoefficient_W_K') / 1000,
      from: numberIn(i, 'T1_C'), to: numberIn(i, 'T2_C'), room: numberIn(i, 'ambient_C'),
    }),
  }),
};
