import type { Plan } from '../../plan';
import { keptThings } from './kept-things';
import { leftovers } from './leftover';

/** Labels to print, and so to buy. */
export interface ContainerLabels {
  /** One for each box or bag of what is made ahead. */
  readonly madeAhead: number;
  /** One for each dish that may be left over. */
  readonly leftOver: number;
  readonly total: number;
}

/** How many labels the boxes of this plan need: what the sheet of labels prints, for the shopping list. Pure; whole numbers, 0 when nothing is kept. */
export function containerLabels(plan: Plan): ContainerLabels {
  const madeAhead = keptThings(plan).reduce((sum, thing) => sum + thing.boxes.count.value, 0);
  const leftOver = leftovers(plan).length;
  return { madeAhead, leftOver, total: madeAhead + leftOver };
}
