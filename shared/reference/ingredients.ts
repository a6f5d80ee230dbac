import table from './ingredients.json';
import thingTable from './things.json';

/** What a figure of an ingredient says: grams per millilitre, percent left after trimming, cooked/raw mass, grams per counted thing, smallest usual pack, days it keeps. */
export type IngredientFigureId = 'density' | 'ep' | 'cooked' | 'piece' | 'bunch' | 'clove' | 'slice' | 'pinch' | 'pack' | 'keeps';
/** Units that count rather than weigh. */
export type CountUnit = 'piece' | 'bunch' | 'clove' | 'slice' | 'pinch';

/** The same figure in another table. `source` is an id of `sourceTitle`; `basis` is what that table prints. */
export interface OtherFigure {
  readonly value: number;
  readonly source: string;
  readonly status: string;
  readonly basis?: string;
}

/** One figure of an ingredient with its range and where it comes from. `source` is an id of `sourceTitle`. */
export interface IngredientFigure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly status: string;
  readonly source: string;
  /** Where the range comes from: `printed` between figures of named tables, `habit` what a kitchen meets (common practice, no source). */
  readonly spread: string;
  /** What other tables say, kept beside the chosen figure; empty when they agree or there is none. */
  readonly other: readonly OtherFigure[];
  /** State the figure holds for: "bunch with roots and large stems". */
  readonly conditions?: string;
  /** Why this one was chosen where tables disagree, and what else to know. */
  readonly note?: string;
}

/** A pack or buying size: decimal string and unit id. */
export interface PackSize {
  readonly amount: string;
  readonly unit: string;
}

/** A food as a cook buys and uses it. */
export interface Ingredient {
  /** English, kebab-case; the id recipes use. */
  readonly id: string;
  readonly name: string;
  /** Section of the shop, an id of `sections`; `tap` is never bought. */
  readonly section: string;
  /** Grams per millilitre as measured in a kitchen (chopped, spooned); null when it is never measured by volume. */
  readonly gramsPerMl: number | null;
  /** Grams of one piece, bunch, clove, slice or pinch, as purchased. */
  readonly gramsPer: Readonly<Partial<Record<CountUnit, number>>>;
  /** Edible share of what is bought, in percent; 100 when nothing is lost. */
  readonly epPercent: number;
  /** Cooked mass / raw edible mass; null when it is not cooked by itself. */
  readonly cookedFactor: number | null;
  /** Ids of the allergen groups it carries. */
  readonly allergens: readonly string[];
  /** Ids of the diets it breaks. */
  readonly against: readonly string[];
  /** Grains of rice, whole or flattened, that are cooked or soaked: what is made of them has clocks of its own. */
  readonly isRice: boolean;
  /** Usual pack sizes, small to large; empty for what is not bought. */
  readonly packs: { readonly metric: readonly PackSize[]; readonly us: readonly PackSize[] };
  /** Unit it is written in on a shopping list. */
  readonly buyUnit: { readonly metric: string; readonly us: string };
  /** Days it keeps after buying; null when it keeps for months. */
  readonly keepsDays: number | null;
  readonly figures: Readonly<Partial<Record<IngredientFigureId, IngredientFigure>>>;
}

const countUnits: readonly CountUnit[] = ['piece', 'bunch', 'clove', 'slice', 'pinch'];
const figureIds: readonly IngredientFigureId[] = ['density', 'ep', 'cooked', ...countUnits, 'pack', 'keeps'];

type Row = (typeof table.ingredients)[number];
type FigureRow = Row['figures'][number];

function readFigure(row: FigureRow): IngredientFigure {
  const { value, low, high, status, source, spread } = row;
  return {
    value, low, high, status, source, spread,
    other: 'other' in row ? row.other : [],
    ...('conditions' in row ? { conditions: row.conditions } : {}),
    ...('note' in row ? { note: row.note } : {}),
  };
}

function readRow(row: Row): Ingredient {
  const figures: Partial<Record<IngredientFigureId, IngredientFigure>> = {};
  const gramsPer: Partial<Record<CountUnit, number>> = {};
  for (const id of figureIds) {
    const found = row.figures.find((f) => f.of === id);
    if (found !== undefined) figures[id] = readFigure(found);
  }
  for (const unit of countUnits) {
    const grams = figures[unit]?.value;
    if (grams !== undefined) gramsPer[unit] = grams;
  }
  const { id, name, section, allergens, against, packs, buyUnit, keepsDays } = row;
  return {
    id, name, section, allergens, against, packs, buyUnit, keepsDays, gramsPer, figures, isRice: 'isRice' in row,
    gramsPerMl: figures.density?.value ?? null, epPercent: figures.ep?.value ?? 100, cookedFactor: figures.cooked?.value ?? null,
  };
}

/** All ingredients, in the order of the table. */
export const ingredients: readonly Ingredient[] = table.ingredients.map(readRow);
const byId: ReadonlyMap<string, Ingredient> = new Map(ingredients.map((i) => [i.id, i]));

/** An ingredient by id; undefined when the table does not know it (a cook may write her own). */
export const ingredient = (id: string): Ingredient | undefined => byId.get(id);

/** Sections of a shop in walking order, with their names. */
export const sections: readonly { readonly id: string; readonly name: string }[] = [...table.sections, ...thingTable.sections];
