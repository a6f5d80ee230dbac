import { convert, convertFood, dimensionOf, fullSet, kitchenAmount, measureVolume, offOf, spoonAndCup, weighsFromG, type Amount, type KitchenPart, type OnHand } from '../measure';
import { ingredient, type Ingredient } from '../reference';
import type { Preferences } from './schema/event';

/** How an amount of a food is measured in this kitchen. */
export interface FoodMeasure {
  readonly parts: readonly KitchenPart[];
  /** What is measured less what was asked, as a share of what was asked. */
  readonly off: number;
  /** `spoon`: a light food by the spoon, its weight known; `noScale`: by spoon and cup for want of a scale; `unmeasured`: neither scale nor density serves; `nothing`: a volume, and neither jug, cup nor spoon. */
  readonly way: 'scale' | 'jug' | 'count' | 'spoon' | 'noScale' | 'unmeasured' | 'nothing';
  /** How far a level spoon or cup of the food may be off in weight, as a share: the range of its density. 0 when weighed. */
  readonly spread: number;
}

/** What there is to measure with, the full set where nothing is said. */
export const onHand = ({ measuring }: Preferences): OnHand => ({
  scaleStepG: measuring?.scaleStepG === undefined ? fullSet.scaleStepG : measuring.scaleStepG,
  measures: measuring?.measures ?? fullSet.measures,
  jugStepMl: measuring?.jugStepMl === undefined ? fullSet.jugStepMl : measuring.jugStepMl,
});

/** Less than half of the smallest spoon is not spooned when it can be weighed. */
const leastTsp = '0.0625';
/** A volume that spoons and jug miss by more than this is weighed, where scale and density serve (our choice). */
const missed = 0.1;

/** Range of the weight of a level measure about the value used. */
function spreadOf(food: Ingredient | undefined): number {
  const density = food?.figures.density;
  return density === undefined ? 0 : Math.max(density.high / density.value - 1, 1 - density.low / density.value);
}

const weighed = (a: Amount, preferences: Preferences, way: FoodMeasure['way'], stepG: number | null): FoodMeasure => {
  const parts = kitchenAmount(a, preferences.units, preferences.measuring?.scaleStepG === undefined ? 0 : (stepG ?? 0));
  return { parts, off: offOf(parts, a), way, spread: 0 };
};

/** A volume of a food: by spoon, cup and jug; by scale when those miss it and the scale does not. */
function poured(a: Amount, food: Ingredient | undefined, preferences: Preferences): FoodMeasure {
  const there = onHand(preferences);
  const found = measureVolume(a, preferences.units, there);
  const grams = found !== null && Math.abs(found.off) <= missed ? null : convertFood(a, 'g', food ?? { gramsPerMl: null, gramsPer: {} });
  if (grams !== null && grams.amount.gte(weighsFromG(there))) return weighed(grams, preferences, 'scale', there.scaleStepG);
  return found === null ? weighed(a, preferences, 'nothing', null) : { ...found, way: 'jug', spread: 0 };
}

/**
 * An amount of a food the way this kitchen can measure it. Weights from 5 g, or five steps of the scale, are weighed; less is spooned where the density is
 * known; without a scale every weight goes by spoon and cup, as sure as the density is. Volumes go by the spoons, cups and jug there are. Counted things as ever.
 */
export function measureFood(a: Amount, foodId: string, preferences: Preferences): FoodMeasure {
  const dimension = dimensionOf(a.unit);
  const there = onHand(preferences);
  const { scaleStepG, measures } = there;
  if (dimension === 'count') return weighed(a, preferences, 'count', null);
  if (dimension === 'volume') return poured(a, ingredient(foodId), preferences);
  const grams = convert(a, 'g').amount;
  if (grams.lte(0) || grams.gte(Math.min(weighsFromG(there), 1e12))) return weighed(a, preferences, 'scale', scaleStepG);
  const food = ingredient(foodId);
  const tsp = convertFood(a, 'tsp', food ?? { gramsPerMl: null, gramsPer: {} });
  const noScale = scaleStepG === null;
  const spooned = tsp === null || (!noScale && tsp.amount.lt(leastTsp)) ? null : spoonAndCup(tsp, measures, preferences.units === 'us' ? 'cup' : 'metricCup');
  // Leaves so light that they fill a cup are weighed where there is a scale for it.
  const cups = spooned?.parts.some((p) => p.unit === 'cup' || p.unit === 'metricCup') === true;
  const fine = preferences.measuring?.scaleStepG === undefined || (scaleStepG !== null && grams.gte(scaleStepG));
  if (spooned === null || (cups && !noScale && fine)) return weighed(a, preferences, noScale || !fine ? 'unmeasured' : 'scale', scaleStepG);
  // Big amounts in big measures: past sixteen cups a jug is quicker, and as good.
  const big = tsp !== null && tsp.amount.gte(16 * 48) ? measureVolume(tsp, preferences.units, there) : null;
  const { parts, off } = big ?? spooned;
  return { parts, off, way: noScale ? 'noScale' : 'spoon', spread: spreadOf(food) };
}
