import type { Event } from '../../event';
import { divide, figure, just, plus, roundUp, times, workingOf, worked, type Figure, type Term } from '../../figure';
import { settle, settledTerm } from '../../household';
import { amountOf, baseFactor, convert, convertFood, dimensionOf, type Amount } from '../../measure';
import type { DishPlan, ScaledLine } from '../types';
import { ingredient } from '../../reference';

/** Sizes of box a kitchen has, in litres (common practice, no source). */
const sizes = [0.25, 0.5, 1, 2, 4, 8] as const;

/** Boxes of one size, or bags of so many pieces. */
export interface Boxes {
  readonly count: Figure;
  /** Litres of one box; null for bags of pieces. */
  readonly boxLitres: number | null;
  /** Room they take, in litres; null where pieces are not measured so. */
  readonly litres: Figure | null;
}

const gramsOf = (line: ScaledLine): number => {
  const food = ingredient(line.ingredient) ?? { gramsPerMl: null, gramsPer: {} };
  return Number(convertFood(line.amount, 'g', food)?.amount ?? 0);
};

/** Weight of some lines in grams; lines that cannot be weighed count nothing. */
export const gramsOfLines = (lines: readonly ScaledLine[]): Amount => amountOf(lines.reduce((sum, line) => sum + gramsOf(line), 0), 'g');

/** How many times its dry weight a soaked food has; 1 for what is not soaked and for foods the table does not tell it of. @param soaked ids of what has been soaked by now. */
export const swellOf = (id: string, soaked: ReadonlySet<string>): number => (soaked.has(id) ? (ingredient(id)?.cookedFactor ?? 1) : 1);

/** Litres of cut, soaked or measured foods, loose in the box: weight over density where the table has one, else a litre a kilogram. */
export function litresOfLines(lines: readonly ScaledLine[], soaked: ReadonlySet<string>): Figure {
  const parts = lines.map((line) => {
    const food = ingredient(line.ingredient);
    const swells = swellOf(line.ingredient, soaked);
    // What a spoon holds of a leaf is loose; a box holds no more of it. A figure above water's is kept at water's.
    const density = Math.min(food?.gramsPerMl ?? 1, 1);
    return { line, food, swells, density, grams: gramsOf(line) };
  });
  const value = parts.reduce((sum, part) => sum + (part.grams * part.swells) / (1000 * part.density), 0);
  return figure(value, 'L', () => {
    const terms: Term[] = parts.map(({ line, food, swells, density, grams }, at) => worked(`food${at + 1}`, { text: food?.name ?? line.ingredient.replaceAll(/[-_]/g, ' ') }, figure((grams * swells) / (1000 * density), 'L', () => workingOf('prep.foodVolume', [
      { key: 'grams', label: { word: 'prep.term.grams' }, value: grams, unit: 'g', origin: { kind: 'recipe', recipe: line.ingredient } },
      { key: 'swells', label: { word: 'prep.term.swells' }, value: swells, unit: '', origin: originOf(food?.figures.cooked?.source, swells !== 1, line.ingredient) },
      { key: 'density', label: { word: 'prep.term.density' }, value: density, unit: 'g', origin: originOf(food?.figures.density?.source, density !== 1, line.ingredient) },
      { key: 'litre', label: { word: 'prep.term.litre' }, value: 1000, unit: 'ml', origin: { kind: 'definition' } },
    ], divide(divide(times('grams', 'swells'), 'density'), 'litre')))));
    if (terms.length === 0) terms.push({ key: 'none', label: { word: 'prep.term.none' }, value: 0, unit: 'L', origin: { kind: 'definition' } });
    return workingOf('prep.volume', terms, plus(...terms.map((term) => term.key)));
  });
}

const originOf = (source: string | undefined, isTabled: boolean, row: string): NonNullable<Term['origin']> =>
  ({ kind: 'table', source: isTabled && source !== undefined ? source : 'common-practice', row });

/** Litres of a whole dish; null when it is counted in pieces. A kilogram takes a litre (common practice, no source). */
export function litresOfDish({ total, totalFigure }: DishPlan): Figure | null {
  if (dimensionOf(total.unit) === 'count') return null;
  const isVolume = dimensionOf(total.unit) === 'volume';
  const value = Number(convert(total, isVolume ? 'L' : 'kg').amount);
  const factor = Number(baseFactor(total.unit)) / 1000;
  return figure(totalFigure.value * factor === value ? value : totalFigure.value * factor, 'L', () => workingOf('prep.dishVolume', [
    worked('total', { word: 'prep.term.total' }, totalFigure),
    { key: 'litres', label: { word: 'prep.term.litresOfOne' }, value: factor, unit: 'L', origin: isVolume ? { kind: 'definition' } : { kind: 'table', source: 'common-practice', row: 'prep.kilogramLitre' } },
  ], times('total', 'litres')));
}

/** Boxes for so many litres: the smallest size that holds all of it, else as many of the largest allowed. @param largest id of the parameter with the largest box. */
export function boxesFor(event: Event, litres: Figure, largest: 'prep.boxCut' | 'prep.boxCooked' | 'prep.boxFreezer'): Boxes {
  const fill = settle(event, 'prep.boxFill');
  const most = settle(event, largest);
  const boxLitres = sizes.find((size) => size <= most.value && litres.value <= size * fill.value) ?? most.value;
  const count = Math.max(1, Math.ceil(litres.value / (boxLitres * fill.value) - 1e-9));
  const size: Term = boxLitres === most.value ? { ...settledTerm('box', most) } : { key: 'box', label: { word: 'prep.term.box' }, value: boxLitres, unit: 'L', origin: { kind: 'table', source: 'common-practice', row: 'prep.boxSizes' } };
  const boxes = figure(count, 'boxes', () => workingOf('prep.boxes', [worked('litres', { word: 'prep.term.litres' }, litres), size, settledTerm('fill', fill)], roundUp(divide('litres', times('box', 'fill')))));
  return { count: boxes, boxLitres, litres: figure(count * boxLitres, 'L', () => workingOf('prep.room', [worked('boxes', { word: 'prep.term.boxes' }, boxes), size], times('boxes', 'box'))) };
}

/** Bags for so many pieces. */
export function bagsFor(event: Event, pieces: Figure): Boxes {
  const bag = settle(event, 'prep.bagPieces');
  const count = Math.max(1, Math.ceil(pieces.value / bag.value - 1e-9));
  return { boxLitres: null, litres: null, count: figure(count, 'bags', () => workingOf('prep.bags', [worked('pieces', { word: 'prep.term.pieces' }, pieces), settledTerm('bag', bag)], roundUp(divide('pieces', 'bag')))) };
}

/** A bag of dry mix for each bowl. @param bowls above 0. */
export const bowlBags = (bowls: number): Boxes => ({
  boxLitres: null, litres: null, count: figure(bowls, 'bags', () => workingOf('prep.bowlBags', [{ key: 'bowls', label: { word: 'prep.term.bowls' }, value: bowls, unit: 'bowls', origin: { kind: 'computed', method: 'prep.method.bowls' } }], just('bowls'))),
});
