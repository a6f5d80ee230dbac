import { written, type Recipe } from '../event';
import type { Message } from '../words';
import { mostRecipes, type Shelf } from './shelf';

/** What to do when both shelves have a recipe of one id and they differ: leave ours, take theirs, or keep both (theirs under a second id). */
export type MergeChoice = 'ours' | 'theirs' | 'both';

/** What a merge did, by recipe id. `renamed` gives the ids the incoming recipes now have. */
export interface MergeReport {
  readonly added: readonly string[];
  /** On both shelves, equal in every field. */
  readonly same: readonly string[];
  readonly kept: readonly string[];
  readonly replaced: readonly string[];
  readonly renamed: readonly { readonly from: string; readonly to: string }[];
}

/** A merged shelf, or why there is none. */
export type Merged = { readonly ok: true; readonly shelf: Shelf; readonly report: MergeReport } | { readonly ok: false; readonly message: Message };

/** Equal in every field, whatever the order they were written in. */
export const sameRecipe = (a: Recipe, b: Recipe): boolean => written(a) === written(b);

/** Recipes by what stands in them, whatever their ids; each is written out once, and none before one is asked for. */
class Contents {
  private counts: Map<string, number> | undefined;
  private readonly recipes: readonly Recipe[];

  /** `recipes` may change as long as `change` is told. */
  constructor(recipes: readonly Recipe[]) {
    this.recipes = recipes;
  }

  has(recipe: Recipe): boolean {
    if (this.counts === undefined) {
      this.counts = new Map();
      for (const own of this.recipes) this.count(own, 1);
    }
    return (this.counts.get(withoutId(recipe)) ?? 0) > 0;
  }

  /** Tells of a recipe that is there now, and of one that is not there any more. */
  change(added: Recipe, removed?: Recipe): void {
    if (this.counts === undefined) return;
    this.count(added, 1);
    if (removed !== undefined) this.count(removed, -1);
  }

  private count(recipe: Recipe, by: number): void {
    const key = withoutId(recipe);
    this.counts?.set(key, (this.counts.get(key) ?? 0) + by);
  }
}

const withoutId = (recipe: Recipe): string => written({ ...recipe, id: '' });

/** Longest id the schema allows; a second id is cut to fit. */
const longestId = 64;

function secondId(id: string, taken: ReadonlySet<string>): string {
  for (let n = 2; ; n++) {
    const tail = `-${n}`;
    const free = `${id.slice(0, longestId - tail.length)}${tail}`;
    if (!taken.has(free)) return free;
  }
}

/**
 * Puts the recipes of one shelf onto another, recipe by recipe by id. Ours keep their place and order; new ones follow in theirs. Nothing is
 * lost without being named in the report. Merging a shelf with itself changes nothing; merging twice does no more than merging once.
 * @param choose what to do with a recipe that differs; 'both' by default, so that nobody's recipe is overwritten unasked.
 */
export function mergeShelf(ours: Shelf, theirs: Shelf, choose: (ours: Recipe, theirs: Recipe) => MergeChoice = () => 'both'): Merged {
  const recipes = [...ours.recipes];
  const taken = new Set([...ours.recipes, ...theirs.recipes].map((r) => r.id));
  const [added, same, kept, replaced]: [string[], string[], string[], string[]] = [[], [], [], []];
  const renamed: { from: string; to: string }[] = [];
  const contents = new Contents(recipes);
  const places = new Map(recipes.map((recipe, at) => [recipe.id, at]));
  const add = (recipe: Recipe): void => {
    contents.change(recipe);
    places.set(recipe.id, recipes.push(recipe) - 1);
  };
  for (const incoming of theirs.recipes) {
    const at = places.get(incoming.id) ?? recipes.length;
    const mine = recipes[at];
    if (mine === undefined) {
      add(incoming);
      added.push(incoming.id);
    } else if (contents.has(incoming)) same.push(incoming.id);
    else {
      const choice = choose(mine, incoming);
      if (choice === 'ours') kept.push(incoming.id);
      else if (choice === 'theirs') {
        contents.change(incoming, mine);
        recipes[at] = incoming;
        replaced.push(incoming.id);
      } else {
        const to = secondId(incoming.id, taken);
        taken.add(to);
        add({ ...incoming, id: to });
        renamed.push({ from: incoming.id, to });
      }
    }
  }
  if (recipes.length > mostRecipes) return { ok: false, message: { id: 'shelf.full', params: { most: mostRecipes, count: recipes.length } } };
  return { ok: true, shelf: { ...ours, recipes }, report: { added, same, kept, replaced, renamed } };
}

const list = (ids: readonly string[]): string => ids.join(', ');

/** What a merge did, in sentences; nothing is said of what did not happen. */
export function mergeSentences(report: MergeReport): Message[] {
  const { added, same, kept, replaced, renamed } = report;
  return [
    ...(added.length === 0 ? [] : [{ id: 'shelf.merged.added', params: { count: added.length } } as const]),
    ...(same.length === 0 ? [] : [{ id: 'shelf.merged.same', params: { count: same.length } } as const]),
    ...(kept.length === 0 ? [] : [{ id: 'shelf.merged.kept', params: { names: list(kept) } } as const]),
    ...(replaced.length === 0 ? [] : [{ id: 'shelf.merged.replaced', params: { names: list(replaced) } } as const]),
    ...(renamed.length === 0 ? [] : [{ id: 'shelf.merged.renamed', params: { names: renamed.map((r) => `${r.from} → ${r.to}`).join(', ') } } as const]),
  ];
}
