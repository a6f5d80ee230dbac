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
  'recipe.line.asWritten': (p: { readonly text: string; readonly line: string }) => `${p.text} (as written, not scaled: ${p.line})`,
  'recipe.settle.line': (p: { readonly text: string }) => `"${p.text}" is not settled yet. Choose the food and write the amount, or leave the line out.`,
  'recipe.settle.field': (p: { readonly field: string }) => `The recipe does not fit here yet (${p.field}). Look at that field.`,
  'recipe.settle.notesCut': (p: { readonly most: number }, f) => `The notes hold ${f.number(p.most)} letters; what is longer was cut off. Keep the page.`,
  'recipe.scale.number': (p: { readonly given: string }) => `"${p.given}" is no number above 0. Write 3, 3.48 or 1/2.`,
  'recipe.scale.far': (p: { readonly times: string }) => `That is ${p.times} times the recipe, which no kitchen cooks at once. Look at the number again.`,
  'recipe.scale.range': (p: { readonly low: string; readonly got: string }) => `The recipe says "${p.got}"; it counts as ${p.low}.`,
  'recipe.scale.pieces': (p: { readonly got: string }) => `The recipe says "${p.got}" and names no portions; each of these counts as one portion.`,
  'recipe.scale.noPortions': (p: { readonly got: string }) => (p.got === '' ? 'The recipe does not say how many portions it makes. Scale it with --factor.' : `The recipe says it makes "${p.got}", not how many portions. Scale it with --yield or --factor.`),
  'recipe.scale.yield': (p: { readonly given: string }) => `"${p.given}" is no amount. Write a number and a unit, such as "3 kg".`,
  'recipe.scale.otherYield': (p: { readonly given: string; readonly got: string }) => (p.got === '' ? `The recipe does not say how much it makes, so "${p.given}" cannot be reached. Scale it with --portions or --factor.` : `The recipe makes "${p.got}", which cannot be turned into "${p.given}". Scale it with --portions or --factor.`),
  'command.usage.scale': `Usage: brimful scale RECIPE --portions N | --yield "3 kg" | --factor 3.48 [--units us|metric] [--recipe NAME] [--json]

Scales a recipe. RECIPE is a recipe, an event or a shelf of this program, or a page or file with a schema.org recipe (JSON-LD).
  --portions N   for N portions
  --yield        for an amount in all, such as "3 kg" or "48 pieces"
  --factor       times the recipe
  --units        tells the lines in US or metric units; without it, each in its own
  --recipe       which one, by name, short name or number, when there are several
  --json         exact amounts as JSON; lines that could not be read stand in "unread"`,
  'command.scale.needs-file': 'Name the file with the recipe.',
  'command.scale.needs-size': 'Say how much is wanted: one of --portions, --yield and --factor.',
  'command.scale.units': (p: { given: string }) => `--units is us or metric, not "${p.given}".`,
  'command.scale.empty': 'There is no recipe in this file.',
  'command.scale.which': (p: { names: string }) => `There are several recipes. Say with --recipe which one: ${p.names}.`,
  'command.scale.none': (p: { given: string; names: string }) => `There is no recipe "${p.given}". There is: ${p.names}.`,
  'command.scale.heading': (p: { name: string; factor: string }) => `${p.name}, ${p.factor} times`,
  'command.scale.line': (p: { text: string }) => `  ${p.text}`,
  'command.scale.unread': 'Look at these lines yourself; they could not be read in full:',
} as const satisfies Record<string, Entry>;
