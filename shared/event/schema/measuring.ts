import * as z from 'zod';
import { handMeasureIds } from '../../measure';

/** What the kitchen has to measure with; what is absent is taken to be there. */
export const measuringSchema = z.looseObject({
  /** Smallest step of the scale in grams; null: no scale, everything goes by spoon and cup. Absent: finer than any step we round to. */
  scaleStepG: z.number().min(0.1).max(500).nullable().optional(),
  /** Spoons and dry cups that are there; absent: the full set. */
  measures: z.array(z.enum(handMeasureIds)).optional(),
  /** From mark to mark of the measuring jug in millilitres; null: no jug. Absent: finer than any step we round to. */
  jugStepMl: z.number().min(1).max(1000).nullable().optional(),
});
/** What the kitchen has to measure with. */
export type Measuring = z.infer<typeof measuringSchema>;
