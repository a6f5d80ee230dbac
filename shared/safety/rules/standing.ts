import type { Figure } from '../../figure';
import type { DishPlan } from '../../menu';
import type { Subject } from '../rule';
import { hoursBetween } from './hours';

/** From when a dish stands: the end of its last step that is ready before it is served, or its first portion. Minutes; null when nobody is served. */
function standsFrom(s: Subject, dish: DishPlan): number | null {
  const first = dish.firstServed;
  if (first === null) return null;
  let ready: number | null = null;
  for (const t of s.day.tasks) if (t.kind === 'step' && t.dish === dish.id && t.end <= first && (ready === null || t.end > ready)) ready = t.end;
  return ready ?? first;
}

/** Minutes a dish stands before its last portion. Returns null when nobody is served. */
export function minutesOut(s: Subject, dish: DishPlan): number | null {
  const from = standsFrom(s, dish);
  return from === null || dish.lastServed === null ? null : dish.lastServed - from;
}
/** The same in hours, with its working. */
export function hoursOut(s: Subject, dish: DishPlan): Figure | null {
  const from = standsFrom(s, dish);
  return from === null || dish.lastServed === null ? null : hoursBetween(from, dish.lastServed);
}
