import type { Entry } from '../formats';

/** Words of the subject `shelf`: the household's recipes in one file, what is wrong with such a file, and what a merge did. */
export const shelfWords = {
  'shelf.empty': 'The file is empty. It holds no recipes.',
  'shelf.notAShelf': (p: { readonly got: string }) => `This file is not a recipe shelf. Its first field must be "format": "brimful-shelf/1"; it has ${p.got}.`,
  'shelf.newer': (p: { readonly format: string }) => `This shelf was written by a newer version (${p.format}), and this one would not keep all of it. Open it with the newer version.`,
  'shelf.note.dropped': (p: { readonly count: number }, f) => `${f.number(p.count)} ${f.plural(p.count, 'field', 'fields')} with the unusable name "__proto__" ${f.plural(p.count, 'was', 'were')} left out.`,
  'shelf.full': (p: { readonly most: number; readonly count: number }, f) => `A shelf holds at most ${f.number(p.most)} recipes; together these are ${f.number(p.count)}. Take some out, or keep a second shelf.`,
  'shelf.merged.added': (p: { readonly count: number }, f) => `${f.number(p.count)} ${f.plural(p.count, 'recipe', 'recipes')} added.`,
  'shelf.merged.same': (p: { readonly count: number }, f) => `${f.number(p.count)} already on the shelf, word for word.`,
  'shelf.merged.kept': (p: { readonly names: string }) => `Your own stays as it is: ${p.names}.`,
  'shelf.merged.replaced': (p: { readonly names: string }) => `Replaced: ${p.names}.`,
  'shelf.merged.renamed': (p: { readonly names: string }) => `Both kept, the new one under a second name: ${p.names}.`,
  'shelf.doubles': (p: { readonly name: string; readonly first: string; readonly second: string }) => `Two recipes are called ${p.name}: ${p.first} and ${p.second}. Join them with: brimful shelf join ${p.second} --keep mine|new|both`,
  'shelf.joined.ours': (p: { readonly name: string }) => `Kept the first ${p.name}; the second is gone.`,
  'shelf.joined.theirs': (p: { readonly name: string }) => `Kept the second ${p.name} in the place of the first.`,
  'shelf.joined.both': (p: { readonly name: string }) => `Kept both; the second is now called ${p.name}.`,
  'shelf.noDouble': (p: { readonly given: string }) => `No other recipe of the shelf has the name of “${p.given}”. There is nothing to join.`,
} as const satisfies Record<string, Entry>;
