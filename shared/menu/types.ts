import type { AllergenId, BandId, DietId, Recipe, RoleId } from '../event';
import type { Figure } from '../figure';
import type { Amount, Series } from '../measure';

/** One line of a recipe scaled to the event. */
export interface ScaledLine {
  readonly ingredient: string;
  /** Edible, ready-to-use amount, exact, in the recipe's unit. */
  readonly amount: Amount;
  readonly preparation?: string;
  readonly perBowl: boolean;
  readonly toTaste: boolean;
}

/** One dish of the menu, sized. */
export interface DishPlan {
  readonly id: string;
  readonly name: string;
  /** Who brings it; absent for what is made here. Its recipe then has no steps, frying or brewing, and no lines: they are somebody else's. */
  readonly broughtBy?: string;
  readonly recipe: Recipe;
  readonly role: RoleId;
  /** What one portion of `demand` is. Fried snacks and breads count pieces, drinks cups, the rest portions. */
  readonly servedAs: 'piece' | 'cup' | 'portion';
  /** Portions (pieces, cups) of one adult, after shared appetite. */
  readonly perAdult: Figure;
  /** Portions of one person by band, before stay length. */
  readonly perBand: Readonly<Record<BandId, number>>;
  /** Whole portions for the event at the planning level; equals the sum of `demand`. */
  readonly portions: Figure;
  /** The same as an amount cooked, in the unit of the recipe's yield (pieces, kg, L). */
  readonly total: Amount;
  /** `total` as a figure with its working (unit = unit of `total`). */
  readonly totalFigure: Figure;
  /** The part of `portions` that is kept for days when more come; absent where there is none. */
  readonly reserve?: Figure;
  /** Whole portions wanted in each minute. */
  readonly demand: Series;
  readonly byWave: readonly { readonly wave: string; readonly portions: number }[];
  /** Recipe multiplied: `total` / recipe yield. */
  readonly factor: number;
  readonly lines: readonly ScaledLine[];
  readonly allergens: readonly AllergenId[];
  /** Diets that may eat it. */
  readonly diets: readonly DietId[];
  /** First minute anybody wants it; null when nobody does. */
  readonly firstServed: number | null;
  readonly lastServed: number | null;
}

/** Who can eat what. */
export interface DietCover {
  readonly diet: DietId;
  readonly people: number;
  /** Ids of the dishes (not drinks) open to them. */
  readonly open: readonly string[];
}
/** Guests with an allergy and what is left for them. */
export interface AllergyCover {
  readonly allergen: AllergenId;
  readonly people: number;
  readonly containing: readonly string[];
  readonly open: readonly string[];
}

/** What the room `menu` computes. */
export interface MenuPlan {
  readonly dishes: readonly DishPlan[];
  readonly diets: readonly DietCover[];
  readonly allergies: readonly AllergyCover[];
}
