import { numberIn, numbersIn, type RulesTable } from '../../kitchen';
import { packingRatio } from '../../reference';
import { mostCircles, packingDensity } from './pack';
import { centreSeconds, coolingConstant, pieceDiameter } from './piece';

/** Pound in kilograms (exact, international yard and pound agreement). */
const poundKg = 0.45359237;

/** The rules of pieces and packing by id. */
export const pieceTable: RulesTable = {
  'pack.density': (i) => ({ density: packingDensity(numberIn(i, 'n')) }),
  'pack.ratio': (i) => ({ ratio: packingRatio(numberIn(i, 'n')) }),
  'pack.maxCircles': (i) => ({ n: mostCircles(numberIn(i, 'containerToPieceRatio')) }),
  'piece.diameter': (i) => ({ diameter_mm: pieceDiameter(numberIn(i, 'mass_g') / 1000, numberIn(i, 'density_kg_m3'), numberIn(i, 'aspect')) * 1000 }),
  'piece.meanMass': (i) => {
    const kg = Object.values(numbersIn(i, 'ingredients_lb')).reduce((a, b) => a + b, 0) * poundKg;
    return { batter_kg: kg, piece_g: (kg * 1000) / numberIn(i, 'pieces') };
  },
  'piece.centreTimeSphere': (i) => ({
    time_s: centreSeconds(numberIn(i, 'radius_mm') / 1000, numberIn(i, 'diffusivity_m2_s'), numberIn(i, 'startT_C'), numberIn(i, 'surfaceT_C'), numberIn(i, 'centreT_C')),
  }),
  'newton.fritter': (i) => {
    const tau = coolingConstant(numberIn(i, 'mass_g') / 1000, numberIn(i, 'cp_J_gK') * 1000, numberIn(i, 'h_W_m2K'), numberIn(i, 'diameter_mm') / 1000) / 60;
    const room = numberIn(i, 'ambient_C');
    return { tau_min: tau, time_min: tau * Math.log((numberIn(i, 'T0_C') - room) / (numberIn(i, 'T_C') - room)) };
  },
};
