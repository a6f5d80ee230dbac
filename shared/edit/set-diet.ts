import { guestsSchema, type DietId, type Event } from '../event';
import { checkPart, settled } from './check';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

const rowSchema = guestsSchema.shape.diets.unwrap().element;

/** Notes how many guests keep a diet; 0 takes the line out. */
export function setDiet(event: Event, diet: DietId, people: number): EditResult {
  const { diets } = event.guests;
  const isIt = (row: { readonly diet: DietId }): boolean => row.diet === diet;
  const name = { id: 'edit.diet', params: { people } } as const;
  if (people === 0) return settled({ ...event, guests: { ...event.guests, diets: setRow(diets, isIt, null) } }, name);
  const checked = checkPart(rowSchema, { ...diets.find(isIt), diet, people }, ['guests', 'diets', placeOfRow(diets, isIt)]);
  return checked.ok ? settled({ ...event, guests: { ...event.guests, diets: setRow(diets, isIt, checked.value) } }, name) : checked.problem;
}
