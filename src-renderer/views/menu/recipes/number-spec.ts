/** What a number of a recipe is measured in; decides its unit and whether a share is written in percent. */
export type Measured = 'g' | 'ml' | 'min' | 'gPerL' | 'mlPerG' | 'share' | 'degrees';

/** One number of how a dish is fried or brewed, with the limits of the event file. */
export interface NumberSpec<K extends string> {
  readonly key: K;
  readonly as: Measured;
  readonly min: number;
  readonly max: number;
  readonly decimals: number;
}

const spec = <K extends string>(key: K, as: Measured, min: number, max: number, decimals: number): NumberSpec<K> => ({ key, as, min, max, decimals });

/** Numbers of frying, most asked for first. The last of them is empty when there is no batter. */
export const fryingSpecs = [
  spec('pieceBatterG', 'g', 2, 200, 1), spec('fryMinutes', 'min', 0.25, 30, 2), spec('targetC', 'degrees', 140, 200, 0), spec('holdMinutes', 'min', 1, 120, 0),
  spec('handlingMinutes', 'min', 0, 10, 2), spec('batterC', 'degrees', -20, 60, 0), spec('waterFraction', 'share', 0.1, 0.97, 1), spec('waterLostKgPerKg', 'share', 0, 0.8, 1),
  spec('oilUptakeKgPerKg', 'share', 0, 0.4, 1),
] as const;

/** Numbers of brewing, most asked for first. */
export const brewingSpecs = [
  spec('doseGPerL', 'gPerL', 0, 200, 1), spec('milkShare', 'share', 0, 1, 1), spec('steepMinutes', 'min', 0, 120, 1), spec('boilMinutes', 'min', 0, 120, 1), spec('cupMl', 'ml', 30, 600, 0),
  spec('goodForMinutes', 'min', 5, 2880, 0), spec('absorbMlPerG', 'mlPerG', 0, 10, 2), spec('strainLoss', 'share', 0, 0.2, 1), spec('potFill', 'share', 0.2, 0.95, 1),
] as const;
