import { proposeLine, readAmount, readIngredientLine, readLoose, type LineProposal, type ReadLine, type SettledLine } from '../../../../shared/exchange';
import { amountFrom, convertFood, dimensionOf, type AmountText } from '../../../../shared/measure';
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

/** The amount to start from in an open line: a measure of the hand as it is said, else what the line gives. @param entry how an amount stands in a field. */
export function startAmount({ line, amount, foods }: LineProposal, entry: (amount: AmountText) => string): string {
  if (amount === null) return '';
  const loose = line.countedIn === undefined || line.amount === undefined || line.weighs !== undefined ? null : readLoose(`${line.amount.low.toString()} ${line.countedIn}`, foods[0]?.id);
  return loose?.words ?? entry(amount);
}

/** Id of a food the table does not have, from what the line calls it. */
export const ownFood = (proposal: LineProposal): string => shortName(ownName(proposal));

/** What the cook calls a food the table does not have. */
export const ownName = ({ line }: LineProposal): string => (line.item || line.text).trim().slice(0, 120);

/** What the cook filled in for an open line. */
export interface Filled {
  readonly food: string;
  /** What she calls a food the table does not have. */
  readonly called?: string;
  /** Amount and unit as typed. */
  readonly amount: string;
  readonly preparation: string;
  readonly toTaste: boolean;
}

/** What keeps the filled-in line from being taken, or the line. Counted things of a known food need a known weight, or nobody can buy them. */
export function settle({ food, called, amount: typed, preparation, toTaste }: Filled): SettledLine | { readonly problem: Message; readonly field: 'food' | 'amount' } {
  if (food === '') return { problem: { id: 'view.recipes.needsFood' }, field: 'food' };
  const read = readAmount(typed, 'piece');
  // A pinch of a food with a known weight stays a pinch; a handful counts by what a hand holds, to taste.
  const loose = read === null || (read.unit === 'pinch' && ingredient(food)?.gramsPer.pinch === undefined) ? readLoose(typed, food) : null;
  const amount = loose?.amount ?? read;
  if (amount === null) return { problem: typed.trim() === '' ? { id: 'view.recipes.needsAmount' } : { id: 'view.recipes.amountUnread', params: { got: typed.trim() } }, field: 'amount' };
  const known = ingredient(food);
  if (known !== undefined && dimensionOf(amount.unit) === 'count' && convertFood(amountFrom(amount), 'g', { ...known, gramsPerMl: known.gramsPerMl ?? 1 }) === null) {
    return { problem: { id: 'view.recipes.noPieceWeight', params: { food: known.name } }, field: 'amount' };
  }
  const words = [...(loose === null ? [] : [loose.words]), preparation.trim()].filter((one) => one !== '').join(', ').slice(0, 200);
  return { ingredient: food, ...(known !== undefined || called === undefined ? {} : { called }), amount, ...(words === '' ? {} : { preparation: words }), ...(toTaste || loose !== null ? { toTaste: true } : {}) };
}

/** How many lines are still open. */
export const openLines = (answers: readonly LineAnswer[]): number => answers.filter((answer) => answer.settled === null).length;

/** The lines that are settled and stay, in their order. */
export const keptLines = (answers: readonly LineAnswer[]): readonly SettledLine[] => answers.flatMap(({ settled }) => (settled === null || settled === 'leaveOut' ? [] : [settled]));
