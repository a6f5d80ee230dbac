import type * as z from 'zod';
import type { Event, panSchema } from '../event';
import { addItem } from './items';
import { pans } from './lists';
import type { EditResult } from './types';

/** Adds a pan. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addPan = (event: Event, pan: z.input<typeof panSchema>): EditResult => addItem(event, pans, pan);
