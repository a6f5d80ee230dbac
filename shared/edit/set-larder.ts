import { larderSchema, type Event } from '../event';
import { checkPart, settled } from './check';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

/** Notes how much of an ingredient is in the house; null takes the line out. The amount is a decimal string with a unit. */
export function setLarder(event: Event, ingredient: string, amount: { readonly amount: string; readonly unit: string } | null): EditResult {
  const isIt = (row: { readonly ingredient: string }): boolean => row.ingredient === ingredient;
  const name = { id: 'edit.larder', params: { ingredient } } as const;
  if (amount === null) return settled({ ...event, larder: setRow(event.larder, isIt, null) }, name);
  const checked = checkPart(larderSchema, { ...event.larder.find(isIt), ingredient, amount }, ['larder', placeOfRow(event.larder, isIt)]);
  return checked.ok ? settled({ ...event, larder: setRow(event.larder, isIt, checked.value) }, name) : checked.problem;
}
