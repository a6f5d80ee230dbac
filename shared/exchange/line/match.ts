import { ingredients } from '../../reference';
import { otherNames } from './names';

/** A food of the ingredient table that a name may mean. `sure`: the name means this one and no other. */
export interface FoodMatch {
  readonly id: string;
  readonly sure: boolean;
}

/** How the food is cut, sized or bought; it does not change what it is. "fresh", "dried", "ground" and "canned" do. */
const manner = new Set(['large', 'small', 'medium', 'big', 'ripe', 'chopped', 'finely', 'roughly', 'coarsely', 'diced', 'sliced', 'minced', 'grated', 'peeled', 'crushed', 'cubed',
  'shredded', 'sifted', 'melted', 'softened', 'cooked', 'raw', 'organic', 'good-quality', 'thinly', 'trimmed', 'washed', 'beaten', 'toasted', 'cold', 'firm', 'quality', 'good', 'good', 'boneless', 'skinless', 'the', 'of', 'a', 'some']);

/** Singular of an English plural, well enough that both forms of a food's name meet. */
function singular(word: string): string {
  if (/(?:ss|us|is)$/.test(word) || word.length < 4) return word;
  if (word.endsWith('ies')) return word.length > 4 ? `${word.slice(0, -3)}y` : word.slice(0, -1);
  if (/(?:toes|shes|ches|xes|sses)$/.test(word)) return word.slice(0, -2);
  if (word === 'leaves') return 'leaf';
  if (word === 'loaves') return 'loaf';
  return word.endsWith('s') ? word.slice(0, -1) : word;
}

/** "chilli" is spelled in three ways. */
const spelled = (word: string): string => word.replace(/^chil(?:l?i|e|ly|y)$/, 'chilli').replace(/^yogh?urt$/, 'yoghurt').replace(/^soya?$/, 'soya').replace(/^stoned$|^pitted$/, 'stoned');

function wordsOf(name: string): string[] {
  const plain = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[\u2018\u2019']s?\b/g, '').replace(/[^\p{L}\p{N}]+/gu, ' ').trim();
  return plain === '' ? [] : plain.split(' ').map(singular).map(spelled);
}

const keyOf = (words: readonly string[]): string => [...new Set(words)].sort().join(' ');

interface Key { readonly id: string; readonly words: readonly string[] }
const keys: readonly Key[] = ingredients.flatMap(({ id, name }) => [name, ...(Object.hasOwn(otherNames, id) ? (otherNames[id] ?? []) : [])].map((one) => ({ id, words: wordsOf(one) })));
const byKey = new Map<string, Set<string>>();
for (const { id, words } of keys) {
  const key = keyOf(words);
  byKey.set(key, (byKey.get(key) ?? new Set()).add(id));
}

/** Most candidates given. */
const mostMatches = 6;

/** Foods whose name and this one share words, those sharing most first. */
function near(words: readonly string[]): string[] {
  const have = new Set(words);
  const score = new Map<string, number>();
  for (const key of keys) {
    const shared = key.words.filter((word) => have.has(word)).length;
    const share = key.words.length === 0 ? 0 : (2 * shared) / (key.words.length + have.size);
    if (shared > 0) score.set(key.id, Math.max(score.get(key.id) ?? 0, share));
  }
  return [...score].sort(([, a], [, b]) => b - a).map(([id]) => id);
}

/**
 * Foods of the ingredient table that an item may mean, the likeliest first; at most six. `sure` only when the whole name, apart from how it is cut, is the
 * name of exactly one food. Nothing is guessed silently: "coriander" gives herb and seed, neither sure.
 */
export function matchIngredient(item: string): readonly FoodMatch[] {
  const words = wordsOf(item.slice(0, 200));
  const core = words.filter((word) => !manner.has(word));
  const exact = [words, core].map((some) => byKey.get(keyOf(some))).find((ids) => ids !== undefined && ids.size > 0);
  if (exact !== undefined) return [...exact].slice(0, mostMatches).map((id) => ({ id, sure: exact.size === 1 }));
  return near(core.length > 0 ? core : words).slice(0, mostMatches).map((id) => ({ id, sure: false }));
}
