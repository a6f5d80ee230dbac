import { useState } from 'react';
import type { Plan } from '../../../shared/plan';

/** The stretch of the day the board shows, whole hours: from the first heating, brewing or cooking of the morning to the last guest leaving. */
export function daySpan(plan: Plan): { readonly from: number; readonly to: number } {
  const { event } = plan;
  const { presence } = plan.guests;
  const near = (before: number) => (at: number): boolean => at >= event.opensAt - before && at <= event.closesAt + 90;
  const starts = [
    event.opensAt - 60,
    ...plan.guests.waves.map((w) => w.from),
    ...plan.frying.sessions.map((s) => s.heatOnAt).filter(near(240)),
    ...plan.drinks.rounds.map((r) => r.startAt).filter(near(180)),
    // Cooking long before the doors open is told in words; it would squeeze the hours that matter.
    ...plan.day.tasks.map((task) => task.start).filter(near(120)),
  ];
  const lastPresent = presence.fromMinute + presence.p90.findLastIndex((n) => n > 0.5);
  const ends = [event.closesAt + 30, lastPresent, ...plan.frying.sessions.map((s) => s.heatOffAt), ...plan.day.tasks.map((task) => task.end)].filter(near(0));
  return { from: Math.floor(Math.min(...starts) / 60) * 60, to: Math.ceil(Math.max(...ends) / 60) * 60 };
}

/** The span, held still while something is dragged so that the ground does not move under the pointer. */
export function useDaySpan(plan: Plan, hold: boolean): { readonly from: number; readonly to: number } {
  const fresh = daySpan(plan);
  const [held, setHeld] = useState(fresh);
  if (hold || (held.from === fresh.from && held.to === fresh.to)) return held;
  setHeld(fresh);
  return fresh;
}
