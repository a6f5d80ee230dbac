import { larderSchema, type Event } from '../event';
import { amountFrom, convertFood, isUnitId } from '../measure';
import { ingredient as rowOf } from '../reference';
import { checkPart, settled } from './check';
import { placeOfRow } from './set-row';
import type { EditResult } from './types';

const noWeights = { gramsPerMl: null, gramsPer: {} };

/**
 * Notes how much of an ingredient is in the house; null takes it out. The amount is a decimal string with a unit. It stands in place of all
 * entries of that food that can be turned into the unit; others, such as slices beside kilograms, stay.
 * @param unit the unit it is counted in, when there is no amount.
 */
export function setLarder(event: Event, ingredient: string, amount: { readonly amount: string; readonly unit: string } | null, unit: string | null = amount?.unit ?? null): EditResult {
  const weights = rowOf(ingredient) ?? noWeights;
  const isIt = (row: Event['larder'][number]): boolean =>
    row.ingredient === ingredient && (unit === null || !isUnitId(unit) || convertFood(amountFrom(row.amount), unit, weights) !== null);
  const name = { id: 'edit.larder', params: { ingredient } } as const;
  if (amount === null) return settled({ ...event, larder: event.larder.filter((row) => !isIt(row)) }, name);
  const at = placeOfRow(event.larder, isIt);
  const checked = checkPart(larderSchema, { ...event.larder[at], ingredient, amount }, ['larder', at]);
  if (!checked.ok) return checked.problem;
  const larder = event.larder.flatMap((row, i) => (i === at ? [checked.value] : isIt(row) ? [] : [row]));
  return settled({ ...event, larder: at < event.larder.length ? larder : [...larder, checked.value] }, name);
}
