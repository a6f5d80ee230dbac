import type { Event, Step } from '../../event';
import type { Amount } from '../../measure';
import type { DishPlan } from '../types';
import { keptLines } from './kept-foods';
import { bagsFor, bowlBags, boxesFor, gramsOfLines, litresOfDish, litresOfLines, swellOf, type Boxes } from './kept-volume';

/** Something of a dish that is made beforehand and waits in boxes or bags. When it is made, the day says. */
export interface KeptPart {
  /** Stable: the dish and the first of its steps. */
  readonly key: string;
  readonly dish: DishPlan;
  /** Ids of the recipe's steps that fill these boxes or work on what is in them, in the recipe's order. */
  readonly steps: readonly string[];
  /** Ids of the foods in it; null for the whole dish. */
  readonly foods: readonly string[] | null;
  readonly keeps: NonNullable<Step['keeps']>;
  readonly amount: Amount;
  /** The amount is that of the dry food, which has been soaked since: it weighs more in the box. */
  readonly soaked: boolean;
  readonly boxes: Boxes;
}

/** What is kept for less than this on the counter stands in its own bowl or tin; minutes (common practice, no source). */
const counterFrom = 480;

/** True for a step whose result waits in boxes. Finishing a bowl and frying it is no making ahead; a jug set out is no box. */
function fillsBoxes(step: Step): boolean {
  const { keeps, does } = step;
  if (keeps === undefined || keeps.place === 'hot' || (keeps.place === 'counter' && keeps.minutes < counterFrom)) return false;
  return does !== 'fry' && does !== 'serve' && does !== 'brew';
}

/** The dry mix of a batter waits in a bag for each bowl, so that a bowl is finished without weighing. */
const isDryMix = ({ recipe }: DishPlan, { does }: Step): boolean => does === 'mix' && recipe.frying !== undefined && recipe.frying.bowlMinutes !== null;

function boxed(event: Event, dish: DishPlan, step: Step, place: KeptPart['keeps']['place'], soaked: ReadonlySet<string>, bowls: number): Pick<KeptPart, 'foods' | 'amount' | 'soaked' | 'boxes'> {
  const frozen = place === 'freezer';
  const lines = keptLines(dish, step);
  if (lines !== null) {
    const part = { foods: [...new Set(lines.map((line) => line.ingredient))], amount: gramsOfLines(lines), soaked: lines.some((line) => swellOf(line.ingredient, soaked) > 1) };
    if (bowls > 0 && isDryMix(dish, step)) return { ...part, boxes: bowlBags(bowls) };
    return { ...part, boxes: boxesFor(event, litresOfLines(lines, soaked), frozen ? 'prep.boxFreezer' : 'prep.boxCut') };
  }
  const litres = litresOfDish(dish);
  return { foods: null, amount: dish.total, soaked: false, boxes: litres === null ? bagsFor(event, dish.totalFigure) : boxesFor(event, litres, frozen ? 'prep.boxFreezer' : 'prep.boxCooked') };
}

/** One box goes on when the same foods are worked on again and kept in the same place: washed, then cut. */
const goesOn = (first: KeptPart, next: KeptPart): boolean =>
  first.keeps.place === next.keeps.place && first.foods !== null && next.foods !== null && first.foods.every((food) => next.foods?.includes(food) === true);

/**
 * What of a dish waits in boxes or bags, in the order of its recipe. A box that is filled once and worked on again is told once.
 * @param bowls of batter the dish is fried from, 0 or more.
 */
export function keptParts(event: Event, dish: DishPlan, bowls: number): readonly KeptPart[] {
  const joined: KeptPart[] = [];
  const soaked = new Set<string>();
  for (const step of dish.recipe.steps) {
    const { keeps } = step;
    if (step.does === 'soak' || step.does === 'sprout') for (const line of keptLines(dish, step) ?? dish.lines) soaked.add(line.ingredient);
    if (keeps === undefined || !fillsBoxes(step)) continue;
    const part: KeptPart = { key: `${dish.id}/${step.id}`, dish, steps: [step.id], keeps, ...boxed(event, dish, step, keeps.place, soaked, bowls) };
    if (part.amount.amount.lte(0)) continue;
    const at = joined.findIndex((first) => goesOn(first, part));
    const first = joined[at];
    if (first === undefined) joined.push(part);
    else joined[at] = { ...part, key: first.key, steps: [...first.steps, ...part.steps] };
  }
  return joined;
}

/** Food that is kept when it is left over: no drinks, no fried things (they do not keep their bite), nothing that was put by as stock. */
export const mayBeLeft = (dish: DishPlan): boolean =>
  dish.servedAs !== 'cup' && dish.recipe.frying === undefined && dish.recipe.role !== 'preserve' && dish.portions.value > 0 && dish.lastServed !== null;
