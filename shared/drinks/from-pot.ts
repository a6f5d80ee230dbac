import type { Brewing, Event } from '../event';
import type { Message } from '../words';
import { dispenserPlan } from './dispensers';
import type { DrinkLine } from './drink-line';
import { heldAs } from './milk-hold';
import type { Vessel } from './vessels';

/**
 * How a drink is poured: from a pot, for want of a flask, it is served until it is old, however cool. Brewing afresh whenever the open pot
 * cools would pour away most of it and keep the stove busy; the people are served, and it is said that it cools.
 */
export const pouredFrom = (vessels: readonly Vessel[], brewing: Brewing): Brewing =>
  vessels.some((v) => v.pot !== null) ? { ...brewing, serveAboveC: null } : brewing;

/** Says of a drink poured from a pot how soon after a filling it is cooler than it should be served; nothing when it never is. */
export function coolFromPot(event: Event, line: DrinkLine): Message[] {
  const brewing = line.dish.recipe.brewing;
  const limit = brewing === undefined ? null : heldAs(event, brewing).serveAboveC;
  if (limit === null) return [];
  return line.vessels.flatMap((vessel): Message[] => {
    const plan = vessel.pot === null ? null : dispenserPlan(line, vessel);
    if (plan === null) return [];
    const cool = plan.celsius.findIndex((c, i) => c < limit && (plan.litres[i] ?? 0) > 1e-9);
    if (cool < 0) return [];
    const at = plan.fromMinute + cool;
    const filledAt = line.fillings.filter((f) => f.vessel === vessel && f.serving.at <= at).reduce((last, f) => Math.max(last, f.serving.at), Number(plan.fromMinute));
    return [{ id: 'drinks.problem.coolFromPot', params: { drink: line.dish.name, pot: vessel.name, minutes: at - filledAt, celsius: limit } }];
  });
}
