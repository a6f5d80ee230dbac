import { needsOfMenu, thingNeeds } from '../buying';
import { planCooking } from '../cooking';
import { drinksNeeds, planDrinks } from '../drinks';
import type { Event } from '../event';
import { fryingNeeds, planFrying, reserveBowls } from '../frying';
import { planGuests } from '../guests';
import { planKitchen } from '../kitchen';
import { planMenu } from '../menu';
import { planSafety } from '../safety';
import { shopAndDay } from './shop-and-day';
import { stoodTooLong } from './stood';
import type { Plan } from './types';

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
  const cooking = planCooking(event, menu, drinks.rounds);
  const food = [...needsOfMenu(event, menu, reserveBowls(menu.dishes, frying)), ...fryingNeeds(event, frying), ...drinksNeeds(drinks)];
  const { buying, day } = shopAndDay(event, [...food, ...thingNeeds(event, { guests, menu, food, bowls: frying.bowls })], { guests, menu, kitchen, frying, drinks, cooking });
  const safety = planSafety(event, { guests, menu, buying, kitchen, frying, drinks, cooking, day });
  const notes = [...stoodTooLong(menu, cooking, day), ...cooking.notes];
  return { event, guests, menu, buying, kitchen, frying, drinks, cooking: { ...cooking, notes }, day, safety };
}
