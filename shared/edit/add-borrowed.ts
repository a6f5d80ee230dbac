import type * as z from 'zod';
import type { borrowedSchema, Event } from '../event';
import { addItem } from './items';
import { borrowed } from './lists';
import type { EditResult } from './types';

/** Adds something to be borrowed. Fields left out take their defaults: one of it, from nobody yet. */
export const addBorrowed = (event: Event, thing: z.input<typeof borrowedSchema>): EditResult => addItem(event, borrowed, thing);
