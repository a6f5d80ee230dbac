import type * as z from 'zod';
import type { Event, waveSchema } from '../event';
import { addItem } from './items';
import { waves } from './lists';
import { materialiseHeadcount } from './materialise-headcount';
import type { EditResult } from './types';

/** Adds a wave of guests. A headcount set as a whole is first written into the waves, so that the new people come on top. */
export const addWave = (event: Event, wave: z.input<typeof waveSchema>): EditResult => addItem(materialiseHeadcount(event), waves, wave);
