import { eventSchema, type Event } from '../../../shared/event';
import { amountOf, type UnitId } from '../../../shared/measure';
import { planBuying, type BuyingPlan, type Need, type ShoppingLine } from '../../../shared/buying';

/** An event with no guests; `more` brings larder, prices and units. */
export const shopEvent = (more: Readonly<Record<string, unknown>> = {}): Event =>
  eventSchema.parse({ format: 'brimful-event/1', id: 'test', title: 'Test', day: '2026-12-12', opensAt: 660, closesAt: 1200, ...more });

export const needOf = (ingredient: string, amount: string | number, unit: UnitId, origin = 'a'): Need => ({ ingredient, amount: amountOf(amount, unit), origin });

export const buy = (needs: readonly Need[], more: Readonly<Record<string, unknown>> = {}): BuyingPlan => planBuying(shopEvent(more), needs);

/** The only line of a food. @throws when there is none. */
export function line(plan: BuyingPlan, id: string): ShoppingLine {
  const found = plan.lines.find((l) => l.ingredient === id);
  if (found === undefined) throw new Error(`no line ${id}`);
  return found;
}
