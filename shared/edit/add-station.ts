import type * as z from 'zod';
import type { Event, stationSchema } from '../event';
import { assignOnly } from './assign-only';
import { addItem } from './items';
import { stations } from './lists';
import type { EditResult } from './types';

/** Adds a fry station. Fields left out take their defaults; a problem is told beside the field it concerns. */
export const addStation = (event: Event, station: z.input<typeof stationSchema>): EditResult => assignOnly(addItem(event, stations, station));
