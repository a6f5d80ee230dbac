import { evaluate, figure, termValues, type Figure, type Sum, type Term } from '../../figure';
import { amountOf, type UnitId } from '../../measure';
import type { ThingNeed, UseId } from '../types';

/** A figure whose value is its own sum: what is shown and what is reckoned cannot differ. */
export function summed(unit: string, rule: string, terms: readonly Term[], sum: Sum): Figure {
  const working = { rule, terms, sum };
  return figure(evaluate(sum, termValues(working)), unit, () => working);
}

/** A need of a thing; none when the figure is nothing. */
export const needOfThing = (thing: string, unit: UnitId, origin: UseId, worth: Figure): ThingNeed[] =>
  (worth.value > 0 ? [{ ingredient: thing, amount: amountOf(worth.value, unit), origin, figure: worth }] : []);
