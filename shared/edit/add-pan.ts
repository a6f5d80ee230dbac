import type * as z from 'zod';
import type { Event, panSchema } from '../event';
import { assignOnly, stationOfFirst } from './assign-only';
import { addItem } from './items';
import { pans } from './lists';
import type { EditResult } from './types';

/** Adds a pan; the first one is a fry station too, for the fried dishes of the menu. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addPan = (event: Event, pan: z.input<typeof panSchema>): EditResult => assignOnly(stationOfFirst(addItem(event, pans, pan)));
