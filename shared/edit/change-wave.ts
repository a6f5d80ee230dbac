import type { Event, Wave } from '../event';
import { changeItem, gone } from './items';
import { waves } from './lists';
import { materialiseHeadcount } from './materialise-headcount';
import type { EditResult } from './types';

/** Fields of a wave to change; single age bands and single stays may be given, the others stay. */
export interface WavePatch {
  readonly name?: string;
  readonly from?: number;
  readonly to?: number;
  readonly turnout?: Wave['turnout'];
  readonly counts?: Partial<Wave['counts']>;
  readonly stay?: Partial<Wave['stay']>;
}

/** Changes a wave: window, counts by age band, stay, name, how sure. A headcount set as a whole is first written into the waves when counts change. */
export function changeWave(event: Event, id: string, patch: WavePatch): EditResult {
  const start = patch.counts === undefined ? event : materialiseHeadcount(event);
  const wave = start.guests.waves.find((w) => w.id === id);
  if (wave === undefined) return gone(waves, id);
  const { counts, stay, ...rest } = patch;
  return changeItem(start, waves, id, {
    ...rest,
    ...(counts === undefined ? {} : { counts: { ...wave.counts, ...counts } }),
    ...(stay === undefined ? {} : { stay: { ...wave.stay, ...stay } }),
  });
}
