import { figure, plus, worked, type Figure } from '../../figure';
import type { GuestsPlan, WavePlan } from '../../guests';
import { bandIds } from '../../event';
import type { DishPlan } from '../../menu';

const peopleOf = (wave: WavePlan): number => bandIds.reduce((sum, band) => sum + wave.planned[band], 0);

/** True when somebody of the wave can be there while the dish is on the table. */
const meets = (wave: WavePlan, dish: DishPlan): boolean =>
  dish.firstServed !== null && dish.lastServed !== null && wave.from <= dish.lastServed && wave.to + wave.stay.longest >= dish.firstServed;

/**
 * Guests who can come to any of these dishes: the waves that are there while they are served, at the counts the amounts are planned for.
 * Null when there are none. Unit: people.
 */
export function eatersOf(guests: GuestsPlan, dishes: readonly DishPlan[]): Figure | null {
  const there = guests.waves.filter((wave) => peopleOf(wave) > 0 && dishes.some((dish) => meets(wave, dish)));
  if (there.length === 0) return null;
  return figure(there.reduce((sum, wave) => sum + peopleOf(wave), 0), 'people', () => {
    const terms = there.map((wave, i) => ({
      key: `w${i}`, label: { text: wave.name }, value: peopleOf(wave), unit: 'people', origin: { kind: 'computed' as const, method: 'buying.method.planned' },
    }));
    return { rule: 'things.people', terms, sum: plus(...terms.map((t) => t.key)) };
  });
}

/** Portions, pieces or cups of several dishes as terms of a working, and their sum. */
export function portionTerms(dishes: readonly DishPlan[]): { readonly terms: ReturnType<typeof worked>[]; readonly total: number; readonly keys: readonly string[] } {
  const terms = dishes.map((dish, i) => worked(`d${i}`, { text: dish.name }, dish.portions));
  return { terms, total: dishes.reduce((sum, dish) => sum + dish.portions.value, 0), keys: terms.map((t) => t.key) };
}
