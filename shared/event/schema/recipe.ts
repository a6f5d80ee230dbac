import * as z from 'zod';
import { amountSchema, idSchema, minuteSchema, nameSchema, noteSchema } from './parts';

/** Where a dish stands in the meal; decides the portion per adult. */
export const roleIds = ['friedSnack', 'friedSide', 'condiment', 'grain', 'pulse', 'vegetable', 'bread', 'salad', 'yoghurt', 'sweet', 'soup', 'hotDrink', 'coldDrink', 'water', 'preserve', 'plain'] as const;
/** Id of a place in the meal. */
export type RoleId = (typeof roleIds)[number];

/** How an ingredient follows the size: in proportion; always the same; once per batch of `batchOf`; or to a power below one (spice, salt). */
export const scalingSchema = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('linear') }),
  z.looseObject({ kind: z.literal('fixed') }),
  z.looseObject({ kind: z.literal('perBatch') }),
  z.looseObject({ kind: z.literal('damped'), exponent: z.number().min(0.3).max(1) }),
]);

/** One line of a recipe: how much of what, and how it follows the size. */
export const ingredientLineSchema = z.looseObject({
  /** Id of a row of the ingredient table, or of an own ingredient of the event. */
  ingredient: idSchema,
  /** What the cook calls a food that the table does not have, as she typed it: "grandma's special stuff". */
  called: nameSchema.optional(),
  amount: amountSchema,
  /** "finely chopped", "peeled". */
  preparation: z.string().max(200).optional(),
  scaling: scalingSchema.default({ kind: 'linear' }),
  /** Goes into each bowl of batter only when that bowl is finished: raising agent, acid, salt, cut greens. */
  perBowl: z.boolean().default(false),
  /** "to taste": the amount is a start. */
  toTaste: z.boolean().default(false),
  /** What stood here before a substitution; puts it back. `gave`: the amount the substitution wrote; where the line has another by now, it was changed since. */
  insteadOf: z.looseObject({ ingredient: idSchema, amount: amountSchema, gave: amountSchema.optional() }).optional(),
});

/** Minutes of a step: fixed + per kilogram of the dish + per batch cooked. */
export const stepMinutesSchema = z.looseObject({ fixed: z.number().min(0).max(2880).default(0), perKg: z.number().min(0).max(600).default(0), perBatch: z.number().min(0).max(600).default(0) });

/** Things a step may occupy while it runs. */
export const thingIds = ['burner', 'pot', 'pan', 'oven', 'counter'] as const;
/** Id of a thing a step may occupy. */
export type ThingId = (typeof thingIds)[number];

/** One step of a recipe: how long, who, what it needs, what it follows, how long its result keeps. */
export const stepSchema = z.looseObject({
  id: idSchema,
  name: nameSchema,
  /** What the step does; drives safety checks (soak, boil hard, cool …). */
  does: z.enum(['prepare', 'soak', 'grind', 'mix', 'rest', 'boil', 'simmer', 'fry', 'bake', 'griddle', 'brew', 'cool', 'chill', 'freeze', 'thaw', 'reheat', 'serve', 'sprout', 'other']).default('other'),
  /** Somebody is busy with it. */
  active: stepMinutesSchema.default({ fixed: 0, perKg: 0, perBatch: 0 }),
  /** It runs by itself, with a share of somebody's attention (0 none). */
  passive: stepMinutesSchema.default({ fixed: 0, perKg: 0, perBatch: 0 }),
  passiveAttention: z.number().min(0).max(1).default(0),
  /** Who may do it: a role of the people list; any helper when absent. */
  by: z.string().max(40).optional(),
  needs: z.array(z.looseObject({ thing: z.enum(thingIds), count: z.number().int().min(1).max(20).default(1) })).default([]),
  after: z.array(idSchema).default([]),
  /** The step must end within this window before the dish is first served, in minutes: not earlier than it keeps, not later than needed. */
  endsBefore: z.looseObject({ earliest: z.number().min(0).max(43200), latest: z.number().min(0).max(43200) }).optional(),
  /** How long the result keeps, and where. */
  keeps: z.looseObject({ place: z.enum(['counter', 'hot', 'cold', 'freezer']), minutes: z.number().min(0).max(525600) }).optional(),
});

/** What frying needs to know of a dish; masses per piece as spooned. */
export const fryingSchema = z.looseObject({
  pieceBatterG: z.number().min(2).max(200),
  fryMinutes: z.number().min(0.25).max(30),
  handlingMinutes: z.number().min(0).max(10).default(1),
  /** Longest wait on the rack before it is eaten. */
  holdMinutes: z.number().min(1).max(120).default(20),
  /** Life of a finished bowl of batter; null when there is no batter (whole chillies). */
  bowlMinutes: z.number().min(1).max(240).nullable().default(20),
  /** Share of water in the batter, kg per kg. */
  waterFraction: z.number().min(0.1).max(0.97).default(0.62),
  /** Water boiled off per kg of batter. */
  waterLostKgPerKg: z.number().min(0).max(0.8).default(0.18),
  oilUptakeKgPerKg: z.number().min(0).max(0.4).default(0.14),
  batterC: z.number().min(-20).max(60).default(15),
  targetC: z.number().min(140).max(200).default(177),
  crumbly: z.boolean().default(false),
  /** Leaves its taste in the oil (fish, strong spice): fried last, or in oil of its own. */
  strongFlavour: z.boolean().optional(),
});

