import { proposeLine, readAmount, readIngredientLine, type LineProposal, type ReadLine, type SettledLine } from '../../../../shared/exchange';
import { amountFrom, convertFood, dimensionOf } from '../../../../shared/measure';
import { ingredient } from '../../../../shared/reference';
import type { Message } from '../../../../shared/words';
import { shortName } from './put-on-menu';

/** A line of a recipe being taken in: what it may mean, and what the cook decided. Nothing counts as settled before it is. */
export interface LineAnswer {
  readonly proposal: LineProposal;
  readonly settled: SettledLine | 'leaveOut' | null;
}

/** The answer a line has by itself: settled when it is sure in every part. */
export function firstAnswer(line: ReadLine): LineAnswer {
  const proposal = proposeLine(line);
  return { proposal, settled: proposal.settled };
}

/** A line typed by the cook. */
export const typedAnswer = (text: string): LineAnswer => firstAnswer(readIngredientLine(text));

/** The food to start from in an open line: the only sure one, else none. */
export const startFood = ({ foods }: LineProposal): string => (foods[0]?.sure === true ? foods[0].id : '');

/** Id of a food the table does not have, from what the line calls it. */
export const ownFood = ({ line }: LineProposal): string => shortName(line.item || line.text);

/** What the cook filled in for an open line. */
export interface Filled {
  readonly food: string;
  /** Amount and unit as typed. */
  readonly amount: string;
  readonly preparation: string;
  readonly toTaste: boolean;
}

/** What keeps the filled-in line from being taken, or the line. Counted things of a known food need a known weight, or nobody can buy them. */
export function settle({ food, amount: typed, preparation, toTaste }: Filled): SettledLine | { readonly problem: Message; readonly field: 'food' | 'amount' } {
  if (food === '') return { problem: { id: 'view.recipes.needsFood' }, field: 'food' };
  const amount = readAmount(typed, 'piece');
  if (amount === null) return { problem: typed.trim() === '' ? { id: 'view.recipes.needsAmount' } : { id: 'view.recipes.amountUnread', params: { got: typed.trim() } }, field: 'amount' };
  const known = ingredient(food);
  if (known !== undefined && dimensionOf(amount.unit) === 'count' && convertFood(amountFrom(amount), 'g', { ...known, gramsPerMl: known.gramsPerMl ?? 1 }) === null) {
    return { problem: { id: 'view.recipes.noPieceWeight', params: { food: known.name } }, field: 'amount' };
  }
  return { ingredient: food, amount, ...(preparation.trim() === '' ? {} : { preparation: preparation.trim().slice(0, 200) }), ...(toTaste ? { toTaste: true } : {}) };
}

/** How many lines are still open. */
export const openLines = (answers: readonly LineAnswer[]): number => answers.filter((answer) => answer.settled === null).length;

/** The lines that are settled and stay, in their order. */
export const keptLines = (answers: readonly LineAnswer[]): readonly SettledLine[] => answers.flatMap(({ settled }) => (settled === null || settled === 'leaveOut' ? [] : [settled]));
