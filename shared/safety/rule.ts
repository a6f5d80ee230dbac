import type { Event } from '../event';
import type { Figure } from '../figure';
import type { DishPlan } from '../menu';
import type { DayInputs, TimelinePlan } from '../timeline';
import type { Message } from '../words';
import type { Level } from './types';

/** The plans of the other rooms, which the rules judge. */
export interface SafetyInput extends DayInputs {
  readonly day: TimelinePlan;
}

/** What a rule looks at: the event and its plans. */
export interface Subject extends SafetyInput {
  readonly event: Event;
}

/** One thing a rule objects to. `limit` is the table's when left out. */
export interface Hit {
  readonly value: number;
  readonly unit: string;
  readonly limit?: { readonly value: number; readonly unit: string };
  /** The measured value with its working, where a sum stands behind it. */
  readonly figure?: Figure;
  readonly message: Message;
  readonly about: readonly string[];
}

/** What a rule says: what it objects to, and which input it would need to judge the rest. */
export interface Verdict {
  readonly hits: readonly Hit[];
  readonly needs?: Message;
}

/** A rule with one level. */
export interface Rule {
  readonly id: string;
  readonly level: Level;
  readonly title: Message;
  readonly judge: (subject: Subject) => Verdict;
  /** The rule that judges for this one; its verdict is reached once. */
  readonly behind?: Rule;
}

/** The event's own dish behind a planned dish: how it waits and when it is served. */
export const holdingOf = (s: Subject, dish: DishPlan) => s.event.menu.dishes.find((d) => d.id === dish.id)?.holding;

/** Ids of the ingredients of a dish. */
export const ingredientIds = (dish: DishPlan): readonly string[] => dish.recipe.ingredients.map((l) => l.ingredient);

/** Items with the largest measure first, one for each key: a dish with twenty late batches is one finding, not twenty. */
export function worstOfEach<T>(items: readonly T[], key: (item: T) => string, measure: (item: T) => number): readonly T[] {
  const worst = new Map<string, T>();
  for (const item of items) {
    const before = worst.get(key(item));
    if (before === undefined || measure(item) > measure(before)) worst.set(key(item), item);
  }
  return [...worst.values()];
}
