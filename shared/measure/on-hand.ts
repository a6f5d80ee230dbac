import { Big } from 'big.js';
import type { UnitId } from './units';

/** Spoons and dry cups a kitchen may have, large to small. */
export const handMeasureIds = ['cup', 'halfCup', 'thirdCup', 'quarterCup', 'tbsp', 'halfTbsp', 'tsp', 'halfTsp', 'quarterTsp', 'eighthTsp'] as const;
/** A spoon or a dry cup. */
export type HandMeasureId = (typeof handMeasureIds)[number];

/** What there is to measure with. */
export interface OnHand {
  /** Smallest step of the scale in grams; null when there is no scale. */
  readonly scaleStepG: number | null;
  readonly measures: readonly HandMeasureId[];
  /** From mark to mark of the measuring jug in millilitres; null when there is no jug. A US jug is marked in quarter cups whatever stands here. */
  readonly jugStepMl: number | null;
}

/** A kitchen with everything: a scale that shows tenths of a gram, all spoons and cups, a jug with marks every 5 ml. */
export const fullSet: OnHand = { scaleStepG: 0.1, measures: handMeasureIds, jugStepMl: 5 };

/** Below this many grams a spoon is surer than a usual kitchen scale (common practice, no source). */
const spoonsBelowG = 5;
/** A scale is off by half its step: from five steps on by a tenth at most (our choice). */
const stepsToTrust = 5;

/** Grams from which things are weighed rather than spooned: 5 g, or five steps of the scale; infinite without a scale. */
export const weighsFromG = (onHand: OnHand): number => (onHand.scaleStepG === null ? Number.POSITIVE_INFINITY : Math.max(spoonsBelowG, stepsToTrust * onHand.scaleStepG));

/** A spoon or cup as a part of the unit it is read in. `cup` stands for the household's own cup. */
export interface HandMeasure {
  readonly unit: Extract<UnitId, 'cup' | 'tbsp' | 'tsp'>;
  readonly part: Big;
}

const third = new Big(1).div(3);
/** Sizes by id. */
export const handMeasures: Readonly<Record<HandMeasureId, HandMeasure>> = {
  cup: { unit: 'cup', part: new Big(1) }, halfCup: { unit: 'cup', part: new Big('0.5') }, thirdCup: { unit: 'cup', part: third }, quarterCup: { unit: 'cup', part: new Big('0.25') },
  tbsp: { unit: 'tbsp', part: new Big(1) }, halfTbsp: { unit: 'tbsp', part: new Big('0.5') },
  tsp: { unit: 'tsp', part: new Big(1) }, halfTsp: { unit: 'tsp', part: new Big('0.5') }, quarterTsp: { unit: 'tsp', part: new Big('0.25') }, eighthTsp: { unit: 'tsp', part: new Big('0.125') },
};
