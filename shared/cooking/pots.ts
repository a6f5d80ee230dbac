import type { Event, Pot } from '../event';
import { divide, entered, figure, roundUp, times, workingOf, worked, type Figure } from '../figure';
import { settle, settledTerm } from '../household';

/** A pot and how many litres of food it takes. */
export interface UsablePot {
  readonly pot: Pot;
  readonly litres: number;
}

/** Pots with what they take, largest first; where two are as large, in the order of the list. */
export function usablePots(event: Event): readonly UsablePot[] {
  const fill = settle(event, 'pot.fill.water').value;
  return event.kitchen.pots.map((pot) => ({ pot, litres: pot.litres * fill })).toSorted((a, b) => b.litres - a.litres);
}

/** Litres of food the largest pot takes; null where there is none. */
export function usableOfLargest(event: Event): Figure | null {
  const [largest] = usablePots(event);
  if (largest === undefined) return null;
  const at = event.kitchen.pots.indexOf(largest.pot);
  return figure(largest.litres, 'L', () => workingOf('cooking.usable', [entered('pot', { text: largest.pot.name }, largest.pot.litres, 'L', `kitchen.pots[${at}].litres`), settledTerm('fill', settle(event, 'pot.fill.water'))], times('pot', 'fill')));
}

/** Goes or pots for so many litres. */
export const goesFor = (litres: Figure, usable: Figure): Figure => figure(Math.max(1, Math.ceil(litres.value / usable.value - 1e-9)), '', () =>
  workingOf('cooking.goes', [worked('litres', { word: 'cooking.term.litres' }, litres), worked('usable', { word: 'cooking.term.usable' }, usable)], roundUp(divide('litres', 'usable'))));

/** A pot that a drink is brewed in, and when. Minutes from midnight. */
export interface Brewed {
  readonly pot: string;
  readonly startAt: number;
  readonly readyAt: number;
}

/** Minutes each pot is wanted for so far, by id. */
export type PotLoad = Map<string, number>;

/**
 * Pots for the goes of one cooking: those that hold a go, the least used by other dishes first, then those with the fewest rounds of drinks at that time, then the smallest.
 * A single go that any pot of the kitchen holds is left to whichever is free.
 * @param brewed rounds of drinks in a pot while it would be wanted.
 */
export function potsFor(pots: readonly UsablePot[], goes: number, litres: number, minutes: number, load: PotLoad, brewed: (pot: string) => number): readonly (string | null)[] {
  const each = litres / goes;
  const holders = pots.filter((p) => p.litres >= each - 1e-9);
  if (holders.length === 0) return Array.from({ length: goes }, () => null);
  if (goes === 1 && holders.length === pots.length) return [null];
  return Array.from({ length: goes }, () => {
    const [best] = holders.toSorted((a, b) => (load.get(a.pot.id) ?? 0) - (load.get(b.pot.id) ?? 0) || brewed(a.pot.id) - brewed(b.pot.id) || a.litres - b.litres);
    if (best === undefined) return null;
    load.set(best.pot.id, (load.get(best.pot.id) ?? 0) + minutes);
    return best.pot.id;
  });
}

/** How often one pot is used for the goes of a cooking, at most. */
export function mostAfter(pots: readonly (string | null)[]): number {
  const used = new Map<string, number>();
  for (const pot of pots) if (pot !== null) used.set(pot, (used.get(pot) ?? 0) + 1);
  return Math.max(1, ...used.values());
}
