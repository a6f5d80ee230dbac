import * as z from 'zod';
import { amountSchema, idSchema, nameSchema } from './parts';

const daySchema = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'day');
/** Names a line of the shopping list: the id of a food or thing, an id with a unit, or `own/` with the id of an own line. */
const lineKeySchema = z.string().min(1).max(120);

/** A line the cook wrote on the shopping list: nothing works it out, it is bought as it stands. */
export const ownLineSchema = z.looseObject({
  id: idSchema, name: nameSchema, amount: amountSchema,
  /** Section of the shop; `other` when it is in none. */
  section: z.string().min(1).max(60).default('other'),
  /** The day it is to be bought; any day when absent. */
  when: daySchema.optional(),
});
/** Something of the kitchen that is needed but not owned: how many, from whom, and whether it has gone back. */
export const borrowedSchema = z.looseObject({
  id: idSchema, name: nameSchema,
  count: z.number().int().min(1).max(10000).default(1),
  /** Who lends it; empty when nobody is asked yet. */
  from: z.string().max(120).default(''),
  here: z.boolean().default(false),
  returned: z.boolean().default(false),
});
/** What a cook has noted at one line of the list. */
export const shoppingMarkSchema = z.looseObject({
  line: lineKeySchema,
  /** Bought so far. */
  bought: amountSchema.optional(),
  /** What the list asked for when that was noted: tells "bought a part of it" from "the count has risen since". */
  asked: amountSchema.optional(),
  /** Left for a later trip. */
  later: z.boolean().default(false),
});
/** Who buys a section, or one line in spite of its section. `who`: id of a helper, or any name. */
export const shopperSchema = z.looseObject({ line: lineKeySchema.optional(), section: z.string().min(1).max(60).optional(), who: z.string().trim().min(1).max(120) });
/** What the cook has added to the list that the plan works out: own lines, what is borrowed, what is bought, who buys it, what the house has of its own. */
export const shoppingSchema = z.looseObject({
  ownLines: z.array(ownLineSchema).max(200).default([]),
  borrowed: z.array(borrowedSchema).max(100).default([]),
  marks: z.array(shoppingMarkSchema).max(1000).default([]),
  shoppers: z.array(shopperSchema).max(500).default([]),
  /** Ids of things the household has of its own, enough of them: real cups in place of paper ones. */
  ownThings: z.array(z.string().min(1).max(60)).max(60).default([]),
  /** No tap where the food is served: all water is brought along. */
  carriesWater: z.boolean().default(false),
  /** Frying oil that a substitution has replaced; puts it back. */
  oilBefore: z.string().max(60).optional(),
  /** Proposals to borrow that were waved away, by their id. */
  noLoans: z.array(z.string().min(1).max(200)).max(100).optional(),
});
/** A line the cook wrote on the list. */
export type OwnLine = z.infer<typeof ownLineSchema>;
/** Something borrowed. */
export type Borrowed = z.infer<typeof borrowedSchema>;
/** What is noted at a line of the list. */
export type ShoppingMark = z.infer<typeof shoppingMarkSchema>;
/** Who buys what. */
export type Shopper = z.infer<typeof shopperSchema>;
/** What the cook has added to the list. */
export type Shopping = z.infer<typeof shoppingSchema>;

const nothingAdded: Shopping = { ownLines: [], borrowed: [], marks: [], shoppers: [], ownThings: [], carriesWater: false };
/** What the cook has added to the list of an event; nothing when the event says nothing. */
export const shoppingOf = (event: { readonly shopping?: Shopping | undefined }): Shopping => event.shopping ?? nothingAdded;
