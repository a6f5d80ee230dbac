import { guestsSchema, type AllergenId, type Event } from '../event';
import { checkPart, settled } from './check';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

const rowSchema = guestsSchema.shape.allergies.unwrap().element;

/** Notes how many guests are allergic to something; 0 takes the line out. */
export function setAllergy(event: Event, allergen: AllergenId, people: number, note?: string): EditResult {
  const { allergies } = event.guests;
  const isIt = (row: { readonly allergen: AllergenId }): boolean => row.allergen === allergen;
  const name = { id: 'edit.allergy', params: { people } } as const;
  if (people === 0) return settled({ ...event, guests: { ...event.guests, allergies: setRow(allergies, isIt, null) } }, name);
  const row = { ...allergies.find(isIt), allergen, people, ...(note === undefined ? {} : { note }) };
  const checked = checkPart(rowSchema, row, ['guests', 'allergies', placeOfRow(allergies, isIt)]);
  return checked.ok ? settled({ ...event, guests: { ...event.guests, allergies: setRow(allergies, isIt, checked.value) } }, name) : checked.problem;
}
