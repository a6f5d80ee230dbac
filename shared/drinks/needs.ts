import type { Need } from '../buying';
import type { DrinksPlan } from './types';

/** What all rounds take, by drink. Exact sums of the rounds' amounts. */
export const drinksNeeds = (drinks: DrinksPlan): Need[] =>
  drinks.rounds.flatMap((round) => round.ingredients.map((i) => ({ ingredient: i.ingredient, amount: i.amount, origin: round.drink })));
