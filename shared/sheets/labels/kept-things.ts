import type { Step } from '../../event';
import { figure, plus, workingOf, worked, type Figure } from '../../figure';
import { dimensionOf, type Amount } from '../../measure';
import type { DishPlan } from '../../menu';
import type { Plan } from '../../plan';
import { madeAhead, type AheadJob, type KeepingPlace } from '../lists/ahead';
import { keptLines } from './kept-foods';
import { bagsFor, boxesFor, gramsOfLines, litresOfDish, litresOfLines, type Boxes } from './kept-volume';

/** Something made ahead that waits in boxes or bags. */
export interface KeptThing {
  /** Stable: dish and step. */
  readonly key: string;
  readonly dish: DishPlan;
  /** Ids of the recipe's steps that fill these boxes or work on what is in them. */
  readonly steps: readonly string[];
  /** Ids of the foods in it; null for the whole dish. */
  readonly foods: readonly string[] | null;
  /** Minutes from the event's midnight. */
  readonly madeAt: number;
  /** It is good until then; minutes from the event's midnight. */
  readonly useBy: number;
  /** When it is taken out: the dish is first served; null when it stays as stock. */
  readonly neededAt: number | null;
  readonly place: KeepingPlace;
  readonly amount: Amount;
  readonly boxes: Boxes;
}

/** What is kept for less than this on the counter stands in its own bowl or tin; minutes (common practice, no source). */
const counterFrom = 480;

interface Waiting { readonly job: AheadJob; readonly dish: DishPlan; readonly keeps: NonNullable<Step['keeps']>; readonly step: Step }

function waiting(job: AheadJob): readonly Waiting[] {
  const { dish, step } = job;
  const keeps = step?.keeps;
  if (dish === undefined || step === undefined || keeps === undefined || keeps.place === 'hot' || (keeps.place === 'counter' && keeps.minutes < counterFrom)) return [];
  // Finishing a bowl and frying it is no making ahead; a jug set out is no box.
  return step.does === 'fry' || step.does === 'serve' || step.does === 'brew' ? [] : [{ job, dish, keeps, step }];
}

function boxed(plan: Plan, { dish, keeps, step }: Waiting): Pick<KeptThing, 'foods' | 'amount' | 'boxes'> {
  const lines = keptLines(dish, step);
  if (lines !== null) {
    return { foods: [...new Set(lines.map((line) => line.ingredient))], amount: gramsOfLines(lines), boxes: boxesFor(plan.event, litresOfLines(lines, step.does), keeps.place === 'freezer' ? 'prep.boxFreezer' : 'prep.boxCut') };
  }
  const litres = litresOfDish(dish);
  return { foods: null, amount: dish.total, boxes: litres === null ? bagsFor(plan.event, dish.totalFigure) : boxesFor(plan.event, litres, keeps.place === 'freezer' ? 'prep.boxFreezer' : 'prep.boxCooked') };
}

/** One box goes on when the same foods are worked on again and kept in the same place: washed, then cut. */
const goesOn = (first: KeptThing, next: KeptThing): boolean =>
  first.dish.id === next.dish.id && first.place === next.place && first.madeAt <= next.madeAt && first.useBy >= next.madeAt && first.foods !== null && next.foods !== null
  && first.foods.every((food) => next.foods?.includes(food) === true);

/**
 * Everything made ahead that waits in boxes or bags, by when it is made. A box that is filled once and worked on again is told once, with the day
 * it was first filled and the earlier of the two days it is good until.
 */
export function keptThings(plan: Plan): readonly KeptThing[] {
  const all = madeAhead(plan).flatMap(waiting).map((one): KeptThing => ({
    key: `${one.dish.id}/${one.step.id}`, dish: one.dish, steps: [one.step.id], place: one.keeps.place, madeAt: one.job.row.end, useBy: one.job.row.end + one.keeps.minutes,
    neededAt: one.dish.recipe.role !== 'preserve' && one.keeps.place !== 'freezer' && plan.guests.adults.value + plan.guests.children.value > 0 ? one.dish.firstServed : null, ...boxed(plan, one),
  })).filter((thing) => thing.amount.amount.gt(0));
  const joined: KeptThing[] = [];
  for (const thing of all) {
    const at = joined.findIndex((first) => goesOn(first, thing));
    const first = joined[at];
    if (first === undefined) joined.push(thing);
    else joined[at] = { ...thing, key: first.key, steps: [...first.steps, ...thing.steps], madeAt: first.madeAt };
  }
  return joined;
}

/** Room the boxes of one place take when most of them stand there at once; null when none is measured in litres. */
export function roomIn(plan: Plan, place: 'cold' | 'freezer'): Figure | null {
  const things = keptThings(plan).filter((thing) => thing.place === place).flatMap((thing) => (thing.boxes.litres === null ? [] : [{ thing, litres: thing.boxes.litres }]));
  const at = (minute: number) => things.filter(({ thing }) => thing.madeAt <= minute && (thing.neededAt === null || minute < Math.max(thing.neededAt, thing.madeAt + 1)));
  const sum = (list: typeof things): number => list.reduce((all, { litres }) => all + litres.value, 0);
  const most = things.map(({ thing }) => at(thing.madeAt)).reduce<typeof things>((best, here) => (sum(here) > sum(best) ? here : best), []);
  if (most.length === 0) return null;
  return figure(sum(most), 'L', () => {
    const terms = most.map(({ thing, litres }, i) => worked(`box${i + 1}`, { text: thing.dish.name }, litres));
    return workingOf('prep.space', terms, plus(...terms.map((term) => term.key)));
  });
}

/** True for a thing told in pieces. */
export const inPieces = (thing: KeptThing): boolean => dimensionOf(thing.amount.unit) === 'count';
