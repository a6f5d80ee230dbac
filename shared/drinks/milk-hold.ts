import type { Brewing, Event } from '../event';
import { settle } from '../household';

/** A hot drink with milk in it: milk grows germs and a skin, so it has a rule of its own. */
export const isMilkDrink = (brewing: Brewing): boolean => brewing.hot && brewing.milkShare > 0;

/**
 * How a drink is held: one with milk in it at most the settled minutes after it is ready, and never served under the settled temperature, whatever its
 * recipe allows. Both from `drinks.milkMinutes` and `drinks.milkC`.
 */
export function heldAs(event: Event, brewing: Brewing): Brewing {
  if (!isMilkDrink(brewing)) return brewing;
  return {
    ...brewing, goodForMinutes: Math.max(5, Math.min(brewing.goodForMinutes, Math.round(settle(event, 'drinks.milkMinutes').value))),
    serveAboveC: Math.max(brewing.serveAboveC ?? 0, settle(event, 'drinks.milkC').value),
  };
}
