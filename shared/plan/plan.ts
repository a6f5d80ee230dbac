import { needsOfMenu, planBuying, thingNeeds, type HeatUse } from '../buying';
import { drinksNeeds, planDrinks, type DrinksPlan } from '../drinks';
import type { Event } from '../event';
import { fryingNeeds, planFrying, type FryingPlan } from '../frying';
import { planGuests } from '../guests';
import { planKitchen } from '../kitchen';
import { planMenu } from '../menu';
import { planSafety } from '../safety';
import { planDay } from '../timeline';
import type { Plan } from './types';

/** Burners at work: pans of oil from heat on to heat off, rounds of drinks to the boil at full flame. */
const heatUses = (event: Event, frying: FryingPlan, drinks: DrinksPlan): HeatUse[] => [
  ...frying.sessions.flatMap((s) => {
    const pan = event.kitchen.pans.find((p) => p.id === s.pan);
    return pan === undefined ? [] : [{ burner: pan.burner, minutes: s.heatOffAt - s.heatOnAt, share: null }];
  }),
  ...drinks.rounds.flatMap((r) => (r.burner === null ? [] : [{ burner: r.burner, minutes: r.heatMinutes.value, share: 1 }])),
];

/**
 * Everything that follows from an event: guests, portions, shopping, frying, drinks, the day, safety.
 * Pure and deterministic bit for bit. Never throws for an event that `parseEvent` accepted; what cannot be planned is a finding.
 */
export function plan(event: Event): Plan {
  const guests = planGuests(event);
  const menu = planMenu(event, guests);
  const kitchen = planKitchen(event);
  const frying = planFrying(event, menu, kitchen);
  const drinks = planDrinks(event, menu, kitchen);
  const food = [...needsOfMenu(event, menu), ...fryingNeeds(event, frying), ...drinksNeeds(drinks)];
  const buying = planBuying(event, [...food, ...thingNeeds(event, { guests, menu, food, heat: heatUses(event, frying, drinks) })]);
  const day = planDay(event, { guests, menu, buying, kitchen, frying, drinks });
  const safety = planSafety(event, { guests, menu, buying, kitchen, frying, drinks, day });
  return { event, guests, menu, buying, kitchen, frying, drinks, day, safety };
}
