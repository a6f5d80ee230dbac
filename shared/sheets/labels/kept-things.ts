import { figure, plus, workingOf, worked, type Figure } from '../../figure';
import { dimensionOf } from '../../measure';
import { keptParts, type KeptPart } from '../../menu';
import type { Plan } from '../../plan';
import { recipeJobs } from '../lists/ahead';

/** Something made ahead that waits in boxes or bags, with its times. */
export interface KeptThing extends KeptPart {
  /** When it is first filled; minutes from the event's midnight. */
  readonly madeAt: number;
  /** It is good until then; minutes from the event's midnight. */
  readonly useBy: number;
  /** When it is taken out: the dish is first served; null when it stays as stock. */
  readonly neededAt: number | null;
}

/**
 * Everything that waits in boxes or bags, before the doors open or later, by when it is made. A box that is worked on again is good until the day its last step gives.
 */
export function keptThings(plan: Plan): readonly KeptThing[] {
  const jobs = recipeJobs(plan);
  const guests = plan.guests.adults.value + plan.guests.children.value > 0;
  const bowlsOf = (dish: string): number => plan.frying.bowls.filter((bowl) => bowl.dish === dish).length;
  return plan.menu.dishes.flatMap((dish) => keptParts(plan.event, dish, bowlsOf(dish.id)).flatMap((part): KeptThing[] => {
    const ends = jobs.filter((job) => job.dish?.id === dish.id && job.step !== undefined && part.steps.includes(job.step.id)).map((job) => job.row.end);
    if (ends.length === 0) return [];
    const stock = dish.recipe.role === 'preserve' || part.keeps.place === 'freezer' || !guests;
    return [{ ...part, madeAt: Math.min(...ends), useBy: Math.max(...ends) + part.keeps.minutes, neededAt: stock ? null : dish.firstServed }];
  })).toSorted((a, b) => a.madeAt - b.madeAt);
}

/** Room the boxes of one place take when most of them stand there at once; null when none is measured in litres. */
export function roomIn(plan: Plan, place: 'cold' | 'freezer'): Figure | null {
  const things = keptThings(plan).filter((thing) => thing.keeps.place === place).flatMap((thing) => (thing.boxes.litres === null ? [] : [{ thing, litres: thing.boxes.litres }]));
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
