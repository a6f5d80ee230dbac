import type { Ingredient } from './ingredients';
import table from './things.json';

/**
 * Something a day uses that is not food: cups, bags, gas. It has every field of a row of food, so that packs, larder and prices treat both
 * alike. Its pack sizes are common practice, no source.
 */
export interface Thing extends Ingredient {
  /** A household may have enough of its own (real cups); then it need not be bought. */
  readonly own: boolean;
  readonly status: string;
  /** An id of `sourceTitle`. */
  readonly source: string;
}

/** All things, in the order of the table. */
export const things: readonly Thing[] = table.things.map(({ id, name, section, buyUnit, packs, own, status, source }) => ({
  id, name, section, buyUnit, packs, own, status, source,
  isRice: false, gramsPerMl: null, gramsPer: {}, epPercent: 100, cookedFactor: null, allergens: [], against: [], keepsDays: null, figures: {},
}));
const byId: ReadonlyMap<string, Thing> = new Map(things.map((t) => [t.id, t]));

/** A thing by id; undefined when the table has none. */
export const thing = (id: string): Thing | undefined => byId.get(id);

