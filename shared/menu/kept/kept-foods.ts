import type { Step } from '../../event';
import type { DishPlan, ScaledLine } from '../types';
import { ingredient } from '../../reference';

/** Words that stand for many foods, and the sections of the shop they mean. */
const many: Readonly<Record<string, readonly string[]>> = { vegetables: ['vegetables', 'greens'], herbs: ['greens'], spices: ['spices'], greens: ['greens'] };

const wordsOf = (text: string): readonly string[] => text.toLowerCase().split(/[^\p{L}]+/u).filter((word) => word.length > 2);
const single = (word: string): string => (word.endsWith('oes') ? word.slice(0, -2) : word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word);

/** The line's food is named in the words of a step: by a word of its own name, or by a word for its kind. */
function isNamed({ ingredient: id }: ScaledLine, words: ReadonlySet<string>): boolean {
  const food = ingredient(id);
  const names = new Set([...wordsOf(food?.name.split(',')[0] ?? ''), ...wordsOf(id.replaceAll('-', ' '))].map(single));
  if ([...names].some((name) => words.has(name) && !tooWide.has(name))) return true;
  return Object.entries(many).some(([word, sections]) => words.has(single(word)) && food !== undefined && sections.includes(food.section));
}

/** Words of names that are no food by themselves. */
const tooWide: ReadonlySet<string> = new Set(['dry', 'fresh', 'water', 'ground', 'whole', 'white', 'black', 'red', 'green', 'brown', 'canned', 'cold', 'small', 'seed', 'leaf', 'spring', 'sweet', 'fine', 'powder', 'root', 'fruit', 'juice', 'split', 'long', 'crushed']);

/** Steps that finish a dish: what they leave is all of it. */
const finishing: ReadonlySet<Step['does']> = new Set(['cool', 'chill', 'freeze', 'bake', 'griddle']);

/**
 * What stands in the boxes after a step: null for the whole dish; else the lines of the foods its words name, or, where they name none, all that
 * is not finished in each bowl and does not come from the tap. Read from the step's own words, for a recipe does not say it in any other way.
 */
export function keptLines(dish: DishPlan, step: Step): readonly ScaledLine[] | null {
  const { steps } = dish.recipe;
  if (finishing.has(step.does) || (steps.at(-1)?.id === step.id && dish.recipe.frying === undefined && dish.recipe.brewing === undefined)) return null;
  const words = new Set(wordsOf(step.name).map(single));
  const named = dish.lines.filter((line) => isNamed(line, words) && ingredient(line.ingredient)?.section !== 'tap');
  if (named.length > 0) return named;
  return dish.lines.filter((line) => !line.perBowl && ingredient(line.ingredient)?.section !== 'tap');
}
