import type * as z from 'zod';
import type { Event, dishSchema } from '../event';
import { assignOnly } from './assign-only';
import { addItem } from './items';
import { dishes } from './lists';
import type { EditResult } from './types';

/** Adds a dish of the menu. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addDish = (event: Event, dish: z.input<typeof dishSchema>): EditResult => assignOnly(addItem(event, dishes, dish));
