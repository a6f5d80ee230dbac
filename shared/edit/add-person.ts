import type * as z from 'zod';
import type { Event, personSchema } from '../event';
import { addItem } from './items';
import { people } from './lists';
import type { EditResult } from './types';

/** Adds a helper. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addPerson = (event: Event, person: z.input<typeof personSchema>): EditResult => addItem(event, people, person);
