import type { Event } from '../event';
import { changeItem, gone } from './items';
import { waves } from './lists';
import type { EditResult } from './types';

/** Moves a wave by so many minutes, later when positive; its length and people stay. */
export function moveWave(event: Event, id: string, minutes: number): EditResult {
  const wave = event.guests.waves.find((w) => w.id === id);
  if (wave === undefined) return gone(waves, id);
  return changeItem(event, waves, id, { from: wave.from + minutes, to: wave.to + minutes },
    (before, after) => ({ id: 'edit.moveWave', params: { name: before.name, from: before.from, to: after.from } }));
}
