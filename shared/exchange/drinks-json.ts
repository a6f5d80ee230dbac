import { amountText } from '../measure';
import type { Plan } from '../plan';

/** Drinks as other programs read them. */
export interface DrinksJson {
  readonly rounds: readonly {
    readonly number: number; readonly drink: string; readonly pot: string; readonly startAt: number; readonly readyAt: number; readonly litres: number;
    /** Poured from what the recipe's steps made ahead: `ingredients` went in then, not now. */
    readonly madeAhead: boolean;
    readonly ingredients: readonly { readonly ingredient: string; readonly amount: string; readonly unit: string }[];
  }[];
  readonly fills: readonly { readonly dispenser: string; readonly at: number; readonly litres: number; readonly round: number }[];
  readonly dispensers: readonly {
    readonly id: string; readonly drink: string; readonly capacityLitres: number; readonly fromMinute: number; readonly litres: readonly number[]; readonly celsius: readonly number[];
  }[];
}

/** The brew rounds, fills and dispensers of a plan. */
export const drinksJson = ({ drinks }: Plan): DrinksJson => ({
  rounds: drinks.rounds.map(({ number, drink, pot, startAt, readyAt, litres, ingredients, madeAhead }) => ({
    number, drink, pot, startAt, readyAt, litres, madeAhead,
    ingredients: ingredients.map(({ ingredient, amount }) => ({ ingredient, ...amountText(amount) })),
  })),
  fills: drinks.fills.map(({ dispenser, at, litres, round }) => ({ dispenser, at, litres, round })),
  dispensers: drinks.dispensers.map(({ id, drink, capacityLitres, fromMinute, litres, celsius }) => ({ id, drink, capacityLitres, fromMinute, litres, celsius })),
});
