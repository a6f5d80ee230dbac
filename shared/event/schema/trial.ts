import * as z from 'zod';
import { idSchema } from './parts';

/**
 * One batch really fried and written down, on the day or on a trial day before it: what went in, what came out, how the oil went. What was not
 * measured is left out. Grams are of all pieces together; minutes count from the first piece put in; temperatures are of the oil, in Celsius.
 */
export const trialSchema = z.looseObject({
  id: idSchema,
  /** Menu dish fried. */
  dish: idSchema,
  /** Pan it was fried in; it was alone on its burner, the flame full from putting in until the oil was back. */
  pan: idSchema,
  pieces: z.number().int().min(1).max(400),
  /** Batter of all pieces. */
  beforeG: z.number().min(5).max(60000).optional(),
  /** The same pieces, fried and drained. */
  afterG: z.number().min(5).max(80000).optional(),
  /** Put in to lift out. */
  minutes: z.number().min(0.25).max(30).optional(),
  /** Oil just before the first piece; absent without a thermometer: then a drop of batter told that it was hot enough. */
  startC: z.number().min(120).max(210).optional(),
  lowestC: z.number().min(60).max(205).optional(),
  /** Put in until the oil was as hot as before: by the thermometer, or when a drop of batter rose at once again. */
  backMinutes: z.number().min(0.25).max(90).optional(),
  /** Cold oil poured in afterwards to bring the oil back to its mark. */
  topUpMl: z.number().min(0).max(10000).optional(),
  /** Its values have been taken into the event. */
  taken: z.boolean().optional(),
});
/** Batches really fried, oldest first; at most 40. */
export const trialsSchema = z.array(trialSchema).max(40);
/** One batch really fried. */
export type Trial = z.infer<typeof trialSchema>;
