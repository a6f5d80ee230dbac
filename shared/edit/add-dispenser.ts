import type * as z from 'zod';
import type { Event, dispenserSchema } from '../event';
import { assignOnly } from './assign-only';
import { addItem } from './items';
import { dispensers } from './lists';
import type { EditResult } from './types';

/** Adds a flask or urn. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addDispenser = (event: Event, dispenser: z.input<typeof dispenserSchema>): EditResult => assignOnly(addItem(event, dispensers, dispenser));
