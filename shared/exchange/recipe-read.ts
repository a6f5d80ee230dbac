import * as z from 'zod';
import type { Message } from '../words';
import { readIngredientLine } from './line/read';
import { ingredientTexts, minutesOf, stepsOf, textOf } from './recipe-fields';
import { jsonInPage } from './recipe-find';
import { mostRecipes, recipesInJson, type JsonGroup } from './recipe-graph';
import type { ImportedRecipe, ImportProblem } from './recipe-types';
import { readYield } from './recipe-yield';

/** Longest text that is looked into, in letters: a saved page with its scripts. */
export const longestPage = 6_000_000;
/** Ingredient lines read of one recipe; more are told and left out. */
const mostLines = 200;
const mostSteps = 200;
const longestName = 120;

const any = z.unknown().optional();

/** What of schema.org Recipe is used. Every field may be missing, one or many; other fields are let be. Source: schema.org/Recipe. */
const recipeShape = z.looseObject({
  name: any, headline: any, description: any, author: any, url: any, recipeYield: any, yield: any,
  prepTime: any, cookTime: any, totalTime: any, recipeInstructions: any, instructions: any,
});

function readOne(raw: JsonGroup, tell: (message: Message) => void): ImportedRecipe {
  const fields = recipeShape.parse(raw);
  const time = (key: 'prepTime' | 'cookTime' | 'totalTime'): number | undefined => {
    const text = textOf(fields[key]);
    if (text === '') return undefined;
    const minutes = minutesOf(text);
    if (minutes === null) tell({ id: 'recipe.import.time', params: { field: key, got: text.slice(0, 40) } });
    return minutes ?? undefined;
  };
  const [prepare, cook, total] = [time('prepTime'), time('cookTime'), time('totalTime')];
  const named = textOf(fields.name) || textOf(fields.headline);
  if (named === '') tell({ id: 'recipe.import.noName' });
  const texts = ingredientTexts(raw);
  if (texts.length === 0) tell({ id: 'recipe.import.noLines' });
  if (texts.length > mostLines) tell({ id: 'recipe.import.manyLines', params: { count: texts.length, most: mostLines } });
  const lines = texts.slice(0, mostLines).map(readIngredientLine);
  const open = lines.filter((line) => line.read !== 'whole').length;
  if (open > 0) tell({ id: 'recipe.import.openLines', params: { count: open } });
  const made = readYield(fields.recipeYield ?? fields.yield);
  if (made.portions === undefined && made.made === undefined) tell({ id: 'recipe.import.noYield', params: { got: made.texts.join(', ').slice(0, 80) } });
  const steps = stepsOf(fields.recipeInstructions ?? fields.instructions);
  if (steps.length > mostSteps) tell({ id: 'recipe.import.manySteps', params: { count: steps.length, most: mostSteps } });
  return {
    name: named.slice(0, longestName), yield: made, lines, steps: steps.slice(0, mostSteps),
    minutes: { ...(prepare === undefined ? {} : { prepare }), ...(cook === undefined ? {} : { cook }), ...(total === undefined ? {} : { total }) },
    description: textOf(fields.description).slice(0, 2000),
    source: [textOf(fields.author), textOf(fields.url)].filter((part) => part !== '').join(', ').slice(0, 400),
  };
}

/**
 * Recipes in a pasted text or a saved page: schema.org Recipe as JSON-LD, as an object, a list, in `@graph`, between other words or in the scripts of an HTML
 * page. Never throws. What could not be read is told in `problems`, and in the lines themselves; nothing is guessed.
 */
export function readRecipes(text: string): { readonly recipes: readonly ImportedRecipe[]; readonly problems: readonly ImportProblem[] } {
  if (text.length > longestPage) return { recipes: [], problems: [{ recipe: null, message: { id: 'recipe.import.tooLong', params: { most: longestPage } } }] };
  const { values, unreadable } = jsonInPage(text);
  const problems: ImportProblem[] = [];
  const found = recipesInJson(values);
  if (found.length > mostRecipes) problems.push({ recipe: null, message: { id: 'recipe.import.manyRecipes', params: { most: mostRecipes } } });
  const recipes = found.slice(0, mostRecipes).map((raw, at) => readOne(raw, (message) => problems.push({ recipe: at, message })));
  if (recipes.length === 0) problems.unshift({ recipe: null, message: { id: unreadable > 0 ? 'recipe.import.broken' : 'recipe.import.nothing' } });
  return { recipes, problems };
}
