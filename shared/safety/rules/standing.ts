import type { Figure } from '../../figure';
import type { DishPlan } from '../../menu';
import type { Subject } from '../rule';
import { hoursBetween } from './hours';

/** A stretch in which one cooking or one bowl of a dish stands. Minutes from midnight. */
interface Stood {
  readonly from: number;
  readonly until: number;
}

/** When what is served from `first` on is ready: the end of its last step that ends before; of one cooking where the dish is cooked several times. */
function readyAt(s: Subject, dish: DishPlan, first: number, cooking: number | null): number {
  let ready: number | null = null;
  for (const t of s.day.tasks) if (t.kind === 'step' && t.dish === dish.id && (cooking === null || t.cooking === undefined || t.cooking === cooking) && t.end <= first && (ready === null || t.end > ready)) ready = t.end;
  return ready ?? first;
}

/** How long each cooking of a dish stands, or, of what stands in the fridge and is put out bowl by bowl, each bowl. */
function stretches(s: Subject, dish: DishPlan): readonly Stood[] {
  if (dish.firstServed === null || dish.lastServed === null) return [];
  const made = s.cooking.dishes.find((c) => c.dish === dish.id);
  if (made !== undefined && made.bowls.length > 0) return made.bowls.map((b) => ({ from: b.from, until: b.to }));
  if (made === undefined || made.cookings.length < 2) return [{ from: readyAt(s, dish, dish.firstServed, null), until: dish.lastServed }];
  return made.cookings.map((c) => ({ from: readyAt(s, dish, c.from, c.number), until: c.to }));
}

/** The stretch in which a dish stands longest before its last portion; null when nobody is served. */
function longest(s: Subject, dish: DishPlan): Stood | null {
  return stretches(s, dish).reduce<Stood | null>((worst, x) => (worst === null || x.until - x.from > worst.until - worst.from ? x : worst), null);
}

/** Minutes a dish stands before its last portion: of one cooking or one bowl where there are several. Returns null when nobody is served. */
export function minutesOut(s: Subject, dish: DishPlan): number | null {
  const stood = longest(s, dish);
  return stood === null ? null : stood.until - stood.from;
}
/** The same in hours, with its working. */
export function hoursOut(s: Subject, dish: DishPlan): Figure | null {
  const stood = longest(s, dish);
  return stood === null ? null : hoursBetween(stood.from, stood.until);
}
