import { bandIds, type Event } from '../event';
import { invitedCounts } from '../guests';
import type { DishPlan } from '../menu';
import type { Message } from '../words';

/** What to say when guests are invited to a menu without drinking water; nothing while there is no guest or no dish yet. */
export function withoutWater(event: Event, dishes: readonly DishPlan[]): Message[] {
  const people = invitedCounts(event).some((counts) => bandIds.some((band) => counts[band] > 0));
  return people && dishes.length > 0 && !dishes.some((d) => d.recipe.role === 'water') ? [{ id: 'drinks.advice.noWater' }] : [];
}
