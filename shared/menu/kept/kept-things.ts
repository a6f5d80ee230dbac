import type { Event, Step } from '../../event';
import type { Amount } from '../../measure';
import type { DishPlan } from '../types';
import { keptLines } from './kept-foods';
import { bagsFor, boxesFor, gramsOfLines, litresOfDish, litresOfLines, type Boxes } from './kept-volume';

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

function boxed(event: Event, dish: DishPlan, step: Step, place: KeptPart['keeps']['place']): Pick<KeptPart, 'foods' | 'amount' | 'boxes'> {
  const frozen = place === 'freezer';
  const lines = keptLines(dish, step);
  if (lines !== null) {
    return { foods: [...new Set(lines.map((line) => line.ingredient))], amount: gramsOfLines(lines), boxes: boxesFor(event, litresOfLines(lines, step.does), frozen ? 'prep.boxFreezer' : 'prep.boxCut') };
  }
  const litres = litresOfDish(dish);
  return { foods: null, amount: dish.total, boxes: litres === null ? bagsFor(event, dish.totalFigure) : boxesFor(event, litres, frozen ? 'prep.boxFreezer' : 'prep.boxCooked') };
}

/** One box goes on when the same foods are worked on again and kept in the same place: washed, then cut. */
const goesOn = (first: KeptPart, next: KeptPart): boolean =>
  first.keeps.place === next.keeps.place && first.foods !== null && next.foods !== null && first.foods.every((food) => next.foods?.includes(food) === true);

/** What of a dish waits in boxes or bags, in the order of its recipe. A box that is filled once and worked on again is told once. */
export function keptParts(event: Event, dish: DishPlan): readonly KeptPart[] {
  const joined: KeptPart[] = [];
  for (const step of dish.recipe.steps) {
    const { keeps } = step;
    if (keeps === undefined || !fillsBoxes(step)) continue;
    const part: KeptPart = { key: `${dish.id}/${step.id}`, dish, steps: [step.id], keeps, ...boxed(event, dish, step, keeps.place) };
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
