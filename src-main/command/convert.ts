import type { Big } from 'big.js';
import { amountOf, convertFood, dimensionOf, isUnitId, parseAmount, plain, unitIds } from '../../shared/measure';
import type { UnitId } from '../../shared/measure';
import { ingredients, sourceTitle } from '../../shared/reference';
import type { Ingredient, IngredientFigureId } from '../../shared/reference';
import { readOptions } from './options';
import { BadInput, exits } from './terminal';
import type { Command } from './terminal';
import { tell } from './words';

/** `brimful convert 2.5 cup g --of "chickpea flour"` */
export const convertCommand: Command = {
  usage: tell('command.usage.convert'),
  run: (args, terminal) => {
    const given = readOptions(args, { of: 'string' });
    const words = given.files;
    if (words.length < 3) throw new BadInput(tell('command.convert.needs', { example: '2.5 cup g --of "chickpea flour"' }));
    const typed = words.slice(0, -2).join(' ').trim();
    const amount = readAmount(typed);
    const from = readUnit(words.at(-2) ?? '');
    const to = readUnit(words.at(-1) ?? '');
    const food = given.text('of') === undefined ? null : readFood(given.text('of') ?? '');
    const result = convertFood(amountOf(amount, from), to, food ?? { gramsPerMl: null, gramsPer: {} });
    if (result === null) throw new BadInput(whyNot(from, to, food));
    terminal.out(tell('command.convert.answer', { amount: isShort(amount) ? plain(amount) : typed, from, ...shown(result.amount), to, food: food?.name.toLowerCase() ?? '' }));
    if (food !== null) for (const line of sourceLines(from, to, food)) terminal.out(line);
    return Promise.resolve(exits.ok);
  },
};

/** A number as a cook writes it: "2.5", "2,5", "1/2", "2 1/2", "1½". @throws BadInput */
function readAmount(text: string): Big {
  const amount = parseAmount(text);
  if (amount === null) throw new BadInput(tell('command.convert.amount', { given: text }));
  return amount;
}

/** Digits of a number that is said as it is; a longer one is rounded and said to be. */
const longest = 7;
const isShort = (value: Big): boolean => value.c.length <= longest || value.eq(value.round(0));

/** A result as it is, or to four digits (whole where it is larger), and which of the two. What a third leaves at the sixteenth digit is none of it. */
function shown(value: Big): { readonly result: string; readonly isRounded: boolean } {
  const settled = value.prec(15);
  if (isShort(settled)) return { result: plain(settled), isRounded: false };
  const four = settled.prec(4);
  return { result: plain(four.gte(1000) ? settled.round(0) : four), isRounded: true };
}

/** A unit, also in the plural and in any case. @throws BadInput */
function readUnit(text: string): UnitId {
  const singular = text.replace(/s$/i, '');
  const found = [text, text.toLowerCase(), singular, singular.toLowerCase()].find(isUnitId)
    ?? unitIds.find((unit) => unit.toLowerCase() === text.toLowerCase());
  if (found === undefined) throw new BadInput(tell('command.convert.unit', { given: text, known: unitIds.join(', ') }));
  return found;
}

/** A food of the table by its name or id. @throws BadInput with the nearest names */
function readFood(text: string): Ingredient {
  const wanted = plainName(text);
  const exact = ingredients.find((food) => plainName(food.id) === wanted || plainName(food.name) === wanted);
  if (exact !== undefined) return exact;
  const words = wanted.split(' ');
  const near = ingredients.filter((food) => words.some((word) => word.length > 2 && plainName(food.name).includes(word))).slice(0, 6);
  throw new BadInput(tell('command.convert.unknown-food', { given: text, near: near.map((food) => food.name.toLowerCase()).join(', ') }));
}

const plainName = (text: string): string => text.toLowerCase().replaceAll('-', ' ').replace(/\s+/g, ' ').trim();

function whyNot(from: UnitId, to: UnitId, food: Ingredient | null): string {
  if (food === null) return tell('command.convert.needs-food', { from, to });
  const unknown = [from, to].find((unit) => figureOf(unit, food) === undefined && dimensionOf(unit) !== 'mass') ?? to;
  return tell('command.convert.no-figure', { food: food.name.toLowerCase(), unit: unknown });
}

function figureId(unit: UnitId): IngredientFigureId | null {
  if (dimensionOf(unit) === 'volume') return 'density';
  return unit === 'piece' || unit === 'bunch' || unit === 'clove' || unit === 'slice' || unit === 'pinch' ? unit : null;
}

const figureOf = (unit: UnitId, food: Ingredient): Ingredient['figures'][IngredientFigureId] => {
  const id = figureId(unit);
  return id === null ? undefined : food.figures[id];
};

/** What the answer rests on, when the two units measure different things. */
function sourceLines(from: UnitId, to: UnitId, food: Ingredient): string[] {
  if (from === to || (dimensionOf(from) === dimensionOf(to) && dimensionOf(from) !== 'count')) return [];
  return [from, to].flatMap((unit) => {
    const figure = figureOf(unit, food);
    if (figure === undefined) return [];
    const density = figureId(unit) === 'density';
    const what = density ? tell('command.convert.density') : tell('command.convert.weight-of-one', { unit });
    return tell('command.convert.source', { what, value: figure.value, unit: density ? 'g/ml' : 'g', source: sourceTitle(figure.source)?.title ?? figure.source });
  });
}
