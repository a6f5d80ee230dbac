import type * as z from 'zod';
import { priceSchema, type Event, type ownLineSchema } from '../event';
import { checkPart, settled } from './check';
import { addItem } from './items';
import { ownLines } from './lists';
import type { EditResult } from './types';

/** Adds a line of the cook's own to the shopping list. `price`: what all of it costs, a decimal string; not known when left out. */
export function addOwnLine(event: Event, line: z.input<typeof ownLineSchema>, price?: string): EditResult {
  const added = addItem(event, ownLines, line);
  if (price === undefined || 'problem' in added) return added;
  const checked = checkPart(priceSchema, { ingredient: line.id, price, per: line.amount }, ['prices', event.prices.length]);
  return checked.ok ? settled({ ...added.event, prices: [...added.event.prices.filter((p) => p.ingredient !== line.id), checked.value] }, added.name) : checked.problem;
}
