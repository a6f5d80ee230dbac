import type { BuyingPlan } from '../buying';
import type { Event } from '../event';
import type { DayDraft, DayInputs } from './draft';
import { gasNeed } from './gas';
import { tripsFor } from './house-jobs';
import type { LaidOut } from './lay-out';
import { takeBack } from './place';
import { dayOf } from './plan-day';
import { standingDay } from './printed-jobs';
import { backTo, bookedNow } from './resources';
import { placeShopping } from './shopping';
import { tasksOf } from './tasks';
import type { GasNeed, TimelinePlan } from './types';

/** The same day with another shopping list: only the trips to the shops are laid out again, everything else stays. */
function shopAgain(laidOut: LaidOut, buying: BuyingPlan): LaidOut {
  const { resources } = laidOut.draft;
  const { event, inputs } = laidOut.draft;
  const draft: DayDraft = { ...laidOut.draft, inputs: { ...inputs, buying }, trips: inputs.menu.dishes.length === 0 ? [] : tripsFor(resources.values, buying, event.day) };
  backTo(resources, laidOut.booked);
  for (const p of laidOut.placed) if (p.job.kind === 'shop') takeBack(resources, p);
  const { placed, off } = placeShopping(draft, laidOut.placed.filter((p) => p.job.kind === 'step'));
  return {
    ...laidOut, draft, placed: [...laidOut.placed.filter((p) => p.job.kind !== 'shop'), ...placed], booked: bookedNow(resources),
    off: [...laidOut.off.filter((o) => !o.job.startsWith('shop/')), ...off],
  };
}

const onBurner = (p: LaidOut['placed'][number]): boolean => p.things && p.job.stretches.some((s) => s.needs.some((n) => n.thing.startsWith('burner')));

const toBuy = (list: BuyingPlan): number => list.lines.filter((l) => l.buy.amount.gt(0)).length;

/**
 * The day and the shopping list, which need each other: the day says how much bottled gas is burned, the list how long the shopping takes.
 * The day is laid out once; when the gas makes the list longer, its trips are laid out again.
 * @param listFor the list for so much gas; for none when null.
 */
export function planDayAndList(event: Event, inputs: Omit<DayInputs, 'buying'>, listFor: (gas: GasNeed | null) => BuyingPlan): { readonly buying: BuyingPlan; readonly day: TimelinePlan } {
  const without = listFor(null);
  const { laidOut: best, letGo } = standingDay(event, { ...inputs, buying: without });
  const need = event.kitchen.burners.some((b) => b.kind !== 'electric' && b.kind !== 'induction') ? gasNeed(event, tasksOf(best.draft.resources, best.placed.filter(onBurner))) : null;
  if (need === null) return { buying: without, day: dayOf(best, letGo) };
  const buying = listFor(need);
  return { buying, day: dayOf(toBuy(buying) === toBuy(without) ? best : shopAgain(best, buying), letGo) };
}
