import type { Event } from '../event';
import { removeItem } from './items';
import { waves } from './lists';
import { materialiseHeadcount } from './materialise-headcount';
import type { EditResult } from './types';

/** Takes a wave out with its people. A headcount set as a whole is first written into the waves, so that the others stay as they are. */
export const removeWave = (event: Event, id: string): EditResult => removeItem(materialiseHeadcount(event), waves, id);
