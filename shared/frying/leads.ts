import type { Event, Frying } from '../event';
import type { DishPlan } from '../menu';
import type { DishPart } from './dish-parts';
import type { FrySolution } from './exact';
import type { LeadPlan } from './types';

/** The lead in force on each line that fries something of a dish, and a note where it had to be cut. A lead longer than the hold could never be kept. */
export function leadsOf(event: Event, dish: DishPlan, frying: Frying, parts: readonly DishPart[], solutions: readonly FrySolution[]): LeadPlan[] {
  const wanted = Math.floor(event.preferences.fryLeadMinutes);
  const hold = Math.floor(frying.holdMinutes);
  return parts.flatMap(({ line }, at): LeadPlan[] => {
    const solution = solutions[at];
    if (solution === undefined || solution.batches.length === 0) return [];
    const minutes = solution.lead;
    const params = { dish: dish.name, station: line.station.name, minutes, wanted };
    const note: LeadPlan['note'] = minutes >= wanted ? null : minutes >= hold ? { id: 'frying.lead.hold', params } : { id: 'frying.lead.cut', params };
    return [{ dish: dish.id, station: line.station.id, wanted, minutes, note }];
  });
}
