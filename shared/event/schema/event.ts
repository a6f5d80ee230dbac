import * as z from 'zod';
import { shoppingSchema } from './buying';
import { daySchema } from './day';
import { guestsSchema } from './guests';
import { houseFigureSchema, kitchenSchema, larderSchema, personSchema, priceSchema } from './kitchen';
import { measuringSchema } from './measuring';
import { idSchema, minuteSchema, nameSchema, noteSchema, shareSchema } from './parts';
import { precautionsSchema } from './precautions';
import { menuSchema, recipeSchema } from './recipe';
import { trialsSchema } from './trial';

/** Format name in every event file; the number rises only when an older program could not read the file rightly. */
export const eventFormat = 'brimful-event/1';

/** How this event is shown, printed and kept safe: units, paper, clock, money, share of days to cover, set of safety rules. */
export const preferencesSchema = z.looseObject({
  units: z.enum(['metric', 'us']).default('metric'),
  paper: z.enum(['a4', 'letter']).default('a4'),
  clock: z.enum(['24', '12']).default('24'),
  currency: z.string().regex(/^[A-Z]{3}$/, 'currency').default('EUR'),
  locale: z.string().max(35).default('en-GB'),
  /** Share of days the amounts are to cover: 0.9 means enough on nine days of ten. */
  cover: z.number().min(0.5).max(0.99).default(0.9),
  /** Set of safety rules: holding temperatures, labels of allergens, plugs. The clocks of food at room temperature are the strictest under every set. */
  safetyProfile: z.enum(['household', 'us', 'uk', 'eu']).default('household'),
  /** Put-in this many minutes before the latest time, so that a hitch does not leave a tray empty. */
  fryLeadMinutes: z.number().min(0).max(30).default(5),
  /** Who is allergic to what is printed on shared sheets only when asked for. */
  printAllergies: z.boolean().default(false),
  /** What the kitchen has to measure with; amounts are rounded to it. */
  measuring: measuringSchema.optional(),
});
/** Preferences of an event, defaults filled in. */
export type Preferences = z.infer<typeof preferencesSchema>;

/** An event file: guests, menu with its recipes, kitchen, people, larder and prices. Unknown fields are kept; defaults are filled in. */
export const eventSchema = z.looseObject({
  format: z.literal(eventFormat),
  id: idSchema,
  title: nameSchema,
  day: z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'day').refine((d) => isCalendarDay(d), 'noSuchDay'),
  timeZone: z.string().max(60).default('UTC'),
  opensAt: minuteSchema,
  closesAt: minuteSchema,
  preferences: preferencesSchema.prefault({}),
  guests: guestsSchema.prefault({}),
  menu: menuSchema.prefault({}),
  recipes: z.array(recipeSchema).max(300).default([]),
  kitchen: kitchenSchema.prefault({}),
  people: z.array(personSchema).max(60).default([]),
  larder: z.array(larderSchema).default([]),
  prices: z.array(priceSchema).default([]),
  /** What the cook has added to the shopping list; see `shoppingOf`. */
  shopping: shoppingSchema.optional(),
  /** The cook's own jobs of the day, and what she has laid down about the others; see `dayOf`. */
  dayJobs: daySchema.optional(),
  /** Batches really fried and written down, to measure pieces, oil and burner by. */
  trials: trialsSchema.optional(),
  /** Plain facts about place and day, for the rules of safety and the emergency card. */
  precautions: precautionsSchema.optional(),
  houseFigures: z.array(houseFigureSchema).default([]),
  /** Sheets printed so far: version letter, when, and a fingerprint of the plan they showed. */
  /** `sheet`: its kind; `id`: which of them (a station's, a helper's); lines of old files have no id and stand for all of the kind. */
  issuedSheets: z.array(z.looseObject({ sheet: z.string(), id: z.string().optional(), version: z.string().regex(/^[A-Z]{1,2}$/, 'version'), at: z.string(), fingerprint: z.string(),
    /** Rows as they stood on that paper, by key and column: a reprint shows what changed since. */
    rows: z.record(z.string(), z.record(z.string(), z.string())).optional(),
  })).default([]),
  serviceLog: z.array(z.looseObject({ at: minuteSchema, kind: z.string() })).default([]),
  review: z.looseObject({ notes: noteSchema.default('') }).prefault({}),
}).refine((e) => e.closesAt > e.opensAt, { message: 'closesBeforeOpens', path: ['closesAt'] });
/** The event: a value. Everything the product shows is computed from it. */
export type Event = z.infer<typeof eventSchema>;
export { shareSchema };

function isCalendarDay(day: string): boolean {
  const [y = 0, m = 0, d = 0] = day.split('-').map(Number);
  const leap = (y % 4 === 0 && y % 100 !== 0) || y % 400 === 0;
  const lengths = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return m >= 1 && m <= 12 && d >= 1 && d <= (lengths[m - 1] ?? 0);
}
