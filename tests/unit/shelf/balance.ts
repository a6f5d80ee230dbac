import type { IngredientLine, Recipe } from '../../../shared/event';
import { amountFrom, convert, dimensionOf } from '../../../shared/measure';
import { ingredient, parameter } from '../../../shared/reference';

/*
 * What goes into a recipe and what comes out of it, in grams. Known changes of weight:
 * - fresh boiling and baking losses stand in the recipe's notes, where the cook reads them: "About 9 % boils off";
 * - a dry pulse whose preparation begins with "soaked" weighs `pulse.soak` times its dry weight;
 * - rice, boiled green beans and flatbread: cooked / raw weight of the ingredient table, for the recipes named below;
 * - drinks: leaf, grounds and barley hold back water (ml per gram) and straining loses a share, both stated in the recipe;
 *   spices, herbs and slices are strained out;
 * - fried pieces are counted as spooned: batter that stays in the bowls is within the 5 %.
 */
const takesUpWater: Readonly<Record<string, string>> = {
  rice: 'basmati-rice', 'boiled-rice': 'basmati-rice', 'lemon-rice': 'basmati-rice', 'pea-rice': 'basmati-rice', 'brown-rice': 'brown-rice',
  'beans-sesame': 'green-beans', 'sesame-green-beans': 'green-beans', flatbread: 'wheat-flour-whole', 'freezer-flatbread': 'wheat-flour-whole',
};
const strainedOut: readonly string[] = [
  'tea-leaf', 'coffee-ground', 'ginger-root', 'cardamom-pod', 'cinnamon-stick', 'cloves-whole', 'mint-leaf', 'hibiscus-dried', 'pearl-barley', 'cucumber',
];

/** Grams of a line as it goes in, soaked where it says so. NaN when the table cannot weigh it. */
export function gramsIn({ ingredient: id, amount, preparation }: Pick<IngredientLine, 'ingredient' | 'amount' | 'preparation'>): number {
  const row = ingredient(id);
  const a = amountFrom(amount);
  const soaked = preparation?.startsWith('soaked') === true ? parameter('pulse.soak').value : 1;
  if (dimensionOf(a.unit) === 'mass') return Number(convert(a, 'g').amount) * soaked;
  if (dimensionOf(a.unit) === 'volume') return Number(convert(a, 'ml').amount) * (row?.gramsPerMl ?? Number.NaN);
  return Number(a.amount) * (row?.gramsPer.piece ?? Number.NaN);
}

/** Grams of a baked piece, as the recipe says: "Pieces of 45 g". */
const pieceGrams = (r: Recipe): number => Number(/[Pp]ieces of ([\d.]+) g/.exec(`${r.source} ${r.notes ?? ''}`)?.[1]);

/** Grams a recipe promises; a litre counts as a kilogram. */
export function gramsOut(r: Recipe): number {
  const a = amountFrom(r.yield.amount);
  if (dimensionOf(a.unit) === 'mass') return Number(convert(a, 'g').amount);
  if (dimensionOf(a.unit) === 'volume') return Number(convert(a, 'ml').amount);
  return Number(a.amount) * (r.frying?.pieceBatterG ?? pieceGrams(r));
}

/** Share of everything that boils, steams or bakes off, as the notes tell the cook. */
export const shareLost = (r: Recipe): number => Number(/About ([\d.]+) % (?:of everything )?(?:boils|steams|bakes) off/.exec(r.notes ?? '')?.[1] ?? 0) / 100;

/** Grams that come out by the rules above. */
export function gramsExpected(r: Recipe): number {
  const of = (id: string) => r.ingredients.filter((l) => l.ingredient === id).reduce((s, l) => s + gramsIn(l), 0);
  const all = r.ingredients.reduce((s, l) => s + gramsIn(l), 0);
  if (r.brewing !== undefined) {
    const b = r.brewing;
    const dose = b.doseIngredient === undefined ? 0 : of(b.doseIngredient);
    const stays = r.ingredients.filter((l) => l.ingredient !== 'water' && !strainedOut.includes(l.ingredient)).reduce((s, l) => s + gramsIn(l), 0);
    return ((of('water') - dose * b.absorbMlPerG) * (1 - b.strainLoss) + stays) * (1 - shareLost(r));
  }
  const swells = takesUpWater[r.id];
  if (swells !== undefined) return all - of('water') - of(swells) + of(swells) * (ingredient(swells)?.cookedFactor ?? Number.NaN);
  return all * (1 - shareLost(r));
}

/** Promised / expected; 1 when a recipe is honest. */
export const balance = (r: Recipe): number => gramsOut(r) / gramsExpected(r);
