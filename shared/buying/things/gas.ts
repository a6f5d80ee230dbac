import type { Figure } from '../../figure';
import type { ThingNeed } from '../types';
import { needOfThing } from './count';

/** Bottled gas as a thing to have in the house: the day's own figure, nothing added. The room `timeline` works it out, for it knows all burners. Unit: kg. */
export const gasNeeds = (wantedKg: Figure | null): ThingNeed[] => (wantedKg === null ? [] : needOfThing('gas-bottle', 'kg', 'burners', wantedKg));
