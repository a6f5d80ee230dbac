import { has, numberIn, type RulesTable } from './inputs';
import { boilOffKgPerHour, burnerShare, heatMinutes, iceKg, waterHeatBtu } from './water';

/** US gallon in litres (231 cubic inches, exact), and the density of boiling water, kg/L, used for measured boil-off. */
const gallonL = 3.785411784;
const boilingKgPerL = 0.958;
const latent = 2257;

/** The rules of water, burners and boiling by id. */
export const waterTable: RulesTable = {
  'water.heat': (i) => ({ Btu: waterHeatBtu(numberIn(i, 'mass_lb'), numberIn(i, 'dT_F')) }),
  'water.heatTime': (i) => ({
    time_min: heatMinutes(numberIn(i, 'volume_L'), numberIn(i, 'density_kg_L') * numberIn(i, 'cp_kJ_kgK'), numberIn(i, 'potHeat_kJ_K'),
      numberIn(i, 'T2_C') - numberIn(i, 'T1_C'), numberIn(i, 'inputPower_kW') * numberIn(i, 'efficiency')),
  }),
  'burner.efficiency': (i) => {
    if (has(i, 'useful_Btu') && has(i, 'input_Btu')) return { efficiency: burnerShare(numberIn(i, 'useful_Btu'), numberIn(i, 'input_Btu')) };
    // 1 kWh = 3412.142 Btu.
    if (has(i, 'useful_Btu')) return { efficiency: burnerShare(numberIn(i, 'useful_Btu'), numberIn(i, 'input_kWh') * 3412.142) };
    return { efficiency: burnerShare(numberIn(i, 'useful_W'), numberIn(i, 'input_W')) };
  },
  'boil.rate': (i) => ({ kg_h: boilOffKgPerHour(numberIn(i, 'net_kW'), numberIn(i, 'hfg')) }),
  'boil.powerFromRate': (i) => ({ net_kW: (numberIn(i, 'gal_h') * gallonL * boilingKgPerL) / boilOffKgPerHour(1, latent) }),
  'boil.measuredRate': (i) => ({ gal_h: (numberIn(i, 'start_gal') - numberIn(i, 'end_gal')) / (numberIn(i, 'time_min') / 60) }),
  'ice.mass': (i) => ({ ice_kg: iceKg(numberIn(i, 'water_kg'), numberIn(i, 'T0_C'), numberIn(i, 'Tf_C')) }),
};
