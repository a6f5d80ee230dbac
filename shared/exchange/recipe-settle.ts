import { Big } from 'big.js';
import { readableId } from '../event';
import { amountFrom, amountText, convertFood, dimensionOf, plain, type AmountText } from '../measure';
import { ingredient } from '../reference';
import { matchIngredient, type FoodMatch } from './line/match';
import { looseMeasure } from './line/loose';
import type { ReadLine } from './line/types';

/** An ingredient line once every question is settled. */
export interface SettledLine {
  /** Id of the ingredient table, or of an own ingredient. */
  readonly ingredient: string;
  /** A food that the table does not have, as the cook typed it. */
  readonly called?: string;
  readonly amount: AmountText;
  readonly preparation?: string;
  readonly toTaste?: boolean;
}

/**
 * What is open in a line: `line` it was not read in full; `food` which food it is; `amount` there is none, or a range; `unit` it is counted in something
 * of no known weight; `canned` whether what a can holds is meant with its liquid.
 */
export type OpenQuestion = 'line' | 'food' | 'amount' | 'unit' | 'canned';

/** A line with what it may mean. `settled` only when nothing is open. */
export interface LineProposal {
  readonly line: ReadLine;
  readonly foods: readonly FoodMatch[];
  readonly open: readonly OpenQuestion[];
  readonly settled: SettledLine | null;
  /** An amount to start from, where the line gives one in a unit or a measure of the hand; the lower end of a range, the contents of all cans. */
  readonly amount: AmountText | null;
}

const tinned = /^(?:can|tin|jar)$/;

/** The foods a line may mean: its preparation ("ground", "dried") and what it comes in ("can") say more than the item alone. */
function foodsOf(line: ReadLine): readonly FoodMatch[] {
  const wordings = [
    ...(line.countedIn !== undefined && tinned.test(line.countedIn) ? [`canned ${line.item}`, `canned ${line.item} drained`] : []),
    line.item,
    ...(line.preparation === undefined ? [] : [`${line.preparation} ${line.item}`, `${line.preparation.split(',')[0] ?? ''} ${line.item}`]),
  ];
  const all = wordings.map(matchIngredient);
  return all.find((foods) => foods[0]?.sure === true) ?? matchIngredient(line.item);
}

/** Decimal string that fits the file: at most twelve digits before the point. */
const fits = (value: Big): boolean => value.gte(0) && value.lt('1e12');

function amountOf({ amount, unit, countedIn, pack, weighs }: ReadLine, food: string | undefined): AmountText | null {
  if (amount === undefined || !fits(amount.low)) return null;
  if (weighs !== undefined && fits(weighs.amount.low)) return { amount: plain(weighs.amount.low), unit: weighs.unit };
  if (pack !== undefined) {
    const all = pack.count.low.times(pack.size.amount.low);
    return fits(all) ? { amount: plain(all), unit: pack.size.unit } : null;
  }
  if (countedIn !== undefined) return looseMeasure(amount.low, countedIn, food)?.amount ?? null;
  return { amount: plain(amount.low), unit: unit ?? 'piece' };
}

/** True for a handful, a sprig and their like that the line does not weigh itself: the amount is a start for the eye. */
const byHand = ({ countedIn, pack, weighs, amount }: ReadLine): boolean =>
  countedIn !== undefined && pack === undefined && weighs === undefined && amount !== undefined && looseMeasure(amount.low, countedIn, undefined) !== null;

function openIn(line: ReadLine, foods: readonly FoodMatch[], amount: AmountText | null): OpenQuestion[] {
  const [food] = foods;
  const known = food?.sure === true ? ingredient(food.id) : undefined;
  const counted = amount !== null && dimensionOf(amount.unit) === 'count';
  const weighed = known === undefined || amount === null || convertFood(amountFrom(amount), 'g', { gramsPerMl: known.gramsPerMl ?? 1, gramsPer: known.gramsPer }) !== null;
  return [
    ...(line.read === 'whole' ? [] : ['line'] as const),
    ...(known === undefined ? ['food'] as const : []),
    ...(line.amount === undefined || line.amount.high !== undefined ? ['amount'] as const : []),
    ...((amount === null && line.amount !== undefined) || byHand(line) || (counted && !weighed) ? ['unit'] as const : []),
    ...(line.countedIn !== undefined && tinned.test(line.countedIn) && amount !== null ? ['canned'] as const : []),
  ];
}

/** What a line may mean, and what the cook has to settle in it. Only what is sure is settled. */
export function proposeLine(line: ReadLine): LineProposal {
  const foods = foodsOf(line);
  const amount = amountOf(line, foods[0]?.sure === true ? foods[0].id : undefined);
  const open = openIn(line, foods, amount);
  const [food] = foods;
  const settled = open.length > 0 || food === undefined || amount === null ? null : {
    ingredient: food.id, amount, ...(line.preparation === undefined ? {} : { preparation: line.preparation.slice(0, 200) }), ...(line.toTaste ? { toTaste: true } : {}),
  };
  return { line, foods, open, settled, amount };
}

/** Grams of a settled line; a food the table does not know counts by its weight, or a measure of it as so much water. Null for pieces of it. */
function gramsOf({ ingredient: id, amount }: SettledLine): Big | null {
  const food = ingredient(id) ?? { gramsPerMl: 1, gramsPer: {} };
  return convertFood(amountFrom(amount), 'g', food)?.amount ?? null;
}

/** What goes in, as far as it can be weighed, and the names of the ingredients that cannot. */
export interface KnownWeight {
  readonly amount: AmountText;
  readonly without: readonly string[];
}

/**
 * Weight of the settled lines together, before anything boils off: where to start the yield from when nobody wrote it. Lines that cannot be weighed
 * count nothing and are named. Null when none can be weighed.
 */
export function knownWeight(lines: readonly SettledLine[]): KnownWeight | null {
  const weights = lines.map((line) => ({ line, grams: gramsOf(line) }));
  const grams = weights.reduce((sum, one) => sum.plus(one.grams ?? 0), new Big(0)).round(0);
  return grams.lte(0) ? null : { amount: amountText({ amount: grams, unit: 'g' }), without: weights.filter((one) => one.grams === null).map(({ line }) => ingredient(line.ingredient)?.name ?? line.called ?? readableId(line.ingredient)) };
}

/**
 * Weight of the settled lines together, to start the yield from: what goes in, before anything boils off. Null when one of them cannot be weighed.
 */
export function weightOfLines(lines: readonly SettledLine[]): AmountText | null {
  let grams = new Big(0);
  for (const line of lines) {
    const food = ingredient(line.ingredient);
    const weight = food === undefined ? null : convertFood(amountFrom(line.amount), 'g', food);
    if (weight === null) return null;
    grams = grams.plus(weight.amount);
  }
  return amountText({ amount: grams.round(0), unit: 'g' });
}
