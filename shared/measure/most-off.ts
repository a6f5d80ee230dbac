import { Big } from 'big.js';
import { kitchenAmount } from './kitchen';
import { offOf } from './off';
import type { OnHand } from './on-hand';
import { measureVolume } from './volume';

/** Amounts tried: 200 from 30 to 6000, each 2.7 % above the one before. */
const tried: readonly Big[] = Array.from({ length: 200 }, (_, k) => new Big((30 * 200 ** (k / 199)).toFixed(2)));

/** How far amounts are rounded at most with these measures, as a share of what is asked. */
export interface MostOff {
  /** What is poured, from 30 ml to 6 L; null when there is nothing to pour by. */
  readonly poured: number | null;
  /** What is weighed, from 30 g, or five steps of the scale, to 6 kg; null without a scale. */
  readonly weighed: number | null;
}

/** Grams from which the bound of weighed amounts is told. */
export const weighedFromG = (scaleStepG: number): number => Math.max(30, 5 * scaleStepG);

/** The largest rounding of 200 amounts spread over what a kitchen measures: a bound to judge a jug or a scale by. */
export function mostOff(system: 'metric' | 'us', onHand: OnHand): MostOff {
  const { scaleStepG } = onHand;
  const poured = tried.map((amount) => measureVolume({ amount, unit: 'ml' }, system, onHand)).map((m) => (m === null ? null : Math.abs(m.off)));
  const weights = scaleStepG === null ? [] : tried.filter((g) => g.gte(5 * scaleStepG)).map((amount) => Math.abs(offOf(kitchenAmount({ amount, unit: 'g' }, system, scaleStepG), { amount, unit: 'g' })));
  return {
    poured: poured.includes(null) ? null : poured.reduce<number>((most, off) => Math.max(most, off ?? 0), 0),
    weighed: scaleStepG === null ? null : weights.reduce((most, off) => Math.max(most, off), 0),
  };
}
