import type { Need } from '../buying';
import { amountOf } from '../measure';
import type { DrinksPlan } from './types';

/** Ice is bought by the half kilogram at least: each drink's share is rounded up to a tenth. */
const tenthsUp = (kg: number): string => (Math.ceil(kg * 10 - 1e-9) / 10).toFixed(1);

/** What all rounds take, by drink, what the litres take that nobody can brew yet, and the ice that cold drinks stand in. Exact sums of the amounts. */
export const drinksNeeds = (drinks: DrinksPlan): Need[] => [
  ...drinks.rounds.flatMap((round) => round.ingredients.map((i) => ({ ingredient: i.ingredient, amount: i.amount, origin: round.drink }))),
  ...drinks.unbrewed.flatMap((d) => d.ingredients.map((i) => ({ ingredient: i.ingredient, amount: i.amount, origin: d.drink }))),
  ...(drinks.ice?.drinks ?? []).filter((d) => d.kg.value > 0).map((d) => ({ ingredient: 'ice', amount: amountOf(tenthsUp(d.kg.value), 'kg'), origin: d.drink })),
];
