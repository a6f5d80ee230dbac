import type { Event } from '../event';
import { settled } from './check';
import type { EditResult } from './types';

/** Notes whether anybody who eats is at higher risk (pregnant, very old, ill, a baby); null = not asked yet. */
export const setHigherRisk = (event: Event, higherRisk: boolean | null): EditResult =>
  settled({ ...event, guests: { ...event.guests, higherRisk } }, { id: 'edit.higherRisk' });
