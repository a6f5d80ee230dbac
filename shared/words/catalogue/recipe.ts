import type { Entry } from '../formats';

/** Words of the subject `recipe`: recipes read from other places, and recipes scaled in the terminal. */
export const recipeWords = {
  'recipe.import.nothing': 'There is no recipe in this text. Paste the whole page, or the part between { and }.',
  'recipe.import.broken': 'The text has data in it, but they are cut off or damaged. Save the page anew and paste all of it.',
  'recipe.import.tooLong': (p: { readonly most: number }, f) => `The text is longer than ${f.number(p.most / 1_000_000)} million letters. Paste only the part with the recipe.`,
  'recipe.import.noName': 'The recipe has no name. Give it one.',
  'recipe.import.noLines': 'The recipe has no ingredients. Add them by hand.',
  'recipe.import.manyLines': (p: { readonly count: number; readonly most: number }, f) => `The recipe has ${f.number(p.count)} ingredient lines. Only the first ${f.number(p.most)} were read.`,
  'recipe.import.manySteps': (p: { readonly count: number; readonly most: number }, f) => `The recipe has ${f.number(p.count)} steps. Only the first ${f.number(p.most)} were read.`,
  'recipe.import.openLines': (p: { readonly count: number }, f) => `${f.number(p.count)} ingredient ${f.plural(p.count, 'line', 'lines')} could not be read in full. Look at ${f.plural(p.count, 'it', 'them')} and fill in what is missing.`,
  'recipe.import.noYield': (p: { readonly got: string }) => (p.got === '' ? 'The recipe does not say how much it makes. Write how many portions.' : `How much "${p.got}" is could not be read. Write how many portions the recipe makes.`),
  'recipe.import.time': (p: { readonly field: string; readonly got: string }) => `The time "${p.got}" (${p.field}) could not be read. Set the minutes in the steps.`,
  'recipe.line.range': (p: { readonly low: string; readonly high: string }) => `${p.low} to ${p.high}`,
  'recipe.line.toTaste': 'to taste',
} as const satisfies Record<string, Entry>;
