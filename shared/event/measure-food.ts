import { baseFactor, convert, convertFood, dimensionOf, fullSet, kitchenAmount, parseAmount, spoonAndCup, weighsFromG, type Amount, type KitchenPart, type OnHand } from '../measure';
import { ingredient, type Ingredient } from '../reference';
import type { Preferences } from './schema/event';

/** How an amount of a food is measured in this kitchen. */
export interface FoodMeasure {
  readonly parts: readonly KitchenPart[];
  /** What is measured less what was asked, as a share of what was asked. */
  readonly off: number;
  /** `spoon`: a light food by the spoon, its weight known; `noScale`: by spoon and cup for want of a scale; `unmeasured`: neither scale nor density serves. */
  readonly way: 'scale' | 'jug' | 'count' | 'spoon' | 'noScale' | 'unmeasured';
  /** How far a level spoon or cup of the food may be off in weight, as a share: the range of its density. 0 when weighed. */
  readonly spread: number;
}

/** What there is to measure with, the full set where nothing is said. */
export const onHand = (preferences: Preferences): OnHand => ({
  scaleStepG: preferences.measuring?.scaleStepG === undefined ? fullSet.scaleStepG : preferences.measuring.scaleStepG,
  measures: preferences.measuring?.measures ?? fullSet.measures,
});

/** Less than half of the smallest spoon is not spooned when it can be weighed. */
const leastTsp = '0.0625';

const offOf = (parts: readonly KitchenPart[], asked: Amount): number => {
  const base = asked.amount.times(baseFactor(asked.unit));
  if (base.lte(0)) return 0;
  return parts.reduce((sum, p) => sum.plus((parseAmount(p.text) ?? base.times(0)).times(baseFactor(p.unit))), base.times(0)).div(base).minus(1).toNumber();
};

/** Range of the weight of a level measure about the value used. */
function spreadOf(food: Ingredient | undefined): number {
  const density = food?.figures.density;
  return density === undefined ? 0 : Math.max(density.high / density.value - 1, 1 - density.low / density.value);
}

const weighed = (a: Amount, preferences: Preferences, way: FoodMeasure['way'], stepG: number | null): FoodMeasure => {
  const parts = kitchenAmount(a, preferences.units, preferences.measuring?.scaleStepG === undefined ? 0 : (stepG ?? 0));
  return { parts, off: offOf(parts, a), way, spread: 0 };
};

/**
 * An amount of a food the way this kitchen can measure it. Weights from 5 g, or five steps of the scale, are weighed; less is spooned where the density is
 * known; without a scale every weight goes by spoon and cup, as sure as the density is. Volumes and counted things as ever.
 */
export function measureFood(a: Amount, foodId: string, preferences: Preferences): FoodMeasure {
  const dimension = dimensionOf(a.unit);
  const { scaleStepG, measures } = onHand(preferences);
  if (dimension !== 'mass') return weighed(a, preferences, dimension === 'count' ? 'count' : 'jug', null);
  const grams = convert(a, 'g').amount;
  if (grams.lte(0) || grams.gte(Math.min(weighsFromG({ scaleStepG, measures }), 1e12))) return weighed(a, preferences, 'scale', scaleStepG);
  const food = ingredient(foodId);
  const tsp = convertFood(a, 'tsp', food ?? { gramsPerMl: null, gramsPer: {} });
  const noScale = scaleStepG === null;
  const spooned = tsp === null || (!noScale && tsp.amount.lt(leastTsp)) ? null : spoonAndCup(tsp, measures, preferences.units === 'us' ? 'cup' : 'metricCup');
  // Leaves so light that they fill a cup are weighed where there is a scale for it.
  const cups = spooned?.parts.some((p) => p.unit === 'cup' || p.unit === 'metricCup') === true;
  const fine = preferences.measuring?.scaleStepG === undefined || (scaleStepG !== null && grams.gte(scaleStepG));
  if (spooned === null || (cups && !noScale && fine)) return weighed(a, preferences, noScale || !fine ? 'unmeasured' : 'scale', scaleStepG);
  // Big amounts in big measures: past sixteen cups a jug is quicker, and as good.
  const big = tsp !== null && tsp.amount.gte(16 * 48);
  const parts = big ? kitchenAmount(tsp, preferences.units) : spooned.parts;
  return { parts, off: big ? offOf(parts, tsp) : spooned.off, way: noScale ? 'noScale' : 'spoon', spread: spreadOf(food) };
}
