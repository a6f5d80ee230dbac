import { gasNeeds, planBuying, type BuyingPlan, type Need } from '../buying';
import type { Event } from '../event';
import { planDay, type DayInputs, type TimelinePlan } from '../timeline';

/**
 * The list and the day, which need each other: the day says how much bottled gas is burned, the list how long the shopping takes. Where gas is
 * to be bought the day is laid out once more, with that on its list; the list then has the gas of the day that is shown.
 */
export function shopAndDay(event: Event, needs: readonly Need[], inputs: Omit<DayInputs, 'buying'>): { readonly buying: BuyingPlan; readonly day: TimelinePlan } {
  const without = planBuying(event, needs);
  const first = planDay(event, { ...inputs, buying: without });
  if (first.gasNeed === null) return { buying: without, day: first };
  const withGas = (day: TimelinePlan): BuyingPlan => planBuying(event, [...needs, ...gasNeeds(day.gasNeed?.wantedKg ?? null)]);
  const buying = withGas(first);
  const toBuy = (list: BuyingPlan): number => list.lines.filter((l) => l.buy.amount.gt(0)).length;
  if (toBuy(buying) === toBuy(without)) return { buying, day: first };
  const day = planDay(event, { ...inputs, buying });
  return { buying: day.gasNeed?.wantedKg.value === first.gasNeed.wantedKg.value ? buying : withGas(day), day };
}