/** What brewing needs to know of a drink, per litre served or of water as named. */
export const brewingSchema = z.looseObject({
  method: z.enum(['infuse', 'boilWithMilk', 'filter', 'percolate', 'cold', 'water']),
  /** Leaf or grounds per litre of water put in, in grams (0 for none); the ingredient is the recipe line marked here. */
  doseGPerL: z.number().min(0).max(200).default(0),
  doseIngredient: idSchema.optional(),
  absorbMlPerG: z.number().min(0).max(10).default(0),
  milkShare: z.number().min(0).max(1).default(0),
  steepMinutes: z.number().min(0).max(120).default(0),
  /** How full a pot may be with this drink. */
  potFill: z.number().min(0.2).max(0.95).default(0.75),
  strainLoss: z.number().min(0).max(0.2).default(0.02),
  /** Minutes at the boil with the lid off. */
  boilMinutes: z.number().min(0).max(120).default(0),
  hot: z.boolean(),
  caffeinated: z.boolean().default(false),
  /** Quality time in the vessel. */
  goodForMinutes: z.number().min(5).max(2880).default(120),
  /** Coolest it should be served. */
  serveAboveC: z.number().min(0).max(95).nullable().default(null),
  cupMl: z.number().min(30).max(600),
  /** Where the sugar of the recipe goes: into the pot (also when absent), or beside the drink for everybody to take. Bought either way. */
  sugar: z.enum(['in', 'apart']).optional(),
});

/** A recipe: what it yields, its ingredients, its steps, and what frying or brewing need to know of it. */
export const recipeSchema = z.looseObject({
  id: idSchema,
  name: nameSchema,
  role: z.enum(roleIds),
  /** What the ingredients below make. */
  yield: z.looseObject({ amount: amountSchema, portions: z.number().min(0.1).max(10000) }),
  ingredients: z.array(ingredientLineSchema).min(1).max(80),
  steps: z.array(stepSchema).max(40).default([]),
  frying: fryingSchema.optional(),
  brewing: brewingSchema.optional(),
  /** Time/temperature control: needs hot or cold holding; plain dry things do not. */
  needsTemperatureControl: z.boolean().default(true),
  serveHot: z.boolean().default(false),
  source: z.string().max(400).default('common practice, no source'),
  notes: noteSchema.optional(),
});
/** A recipe, defaults filled in. */
export type Recipe = z.infer<typeof recipeSchema>;
/** One line of a recipe, defaults filled in. */
export type IngredientLine = z.infer<typeof ingredientLineSchema>;
/** One step of a recipe, defaults filled in. */
export type Step = z.infer<typeof stepSchema>;
/** What frying needs to know of a dish. */
export type Frying = z.infer<typeof fryingSchema>;
/** What brewing needs to know of a drink. */
export type Brewing = z.infer<typeof brewingSchema>;

/** A recipe on the menu of this event: portion, who takes it, when it is served, how it waits. */
export const dishSchema = z.looseObject({
  id: idSchema,
  recipe: idSchema,
  /** A guest brings it: it counts on the table, but nothing is bought, cooked or brewed for it here. Their name, or "a guest". */
  broughtBy: nameSchema.optional(),
  /** Own name on the menu; the recipe's when absent. */
  name: nameSchema.optional(),
  /** Portion per adult in the recipe's yield unit (pieces for fried snacks and breads); the role's default when absent. */
  portion: amountSchema.optional(),
  /** Share of guests who take it. */
  takeUp: z.number().min(0).max(1).default(1),
  /** When it is served: all day as people come, at one time to all who are there, or not to guests at all (stock for the household: `fixedYield`). */
  served: z.discriminatedUnion('kind', [
    z.looseObject({ kind: z.literal('throughout') }),
    z.looseObject({ kind: z.literal('between'), from: minuteSchema, to: minuteSchema }),
    z.looseObject({ kind: z.literal('fixed'), at: minuteSchema, portions: z.number().min(0).max(20000) }),
  ]).default({ kind: 'throughout' }),
  /** Fried freshest: the put-ins whose pieces wait least, with the fewest batches and so many more. Each as late as it can be when absent. */
  fryFresh: z.looseObject({ moreBatches: z.number().int().min(0).max(6) }).optional(),
  /** How it waits between cooking and serving. */
  holding: z.looseObject({ place: z.enum(['counter', 'hot', 'cold']), temperatureC: z.number().min(-30).max(120).optional() }).optional(),
});
/** A dish of the menu, defaults filled in. */
export type Dish = z.infer<typeof dishSchema>;
/** What is offered, in the order of the menu; at most 60 dishes. */
export const menuSchema = z.looseObject({ dishes: z.array(dishSchema).max(60).default([]) });
/** What is offered. */
export type Menu = z.infer<typeof menuSchema>;
