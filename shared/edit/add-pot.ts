import type * as z from 'zod';
import type { Event, potSchema } from '../event';
import { addItem } from './items';
import { pots } from './lists';
import type { EditResult } from './types';

/** Adds a pot. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addPot = (event: Event, pot: z.input<typeof potSchema>): EditResult => addItem(event, pots, pot);
