import * as z from 'zod';

/** What the lock of a data folder says. */
export const holderSchema = z.object({ pid: z.number().int().positive(), address: z.string().regex(/^http:\/\/127\.0\.0\.1:\d+$/), secret: z.string().min(1) });
/** The local host of a data folder. `secret`: with it a second start of the same person may hand a file over; the lock is readable by its owner only. */
export type Holder = z.infer<typeof holderSchema>;
