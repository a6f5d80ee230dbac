import { Big } from 'big.js';
import type { IngredientLine, Recipe } from '../event';
import { plain, type UnitId } from '../measure';
import { say, type Formats } from '../words';
import { unitBehindManner } from './line/quantity';
import { foodInLine } from './recipe-own';

/** A recipe as a schema.org Recipe; written as JSON it can be read by other programs. Source: schema.org/Recipe. */
export interface RecipeJsonLd {
  readonly '@context': 'https://schema.org';
  readonly '@type': 'Recipe';
  readonly name: string;
  readonly description?: string;
  readonly recipeYield: readonly string[];
  /** ISO 8601 duration of the steps one after the other, without what depends on the size. */
  readonly totalTime?: string;
  readonly recipeIngredient: readonly string[];
  readonly recipeInstructions: readonly { readonly '@type': 'HowToStep'; readonly text: string }[];
}

/** Number as text that means one thing everywhere: thirds and eighths as fractions, otherwise decimals, never three of them ("1.500" is 1500 for some). */
export function exactNumber(value: Big): string {
  const whole = value.round(0, Big.roundDown);
  for (const parts of [1, 2, 3, 4, 6, 8]) {
    const above = value.minus(whole).times(parts).round(0);
    if (above.gte(parts) || value.minus(whole).minus(above.div(parts)).abs().gt('0.0000000000006')) continue;
    if (above.eq(0)) return plain(whole);
    return `${whole.eq(0) ? '' : `${plain(whole)} `}${plain(above)}/${parts}`;
  }
  const text = plain(value);
  return /\.\d{3}$/.test(text) ? `${text}0` : text;
}

const unitWords: Readonly<Partial<Record<UnitId, string>>> = { floz: 'fl oz', metricCup: 'metric cup', metricTbsp: 'metric tbsp', metricTsp: 'metric tsp' };

/** A unit in a line; counted things need no word, unless the food's name would be read as one. */
function unitWord(unit: UnitId, food: string): string {
  if (unit === 'piece') return unitBehindManner(` ${food}`, 0) === null ? '' : 'pieces';
  return unitWords[unit] ?? unit;
}

function lineOf(line: IngredientLine, formats: Formats): string {
  const food = foodInLine(line.ingredient);
  const head = [exactNumber(new Big(line.amount.amount)), unitWord(line.amount.unit, food), food].filter((part) => part !== '').join(' ');
  return [head, line.preparation?.trim() ?? '', line.toTaste ? say(formats, 'recipe.line.toTaste') : ''].filter((part) => part !== '').join(', ');
}

function isoDuration(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return `PT${hours > 0 ? `${hours}H` : ''}${rest > 0 || hours === 0 ? `${rest}M` : ''}`;
}

/** One of our own recipes as schema.org JSON-LD: plain lines with exact amounts, so that reading it back gives the same amounts. */
export function recipeJsonLd(recipe: Recipe, formats: Formats): RecipeJsonLd {
  const { yield: made, steps, notes } = recipe;
  const minutes = steps.reduce((sum, step) => sum + step.active.fixed + step.passive.fixed, 0);
  const amount = `${exactNumber(new Big(made.amount.amount))} ${made.amount.unit === 'piece' ? 'pieces' : (unitWords[made.amount.unit] ?? made.amount.unit)}`;
  return {
    '@context': 'https://schema.org', '@type': 'Recipe', name: recipe.name, ...(notes === undefined || notes === '' ? {} : { description: notes }),
    recipeYield: [`${exactNumber(new Big(made.portions))} servings`, amount],
    ...(minutes > 0 ? { totalTime: isoDuration(minutes) } : {}),
    recipeIngredient: recipe.ingredients.map((line) => lineOf(line, formats)),
    recipeInstructions: steps.map((step) => ({ '@type': 'HowToStep', text: step.name })),
  };
}
