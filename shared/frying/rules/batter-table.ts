import { has, numberIn, numberOr, textIn, type RulesTable } from '../../kitchen';
import { batterDensity, batterMoisture, waterPerFlour } from './batter';
import { acidByValue, acidForSoda, sodaGasLitres } from './leaven';

/** The rules of batter and raising agents by id. */
export const batterTable: RulesTable = {
  'batter.densityMix': (i) => ({ rho_kg_m3: batterDensity(numberIn(i, 'waterFraction'), numberIn(i, 'rhoWater'), numberIn(i, 'rhoSolids'), numberOr(i, 'airFraction', 0)) }),
  'batter.moisture': (i) => ({
    moisture: batterMoisture(numberIn(i, 'flour_kg'), numberIn(i, 'flourMoisture'), numberIn(i, 'water_kg'), numberOr(i, 'greens_kg', 0), numberOr(i, 'greensMoisture', 0), numberOr(i, 'other_kg', 0)),
  }),
  'batter.waterRatio': (i) => ({ waterPerFlour: waterPerFlour(numberIn(i, 'flourFraction')) }),
  'leaven.acidNeeded': (i) => {
    if (has(i, 'neutralisingValue')) return { acid_g: acidByValue(numberIn(i, 'soda_g'), numberIn(i, 'neutralisingValue')) };
    const grams = acidForSoda(numberIn(i, 'soda_g'), textIn(i, 'acid'));
    if (grams === null) throw new RangeError(`no such acid: ${textIn(i, 'acid')}`);
    return { acid_g: grams };
  },
  'leaven.co2Volume': (i) => {
    const mode = textIn(i, 'mode');
    if (mode !== 'acid' && mode !== 'heatOnly') throw new RangeError('"mode" is "acid" or "heatOnly"');
    return { co2_L: sodaGasLitres(numberIn(i, 'soda_g'), numberIn(i, 'T_C'), mode === 'acid') };
  },
  // 16 ounces to the pound.
  'leaven.powderDose': (i) => ({ fractionOfFlour: numberIn(i, 'bakingPowder_oz') / 16 / numberIn(i, 'flour_lb') }),
};
