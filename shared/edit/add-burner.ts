import type * as z from 'zod';
import type { Event, burnerSchema } from '../event';
import { addItem } from './items';
import { burners } from './lists';
import type { EditResult } from './types';

/** Adds a burner. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addBurner = (event: Event, burner: z.input<typeof burnerSchema>): EditResult => addItem(event, burners, burner);
