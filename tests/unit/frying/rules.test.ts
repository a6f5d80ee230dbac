import { describe, expect, it } from 'vitest';
import { drinksRulesTable } from '../../../shared/drinks';
import { fryingRulesTable } from '../../../shared/frying';
import { kitchenRulesTable } from '../../../shared/kitchen';

const tables = { ...kitchenRulesTable, ...fryingRulesTable, ...drinksRulesTable };
const run = (id: string, inputs: Record<string, unknown>): Record<string, unknown> => tables[id]!(inputs);
const ids = `batter.densityMix batter.moisture batter.waterRatio boil.measuredRate boil.powerFromRate boil.rate burner.efficiency coffee.absorption coffee.dose coffee.yield cook.yield
cook.yieldFromMoisture fry.batches fry.dip fry.energyPerKgBatter fry.energyPerKgFrozenFries fry.energyUnit fry.massBalance fry.oilPurchase fry.recoveryTime fry.throughput fry.throughputPower
fry.throughputSurface fry.worstCaseDrop ice.mass leaven.acidNeeded leaven.co2Volume leaven.powderDose mix.preheat newton.backExtrapolate newton.fritter newton.rateFromTest newton.sizeScaling
newton.temperature oil.density oil.heatUpTime oil.hotVolume oil.meanCp pack.density pack.maxCircles pack.ratio pan.cap.depthFromVolume pan.cap.radius pan.cap.state pan.cap.volume pan.levelRise
pan.segment.volume pan.straight.depthFromVolume piece.centreTimeSphere piece.diameter piece.meanMass pulse.soakFactor rice.waterForMoisture rice.waterRatio tea.absorption tea.doseFromRecipe
tea.doseTestStrength tea.waterForServed water.heat water.heatTime`.split(/\s+/);

describe('the rules of kitchen, frying and drinks', () => {
  it('are all there, each in one table', () => {
    expect(ids.filter((id) => !Object.hasOwn(tables, id))).toEqual([]);
    expect(Object.keys(tables)).toHaveLength(Object.keys(kitchenRulesTable).length + Object.keys(fryingRulesTable).length + Object.keys(drinksRulesTable).length);
  });
  it.each(ids)('%s says which input is missing', (id) => {
    expect(() => run(id, {})).toThrow(/needs/);
  });
});

// Worked by hand from the equations of the register; no outside source.
describe('rules without a stored check', () => {
  it.each([
    ['fry.recoveryTime', { C_kJ_K: 7, dT_K: 10, usefulNet_kW: 1.4 }, { time_s: 50 }],
    ['fry.throughput', { pieces: 24, piece_g: 25, fryTime_s: 240, handling_s: 60, usefulNet_kW: 1.75, e_kJ_kg: 665 }, { kg_h: 7.2, cycle_s: 300 }],
    ['fry.throughput', { pieces: 40, piece_g: 25, fryTime_s: 240, handling_s: 60, usefulNet_kW: 1, e_kJ_kg: 600 }, { kg_h: 6, cycle_s: 600 }],
    ['oil.hotVolume', { coldVolume_L: 3, T1_C: 20, T2_C: 180 }, { hotVolume_L: (3 * 920) / 817.6 }],
    ['pan.segment.volume', { bottomDiameter_m: 0, surfaceDiameter_m: 0.3, oilDepth_m: 0.15 }, { volume_L: (2 / 3) * Math.PI * 1.5 ** 3 }],
    ['newton.sizeScaling', { k_per_h: 0.04, volume_L: 8, newVolume_L: 1 }, { k_per_h: 0.08 }],
    ['newton.backExtrapolate', { T1_C: 60, t1_min: 10, T2_C: 40, t2_min: 20, ambient_C: 20 }, { T0_C: 100 }],
    ['tea.waterForServed', { served_L: 9, g_per_L: 20, absorption_mL_g: 5, evap_L: 0.9 }, { waterIn_L: 11 }],
    ['boil.measuredRate', { start_gal: 1, end_gal: 0.52, time_min: 20 }, { gal_h: 1.44 }],
    ['water.heatTime', { volume_L: 10, density_kg_L: 1, cp_kJ_kgK: 4.2, T1_C: 20, T2_C: 100, potHeat_kJ_K: 3, inputPower_kW: 3, efficiency: 0.5 }, { time_min: 40 }],
    ['burner.efficiency', { useful_Btu: 3412.142, input_kWh: 2 }, { efficiency: 0.5 }],
    ['coffee.dose', { coffee_lb: 1, cups: 60, cup_floz: 5 }, { g_per_L: 453.59237 / (300 * 0.0295735295625) }],
    ['rice.waterRatio', { rice_lb: 2, water_qt: 4 }, { L_per_kg: 3.785411784 / 0.90718474 }],
    ['leaven.acidNeeded', { soda_g: 8, neutralisingValue: 80 }, { acid_g: 10 }],
    ['pack.maxCircles', { containerToPieceRatio: 0.99 }, { n: 0 }],
    ['pack.maxCircles', { containerToPieceRatio: 20 }, { n: 316 }],
  ])('%s', (id, inputs, expected) => {
    const outputs = run(id, inputs);
    for (const [key, value] of Object.entries(expected)) expect(outputs[key]).toBeCloseTo(value, 9);
  });
  it('refuses what it does not know', () => {
    expect(() => run('leaven.acidNeeded', { soda_g: 5, acid: 'battery' })).toThrow(/no such acid/);
    expect(() => run('leaven.co2Volume', { soda_g: 5, T_C: 25, mode: 'magic' })).toThrow(/acid/);
    expect(() => run('fry.energyUnit', { value: 1, unit: 'calories' })).toThrow(/no such unit/);
    expect(() => run('piece.meanMass', { ingredients_lb: { flour: 'much' }, pieces: 3 })).toThrow(/flour/);
  });
});

describe('the fall of the oil', () => {
  it('agrees with steps of a hundredth of a second', () => {
    const i = { load_kg: 0.6, e_kJ_kg: 680, usefulNet_kW: 1.75, C_kJ_K: 7.5, tau_s: 100, fryTime_s: 240 };
    const peak = (i.load_kg * i.e_kJ_kg) / (i.tau_s * (1 - Math.exp(-i.fryTime_s / i.tau_s)));
    let [fall, worst] = [0, 0];
    for (let t = 0; t < i.fryTime_s; t += 0.01) {
      fall += ((peak * Math.exp(-(t + 0.005) / i.tau_s) - i.usefulNet_kW) / i.C_kJ_K) * 0.01;
      worst = Math.max(worst, fall);
    }
    expect(run('fry.dip', i)['drop_K']).toBeCloseTo(worst, 3);
  });
  it('is none when the burner gives more than the pieces take', () => {
    expect(run('fry.dip', { load_kg: 0.05, e_kJ_kg: 680, usefulNet_kW: 2, C_kJ_K: 7.5, tau_s: 100, fryTime_s: 240 })).toEqual({ drop_K: 0, timeOfMinimum_s: 0 });
  });
});
