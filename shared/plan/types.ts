import type { BuyingPlan } from '../buying';
import type { CookingPlan } from '../cooking';
import type { DrinksPlan } from '../drinks';
import type { Event } from '../event';
import type { FryingPlan } from '../frying';
import type { GuestsPlan } from '../guests';
import type { KitchenPlan } from '../kitchen';
import type { MenuPlan } from '../menu';
import type { SafetyPlan } from '../safety';
import type { TimelinePlan } from '../timeline';

/** Everything computed from one event. A pure value; the same event gives the same plan bit for bit. */
export interface Plan {
  readonly event: Event;
  readonly guests: GuestsPlan;
  readonly menu: MenuPlan;
  readonly buying: BuyingPlan;
  readonly kitchen: KitchenPlan;
  readonly frying: FryingPlan;
  readonly drinks: DrinksPlan;
  readonly cooking: CookingPlan;
  readonly day: TimelinePlan;
  readonly safety: SafetyPlan;
}
