import * as z from 'zod';
import { unitIds } from '../../measure';

/** Name by which parts of an event refer to each other: letters, digits and dashes, unique in its list. */
export const idSchema = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/, 'id');
/** Exact amount as text: digits with an optional decimal point, zero or more. */
export const decimalSchema = z.string().regex(/^\d{1,12}(\.\d{1,12})?$/, 'decimal');
/** An exact amount with a unit. */
export const amountSchema = z.looseObject({ amount: decimalSchema, unit: z.enum(unitIds) });
/** Minutes from midnight of the event's day; from two weeks before to three days after. */
export const minuteSchema = z.number().min(-20160).max(4320);
/** A share between 0 and 1. */
export const shareSchema = z.number().min(0).max(1);
/** Free text of a name or a note. */
export const nameSchema = z.string().trim().min(1, 'name').max(120);
/** A free note of up to 4000 letters. */
export const noteSchema = z.string().max(4000);

/** Allergen groups: the EU's fourteen (Regulation 1169/2011, Annex II); the US nine are a part of them. */
export const allergenIds = [
  'gluten', 'crustaceans', 'eggs', 'fish', 'peanuts', 'soya', 'milk', 'nuts', 'celery', 'mustard', 'sesame', 'sulphites', 'lupin', 'molluscs',
] as const;
/** Id of an allergen group. */
export type AllergenId = (typeof allergenIds)[number];
/** Ways of eating a guest may ask for; a dish is open to a diet when none of its ingredients is against it. */
export const dietIds = ['vegetarian', 'vegan', 'noOnionGarlic', 'noPork', 'noBeef', 'glutenFree', 'lactoseFree', 'nutFree'] as const;
/** Id of a way of eating. */
export type DietId = (typeof dietIds)[number];
