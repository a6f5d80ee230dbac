import { Big } from 'big.js';
import type { Borrowed } from '../event';
import type { Figure } from '../figure';
import { dimensionOf, type Amount } from '../measure';
import type { Message } from '../words';

/**
 * Something the day uses up: an edible amount of an ingredient for a dish, a fry line or a brew round, or a thing (cups, gas).
 * Every room may give such needs; `shared/plan` collects them.
 */
export interface Need {
  /** Id of a food, or of a thing of `shared/reference`. */
  readonly ingredient: string;
  readonly amount: Amount;
  /** Name on the list when the tables do not know it; its id when left out. */
  readonly name?: string;
  /** Dish id, `frying-oil`, or one of `useIds`. */
  readonly origin: string;
  /** How the amount was worked out, in its unit; the recipe says it when left out. */
  readonly figure?: Figure;
  /** Part of it, 0-1, that is used only when more come than on an average day: bowls finished late. None when left out. */
  readonly reserve?: number;
}

/**
 * A thing that is not food: `ingredient` is an id of `things` (shared/reference), the amount is whole for what is counted, and `figure` has
 * the same value. A room that knows better (ice by the heat to be taken away) gives its own `ThingNeed`s to
 * `planBuying` in place of the simple ones of `thingNeeds`; nothing else has to change.
 */
export interface ThingNeed extends Need {
  readonly figure: Figure;
}

/** What things are used for, where no dish uses them; `buying.use.<id>` are their names in the words. */
export const useIds = ['drinks-table', 'meal', 'snacks', 'soup', 'guests', 'kept', 'leftovers', 'burners', 'no-tap'] as const;
/** Id of a use of things. */
export type UseId = (typeof useIds)[number];

/** How far a line is: still to buy, part of it bought, left for later, all bought, or nothing to buy because the house has it. */
export type LineState = 'open' | 'part' | 'later' | 'bought' | 'house';

/** Price of a food or thing: money per amount (in the unit of the line where it can be told), `price` null while it is not known. */
export interface LinePrice {
  readonly price: string | null;
  readonly per: Amount;
}

/** One line of the shopping list. `need`, `origins`, `larder`, `bought`, `buy` and `packs[].size` share one unit. */
export interface ShoppingLine {
  /** Unique on the list; marks and shoppers hold to it. */
  readonly key: string;
  readonly kind: 'food' | 'thing' | 'own';
  readonly ingredient: string;
  readonly name: string;
  readonly section: string;
  /** As purchased, all origins together, before the larder is taken off. */
  readonly need: Amount;
  readonly needFigure: Figure;
  /** Shares of `need`; they add up to it exactly. */
  readonly origins: readonly { readonly dish: string; readonly amount: Amount }[];
  readonly larder: Amount;
  /** Marked as bought. */
  readonly bought: Amount;
  /** Still to buy: packs × size; with larder and bought at least the need, but for a shortfall that portions do not feel (`buy.shortWithin`). */
  readonly buy: Amount;
  readonly buyFigure: Figure;
  readonly packs: readonly { readonly count: number; readonly size: Amount }[];
  readonly state: LineState;
  /** What follows from what was bought, in words; null when nothing is bought yet. */
  readonly note: Message | null;
  readonly price: LinePrice;
  /** Of what is still to buy: decimal string in the event's currency, when a price is known. */
  readonly cost?: string;
  readonly costFigure?: Figure;
  /** Buy at most this many days ahead; null when it keeps. */
  readonly keepsDays: number | null;
  /** The day the cook set for it, `YYYY-MM-DD`. */
  readonly when: string | null;
  /** Who buys it: the name of a helper or any other name; null when nobody is named. */
  readonly shopper: string | null;
  readonly optional: boolean;
  /** Of `need`, what is measured out but used only when more come: the dry mix of the reserve bowls. In the unit of `need`; absent where there is none. */
  readonly reserve?: Figure;
}

/** What is needed as a cook says it: things that are counted are bought whole, so a part of one is one. Same unit as `need`. */
export const wholeNeed = ({ need }: Pick<ShoppingLine, 'need'>): Amount => (dimensionOf(need.unit) === 'count' ? { amount: need.amount.round(0, Big.roundUp), unit: need.unit } : need);

/** A thing the household has of its own: how many of them the day wants. */
export interface OwnThing {
  readonly thing: string;
  readonly name: string;
  readonly need: Amount;
  readonly needFigure: Figure;
}

/** What the room `buying` computes. */
export interface BuyingPlan {
  readonly lines: readonly ShoppingLine[];
  /** Sections in walking order. */
  readonly sections: readonly string[];
  /** Total of known costs of what is still to buy, as a decimal string; null when no price is known. Never without `unpriced` beside it. */
  readonly cost: string | null;
  readonly costFigure: Figure | null;
  /** Lines still to buy whose price is not known: the total leaves them out. */
  readonly unpriced: number;
  /** Everybody named as a shopper of a line, in the order of the list. */
  readonly shoppers: readonly string[];
  readonly ownThings: readonly OwnThing[];
  readonly borrowed: readonly Borrowed[];
  /** Ingredients of recipes that the table does not know, with the dishes that use them. */
  readonly unknown: readonly { readonly ingredient: string; readonly dishes: readonly string[] }[];
  /** What is in the house but cannot be turned into the unit of the list, so that it is bought all the same: one sentence each. */
  readonly notCounted: readonly Message[];
}
