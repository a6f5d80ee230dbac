import type { Figure } from '../figure';
import type { Amount, Minutes } from '../measure';
import type { Message } from '../words';

/** One brew: a potful. */
export interface BrewRound {
  /** Unique in the event, in order of start. */
  readonly number: number;
  /** Menu dish id. */
  readonly drink: string;
  /** Pot it is brewed in; the dispenser when that is a brewing urn (`inUrn`). */
  readonly pot: string;
  readonly burner: string | null;
  /** Brewed in the urn it is served from: no pot, no burner, nothing to carry. */
  readonly inUrn: boolean;
  readonly startAt: Minutes;
  readonly boilAt: Minutes;
  readonly readyAt: Minutes;
  /**
   * Minutes from `startAt` that somebody's hands are wanted: filling the pot and setting it on the heat. A short round that needs no burner
   * is hands from start to end, and this is its whole length.
   */
  readonly startHands: number;
  /** Minutes up to `readyAt` (or, when it may wait in its pot, up to the pouring) that somebody's hands are wanted: straining and pouring. */
  readonly finishHands: number;
  /** Ready to serve. */
  readonly litres: number;
  readonly waterLitres: Figure;
  readonly heatMinutes: Figure;
  /** What the litres of this round take in all. Of a drink made ahead it went in at the recipe's own steps: shopping counts it here, once. */
  readonly ingredients: readonly { readonly ingredient: string; readonly amount: Amount }[];
  /** Of these, ingredients that stand beside the drink and do not go into the pot. */
  readonly apart: readonly string[];
  /** The recipe's steps have made the drink already: this round only pours it, and nothing raw goes in. */
  readonly madeAhead: boolean;
  /** What to say in place of the ingredients; null when they go into this round. */
  readonly note: Message | null;
}
/** Filling a dispenser from a round. */
export interface Fill {
  readonly dispenser: string;
  readonly at: Minutes;
  readonly litres: number;
  readonly round: number;
  /** Left of the earlier fill, poured away or served first, never topped up. */
  readonly leftLitres: number;
  /** Trips of at most what one person lifts; 0 when an urn has brewed it in itself. */
  readonly trips: number;
}
/** A dispenser through the day. */
export interface DispenserPlan {
  readonly id: string;
  readonly name: string;
  readonly drink: string;
  readonly capacityLitres: number;
  readonly fromMinute: Minutes;
  readonly litres: readonly number[];
  /** Temperature of what is in it; the room's when empty. */
  readonly celsius: readonly number[];
  readonly coolingPerHour: Figure;
}
/** Totals of one drink. */
export interface DrinkTotal {
  readonly drink: string;
  readonly served: Figure;
  readonly brewed: Figure;
  readonly rounds: Figure;
  readonly leftLitres: number;
  readonly unmetLitres: number;
  /** Strength, sugar, caffeine, and the rule for milk in it. */
  readonly notes: readonly Message[];
}
/** Ice for the cold drinks of the day. */
export interface IcePlan {
  readonly drinks: readonly { readonly drink: string; readonly kg: Figure }[];
  readonly kg: Figure;
  /** Tubs that drinks and ice fill together. */
  readonly tubs: Figure;
}

/** What guests want of a drink that no pot, burner or vessel brews in time. */
export interface UnbrewedDrink {
  /** Menu dish id. */
  readonly drink: string;
  /** Litres wanted, above 0. */
  readonly litres: number;
  /** What these litres would take, so that shopping is for the menu and not for the kitchen as it stands. */
  readonly ingredients: readonly { readonly ingredient: string; readonly amount: Amount }[];
}

/** What the room `drinks` computes. */
export interface DrinksPlan {
  readonly rounds: readonly BrewRound[];
  readonly fills: readonly Fill[];
  readonly dispensers: readonly DispenserPlan[];
  readonly totals: readonly DrinkTotal[];
  readonly unbrewed: readonly UnbrewedDrink[];
  /** Null when cold drinks are chilled otherwise. */
  readonly ice: IcePlan | null;
  /** What would be wise: nothing is wrong with the plan as it is. */
  readonly advice: readonly Message[];
  readonly problems: readonly Message[];
}
