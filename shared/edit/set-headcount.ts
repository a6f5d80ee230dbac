import { adultBands, childBands, guestsSchema, type BandId, type Event } from '../event';
import { invitedCounts } from '../guests';
import { checkPart, settled } from './check';
import type { EditResult } from './types';

const peopleOf = (event: Event, bands: readonly BandId[]): number =>
  invitedCounts(event).reduce((sum, counts) => sum + bands.reduce((inWave, band) => inWave + counts[band], 0), 0);
const headcountOf = (event: Event): { adults: number; children: number } => ({ adults: peopleOf(event, adultBands), children: peopleOf(event, childBands) });

/** Sets how many adults and children come in all; the plan spreads them over the waves. null = as the waves say. Whole numbers 0-20000. */
export function setHeadcount(event: Event, adults: number | null, children: number | null): EditResult {
  if (event.guests.waves.length === 0) return { problem: { id: 'edit.needsWave' }, path: 'guests.headcount' };
  const checked = checkPart(guestsSchema.shape.headcount, { ...event.guests.headcount, adults, children }, ['guests', 'headcount']);
  if (!checked.ok) return checked.problem;
  const after: Event = { ...event, guests: { ...event.guests, headcount: checked.value } };
  return settled(after, { id: 'edit.headcount', params: { before: headcountOf(event), after: headcountOf(after) } });
}
