import { gasNeeds, planBuying, type BuyingPlan, type Need } from '../buying';
import type { Event } from '../event';
import { planDayAndList, type DayInputs, type TimelinePlan } from '../timeline';

/** The list and the day, which need each other: what has to be bought of bottled gas follows from the day, the length of the shopping from the list. */
export const shopAndDay = (event: Event, needs: readonly Need[], inputs: Omit<DayInputs, 'buying'>): { readonly buying: BuyingPlan; readonly day: TimelinePlan } =>
  planDayAndList(event, inputs, (gas) => planBuying(event, gas === null ? needs : [...needs, ...gasNeeds(gas.wantedKg)]));
