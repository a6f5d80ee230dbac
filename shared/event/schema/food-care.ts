import * as z from 'zod';

/** How food is cooked, cooled, kept and set out, as far as only the household knows it; the rules of safety ask for it. */
export const foodCareFields = {
  /** Shell eggs stand in the fridge. */
  eggsChilled: z.boolean().optional(),
  /** What is to wait hot is taken off the heat at this temperature in its middle, in °C. */
  cookedC: z.number().min(0).max(110).optional(),
  /** Trays that one cooked dish is divided into to cool; 0 when it cools in its pot. */
  coolTrays: z.number().int().min(0).max(50).optional(),
  coolTrayLongCm: z.number().min(5).max(100).optional(),
  coolTrayWideCm: z.number().min(5).max(100).optional(),
  /** What food is warmed up in. */
  reheatIn: z.enum(['pot', 'oven', 'microwave']).optional(),
  /** Small platters, each changed for a fresh one, none filled up. */
  platesChanged: z.boolean().optional(),
  /** Acid of a home-made pickle, as measured. */
  picklePh: z.number().min(1).max(14).optional(),
  /** Its recipe is a tested one, kept to. */
  pickleTested: z.boolean().optional(),
} as const;
