import * as z from 'zod';
import { idSchema, minuteSchema, nameSchema, noteSchema } from './parts';

/** Names a job of the day as the plan does, e.g. `step/boil/rice`, `clean/kitchen`, `own/job-1`: made from what it is, so it stays while other things change. */
export const jobKeySchema = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9_/-]{0,199}$/, 'id');

/** A thing a job needs: a kind (`burner`, `pot`, `oven`, `counter`) or one of the kitchen (`burner:big-ring`), and how many. */
export const jobNeedSchema = z.looseObject({ thing: z.string().min(1).max(80), count: z.number().int().min(1).max(20).default(1) });

/** A job the cook added to the day; nothing works it out. Times are minutes from the event's midnight. */
export const ownJobSchema = z.looseObject({
  id: idSchema, name: nameSchema,
  /** Minutes it takes. */
  minutes: z.number().int().min(1).max(1440).default(15),
  /** Who does it: a role of the people list, tried before everybody else. */
  role: z.string().min(1).max(40).optional(),
  /** Not before. */
  from: minuteSchema.optional(),
  /** Done by. */
  to: minuteSchema.optional(),
  needs: z.array(jobNeedSchema).max(10).default([]),
});

/** What the cook has laid down about one job of the plan. What is absent the plan chooses. */
export const jobChangeSchema = z.looseObject({
  job: jobKeySchema,
  /** Starts at this minute. */
  at: minuteSchema.optional(),
  /** Why its minute stands; pinned by hand when absent. */
  held: z.enum(['pinned', 'started', 'printed']).optional(),
  /** Id of the helper who does it. */
  who: idSchema.optional(),
  /** Minutes with something to do, instead of those worked out. */
  minutes: z.number().int().min(1).max(1440).optional(),
  /** Cut into so many equal parts, which different helpers can do. */
  parts: z.number().int().min(2).max(6).optional(),
  /** Left out of the day. */
  off: z.boolean().optional(),
  /** Why. */
  why: noteSchema.optional(),
});

/** An order in which the day is laid out, found by looking longer than the instant answer does and taken by the cook. The plan follows it while it leaves no more undone than the plain orders. */
export const dayOrderSchema = z.looseObject({
  /** Setting up is placed before the recipe steps. */
  setUpFirst: z.boolean().default(false),
  /** Breaks and meals are placed before the recipe steps. */
  restsFirst: z.boolean().default(false),
  /** Where in a long watch at the oil somebody takes over. */
  relief: z.enum(['none', 'early', 'middle', 'late']).default('middle'),
  /** Recipe steps that count as due sooner (below 0) or later, in minutes; only their order changes. */
  nudges: z.array(z.looseObject({ job: jobKeySchema, by: z.number().int().min(-1440).max(1440) })).max(300).default([]),
});
/** An order in which the day is laid out. */
export type DayOrder = z.infer<typeof dayOrderSchema>;

/** Most jobs that may be pinned, held or changed at a time. */
export const mostJobChanges = 1000;

/** The cook's own jobs and what she has laid down about the jobs of the plan. */
export const daySchema = z.looseObject({
  ownJobs: z.array(ownJobSchema).max(200).default([]),
  changes: z.array(jobChangeSchema).max(mostJobChanges).default([]),
  /** The order that was taken; the plan finds its own when absent. */
  order: dayOrderSchema.optional(),
});
/** A job the cook added. */
export type OwnJob = z.infer<typeof ownJobSchema>;
/** What is laid down about one job. */
export type JobChange = z.infer<typeof jobChangeSchema>;
/** Own jobs, and changes to jobs. */
export type DayChanges = z.infer<typeof daySchema>;

const nothing: DayChanges = { ownJobs: [], changes: [] };
/** What the cook has laid down about the day of an event; nothing when the event says nothing. */
export const dayOf = (event: { readonly dayJobs?: DayChanges | undefined }): DayChanges => event.dayJobs ?? nothing;
