import * as z from 'zod';
import { allergenIds, dietIds, idSchema, minuteSchema, nameSchema, noteSchema, shareSchema } from './parts';

/** Age bands as stored; shown as adults (`adult`, `olderAdult`) and children (the rest). */
export const bandIds = ['under1', 'age1to3', 'age4to6', 'age7to9', 'age10to12', 'age13to17', 'adult', 'olderAdult'] as const;
/** Id of an age band. */
export type BandId = (typeof bandIds)[number];
/** Bands that count as adults: 18 years and over. */
export const adultBands = ['adult', 'olderAdult'] as const satisfies readonly BandId[];
/** Bands that count as children: under 18 years. */
export const childBands = ['under1', 'age1to3', 'age4to6', 'age7to9', 'age10to12', 'age13to17'] as const satisfies readonly BandId[];

/** Most people of one band in a wave, and of all bands together. */
const mostOfBand = 20000;
const mostOfWave = mostOfBand * bandIds.length;
const countSchema = z.number().int().min(0).max(mostOfBand).default(0);
/** People by age band. Unit: people. Range of each: whole numbers 0-20000. */
export const countsSchema = z.looseObject({
  under1: countSchema, age1to3: countSchema, age4to6: countSchema, age7to9: countSchema,
  age10to12: countSchema, age13to17: countSchema, adult: countSchema, olderAdult: countSchema,
});

const peopleSchema = z.number().min(0).max(mostOfWave);
/** How sure the counts are: a list of people who come; a list of whom a share shows up; or a guess low / likely / high for the whole wave. */
export const turnoutSchema = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('known') }),
  z.looseObject({ kind: z.literal('share'), share: shareSchema }),
  z.looseObject({ kind: z.literal('range'), low: peopleSchema, likely: peopleSchema, high: peopleSchema }),
]);

/** Guests who arrive together: when, how many of which age, how sure, how long they stay. Times are minutes from midnight of the day. */
export const waveSchema = z.looseObject({
  id: idSchema,
  name: nameSchema,
  /** First and last arrivals of the wave; arrivals are spread evenly between. */
  from: minuteSchema,
  to: minuteSchema,
  counts: countsSchema,
  turnout: turnoutSchema.default({ kind: 'known' }),
  /** Minutes a guest stays: shortest, usual (most frequent) and longest; a triangular distribution. */
  stay: z.looseObject({ shortest: z.number().min(1).max(2880), usual: z.number().min(1).max(2880), longest: z.number().min(1).max(2880) }),
}).refine((w) => w.to >= w.from, { message: 'endsBeforeBegins', path: ['to'] })
  .refine((w) => w.stay.shortest <= w.stay.usual && w.stay.usual <= w.stay.longest, { message: 'stayOrder', path: ['stay'] });

/** Who comes: waves, a headcount that overrides them, diets, allergies, guests at higher risk. */
export const guestsSchema = z.looseObject({
  waves: z.array(waveSchema).max(60).default([]),
  /** Headcount set as a whole; spread over waves and bands by Webster's method. null = as the waves say. */
  headcount: z.looseObject({ adults: z.number().int().min(0).max(20000).nullable(), children: z.number().int().min(0).max(20000).nullable() }).default({ adults: null, children: null }),
  diets: z.array(z.looseObject({ diet: z.enum(dietIds), people: z.number().int().min(1).max(mostOfWave) })).default([]),
  allergies: z.array(z.looseObject({ allergen: z.enum(allergenIds), people: z.number().int().min(1).max(mostOfWave), note: noteSchema.optional() })).default([]),
  /** Asked, never inferred: is anybody pregnant, very old, ill, or a baby among those who eat? Brings the strictest limits (rule CX-05). null = not asked yet. */
  higherRisk: z.boolean().nullable().default(null),
});
/** A wave of guests, defaults filled in. */
export type Wave = z.infer<typeof waveSchema>;
/** People by age band. */
export type Counts = z.infer<typeof countsSchema>;
/** Who comes, defaults filled in. */
export type Guests = z.infer<typeof guestsSchema>;
