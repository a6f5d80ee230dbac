import type { Event } from '../event';
import { settle } from '../household';
import { amountOf, convert, dimensionOf } from '../measure';
import type { DishPlan } from '../menu';
import type { Message } from '../words';
import type { DrinkLine } from './drink-line';
import { isMilkDrink } from './milk-hold';
import { apartOf, sweetLines } from './sweetening';
import type { BrewRound } from './types';

/** Grams of the sweet lines of some rounds; null where one is measured otherwise than by weight. */
function sweetGrams(ids: readonly string[], rounds: readonly BrewRound[]): number | null {
  const lines = rounds.flatMap((r) => r.ingredients.filter((i) => ids.includes(i.ingredient)));
  if (lines.some((l) => dimensionOf(l.amount.unit) !== 'mass')) return null;
  return lines.reduce((sum, l) => sum + convert(amountOf(l.amount.amount, l.amount.unit), 'g').amount.toNumber(), 0);
}

/** How strong a drink is, where its sugar is, how many of its cups are without caffeine, and what holds for milk in it; what a tea-maker and a guest ask. */
export function madeNotes(event: Event, line: DrinkLine, dishes: readonly DishPlan[], rounds: readonly BrewRound[]): Message[] {
  const { dish, brewing } = line;
  const notes: Message[] = [];
  const mine = rounds.filter((r) => r.drink === dish.id);
  if (brewing.doseGPerL > 0 && brewing.hot) notes.push({ id: 'drinks.note.strength', params: { grams: brewing.doseGPerL } });
  const sweet = sweetLines(dish.recipe);
  if (sweet.length > 0 && mine.length > 0) {
    const grams = sweetGrams(sweet, mine);
    const cups = Math.max(1, dish.portions.value);
    if (apartOf(dish.recipe).length > 0) notes.push(grams === null ? { id: 'drinks.note.sugarBeside' } : { id: 'drinks.note.sugarApart', params: { grams: Math.round(grams) } });
    else notes.push(grams === null ? { id: 'drinks.note.sweetened' } : { id: 'drinks.note.sugarIn', params: { grams: grams / cups < 10 ? Math.round((grams / cups) * 2) / 2 : Math.round(grams / cups) } });
  }
  if (brewing.hot) notes.push(...caffeineNote(dish, dishes));
  if (isMilkDrink(brewing)) notes.push({ id: 'drinks.note.milk', params: { minutes: brewing.goodForMinutes, celsius: brewing.serveAboveC ?? settle(event, 'drinks.milkC').value } });
  return notes;
}

/** Share of the cups without caffeine, told of the drink that has a twin without; of any other whether it has caffeine. */
function caffeineNote(dish: DishPlan, dishes: readonly DishPlan[]): Message[] {
  if (dish.recipe.brewing?.caffeinated !== true) return [{ id: 'drinks.note.noCaffeine' }];
  const without = dishes.filter((d) => d.recipe.id.startsWith(`${dish.recipe.id}-decaf`)).reduce((sum, d) => sum + d.portions.value, 0);
  if (without <= 0) return [{ id: 'drinks.note.caffeine' }];
  return [{ id: 'drinks.note.decafShare', params: { cups: Math.round(without), of: Math.round(without + dish.portions.value), share: without / (without + dish.portions.value) } }];
}
