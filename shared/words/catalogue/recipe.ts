import type { Entry, Formats } from '../formats';

/** Words of the subject `recipe`: recipes read from other places, and recipes scaled in the terminal. */
export const recipeWords = {
  'recipe.import.nothing': 'There is no recipe in this text. Paste the whole page, or the part between { and }.',
  'recipe.import.broken': 'The text has data in it, but they are cut off or damaged. Save the page anew and paste all of it.',
  'recipe.import.tooLong': (p: { readonly most: number }, f) => `The text is longer than ${f.number(p.most / 1_000_000)} million letters. Paste only the part with the recipe.`,
  'recipe.import.manyRecipes': (p: { readonly most: number }, f) => `There are more than ${f.number(p.most)} recipes. Only the first ${f.number(p.most)} were read; paste the others by themselves.`,
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

Scales a recipe. RECIPE is the name of one of your recipes (brimful shelf list names them), a recipe, an event or a shelf of this program,
or a page or file with a schema.org recipe.
  --portions N   for N portions as large as the recipe's own; a plan may give other portions, by the place in the meal
  --yield        for an amount in all, such as "3 kg" or "48 pieces"
  --factor       times the recipe
  --units        tells the lines in US or metric units; without it, each in its own
  --recipe       which one, by name, short name or number, when there are several
  --json         exact amounts as JSON; lines that could not be read stand in "unread"`,
  'command.scale.needs-file': 'Name the recipe, or the file with the recipe.',
  'command.scale.not-there': (p: { given: string; path: string }) => `There is no file ${p.path}, and no recipe "${p.given}" among yours or those that come with the program. brimful shelf list names them.`,
  'command.scale.needs-size': 'Say how much is wanted: one of --portions, --yield and --factor.',
  'command.scale.units': (p: { given: string }) => `--units is us or metric, not "${p.given}".`,
  'command.scale.empty': 'There is no recipe in this file.',
  'command.scale.which': (p: { names: string }) => `There are several recipes. Say with --recipe which one: ${p.names}.`,
  'command.scale.none': (p: { given: string; names: string }) => `There is no recipe "${p.given}". There is: ${p.names}.`,
  'command.scale.heading': (p: { name: string; factor: string }) => `${p.name}, ${p.factor} times`,
  'command.scale.portion': (p: { readonly portion: string }) => `  (a portion is the recipe's own: ${p.portion})`,
  'command.scale.line': (p: { text: string }) => `  ${p.text}`,
  'command.scale.unread': 'Look at these lines yourself; they could not be read in full:',
  'command.usage.shelf': `Usage: brimful shelf list [--json]
       brimful shelf show RECIPE [--json | --schema-org]
       brimful shelf import FILE ... [--keep both|mine|new] [--role ROLE] [--portions N] [--yield "3 kg"]
       brimful shelf export [RECIPE ...] [--schema-org] [--out FILE]
       brimful shelf join RECIPE [--keep both|mine|new]

The household's recipes, kept across events; until some are imported, those that come with the program.
  --file SHELF   another shelf file
  --keep         when a recipe of the same short name differs: both (as it is without --keep), mine or the new one
  --role         where a foreign recipe stands in the meal; foreign recipes are taken in when nothing in them is left open
  --yield        how much a foreign recipe makes, when it does not say; --portions likewise
  --schema-org   as schema.org recipes for other programs
  --out          into a file; without it, to the terminal`,
  'command.shelf.what': 'Say what to do: brimful shelf list, show, import, export or join.',
  'command.shelf.empty': 'There is no recipe on the shelf.',
  'command.shelf.line': (p: { id: string; name: string; portions: number; makes: string }, f: Formats) => `${p.id}: ${p.name}, ${f.number(p.portions, 1)} ${f.plural(p.portions, 'portion', 'portions')}, ${p.makes}`,
  'command.shelf.none': (p: { given: string }) => `There is no recipe "${p.given}" on the shelf. brimful shelf list names them.`,
  'command.shelf.needs-file': 'Name the file with the recipe.',
  'command.shelf.needs-recipe': 'Name the recipe. brimful shelf list names them.',
  'command.shelf.keep': (p: { given: string }) => `--keep is both, mine or new, not "${p.given}".`,
  'command.shelf.role': (p: { known: string }) => `Say with --role where the recipe stands in the meal: ${p.known}.`,
  'command.shelf.yield': (p: { given: string }) => `"${p.given}" is no amount. Write a number and a unit, such as "3 kg".`,
  'command.shelf.needs-yield': (p: { name: string }) => `"${p.name}" does not say how much it makes. Say it with --yield "3 kg".`,
  'command.shelf.needs-portions': (p: { name: string }) => `"${p.name}" does not say how many portions it makes. Say it with --portions.`,
  'command.shelf.weighed': (p: { name: string; weight: string }) => `"${p.name}" counts as ${p.weight}, the weight of all that goes in. Say it with --yield when it is less.`,
  'command.shelf.open': (p: { name: string; count: number }, f: Formats) => `"${p.name}" has ${f.number(p.count)} ${f.plural(p.count, 'line', 'lines')} to settle first:`,
  'command.shelf.open-line': (p: { text: string; what: string }) => `  ${p.text}: ${p.what}`,
  'command.shelf.open.line': 'not read in full',
  'command.shelf.open.food': 'which food this is',
  'command.shelf.open.amount': 'how much',
  'command.shelf.open.unit': 'what one of these weighs',
  'command.shelf.open.canned': 'weight with or without the liquid',
} as const satisfies Record<string, Entry>;
