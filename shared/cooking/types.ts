import type { Figure } from '../figure';
import type { Message } from '../words';

/** One stretch in which a dish is served, and what is eaten of it then. Minutes from midnight; `to` is the last minute with a portion. */
export interface Serving {
  /** Counted from 1. */
  readonly number: number;
  readonly from: number;
  readonly to: number;
  readonly portions: number;
}

/** One cooking of a dish: for one serving, in one pot or several, at once or one after another. */
export interface Cooking extends Serving {
  /** Share of the whole dish, 0-1. */
  readonly share: number;
  /** Pots it is cooked in, one for each go, in order; null where any pot of the kitchen holds it, or there is none. */
  readonly pots: readonly (string | null)[];
  /** Goes of one pot one after another, at most. */
  readonly after: number;
  /** Minutes the first go waits for the last. */
  readonly wait: number;
}

/** Pots of a dish that is cooked in one. */
export interface PotUse {
  /** Most that stands in pots for one cooking, in litres. */
  readonly litres: Figure;
  /** What the largest pot takes, in litres; null where the kitchen has no pot. */
  readonly usable: Figure | null;
  /** Goes or pots of the largest cooking; null where the kitchen has no pot. */
  readonly goes: Figure | null;
}

/** Something to know or to decide about the cooking of a dish. `watch`: change something; `told`: the plan has seen to it. */
export interface CookingNote {
  readonly dish: string;
  readonly level: 'watch' | 'told';
  readonly measured: Figure;
  readonly limit: Figure;
  readonly message: Message;
  /** Ways out, each with its amount or its times. */
  readonly ways: readonly Message[];
}

/** How one dish of the meal is cooked and put out. */
export interface DishCooking {
  readonly dish: string;
  readonly name: string;
  /** Minutes from ready to the last portion, at most; null where nothing is known that limits it. */
  readonly keeps: Figure | null;
  /** Where it keeps so long. */
  readonly place: 'counter' | 'hot' | 'cold' | null;
  /** It stands in something that is hot enough. */
  readonly isHeldHot: boolean;
  /** How often it is cooked. */
  readonly count: Figure;
  readonly cookings: readonly Cooking[];
  readonly pot: PotUse | null;
  /** Fresh bowls from the fridge, in order, where it stands on the table cold; none when one does. */
  readonly bowls: readonly Serving[];
  /** Minutes one bowl stands on the table, at most; null for what is not served cold. */
  readonly bowlStands: Figure | null;
  readonly notes: readonly CookingNote[];
}

/** What the room `cooking` computes: how often, in which pots, and in which bowls each dish of the meal is made. Fried dishes and drinks have plans of their own. */
export interface CookingPlan {
  readonly dishes: readonly DishCooking[];
  readonly notes: readonly CookingNote[];
}
