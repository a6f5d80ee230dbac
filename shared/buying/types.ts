import { Big } from 'big.js';
import type { Figure } from '../figure';
import { dimensionOf, type Amount } from '../measure';
import type { Message } from '../words';

/** Something a dish, a fry line or a brew round uses: edible amount of one ingredient. */
export interface Need {
  readonly ingredient: string;
  readonly amount: Amount;
  /** Name on the list when the ingredient table does not know it; its id when left out. */
  readonly name?: string;
  /** Dish id, or `frying-oil`. */
  readonly origin: string;
}

/** One line of the shopping list. `need`, `origins`, `larder`, `buy` and `packs[].size` share one unit. */
export interface ShoppingLine {
  readonly ingredient: string;
  readonly name: string;
  readonly section: string;
  /** As purchased, all origins together, before the larder is taken off. */
  readonly need: Amount;
  readonly needFigure: Figure;
  /** Shares of `need`; they add up to it exactly. */
  readonly origins: readonly { readonly dish: string; readonly amount: Amount }[];
  readonly larder: Amount;
  /** Packs × size; at least need − larder. */
  readonly buy: Amount;
  readonly packs: readonly { readonly count: number; readonly size: Amount }[];
  /** Decimal string in the event's currency, when a price is known. */
  readonly cost?: string;
  /** Buy at most this many days ahead; null when it keeps. */
  readonly keepsDays: number | null;
  readonly optional: boolean;
}

/** What is needed as a cook says it: things that are counted are bought whole, so a part of one is one. Same unit as `need`. */
export const wholeNeed = ({ need }: ShoppingLine): Amount => (dimensionOf(need.unit) === 'count' ? { amount: need.amount.round(0, Big.roundUp), unit: need.unit } : need);

/** What the room `buying` computes. */
export interface BuyingPlan {
  readonly lines: readonly ShoppingLine[];
  /** Sections in walking order. */
  readonly sections: readonly string[];
  /** Total of known costs as a decimal string; null when no price is known. */
  readonly cost: string | null;
  /** Ingredients of recipes that the table does not know, with the dishes that use them. */
  readonly unknown: readonly { readonly ingredient: string; readonly dishes: readonly string[] }[];
  /** What is in the house but cannot be turned into the unit of the list, so that it is bought all the same: one sentence each. */
  readonly notCounted: readonly Message[];
}
