import { Big } from 'big.js';
import type { Recipe } from '../event';
import { figure, plus, times, workingOf, type Figure, type Term } from '../figure';
import { baseFactor, dimensionOf } from '../measure';
import { ingredient } from '../reference';
import { lineTerm, lineWeight, weightOf } from './line-weight';

/** More comes out than goes in by more than this, or less than this share: worth a look (our choice; boiling down and peeling lose less than half). */
const mostShare = 1.05;
const leastShare = 0.5;

/** The weight of what goes in beside the weight the yield promises. */
export interface MassBalance {
  /** Grams of all ingredients that can be weighed, as written. */
  readonly inside: Figure;
  /** Grams promised; null when the yield is counted in pieces of unknown weight. A measure counts as water does, 1 g a millilitre. */
  readonly promised: Figure | null;
  /**
   * `more`: it promises more than goes in. `swells`: more than goes in, by no more than the dry foods take up when soaked and cooked (cooked weight of the
   * ingredient table). `less`: it promises less than half of it. `unknown`: one of the two cannot be told.
   */
  readonly verdict: 'fits' | 'swells' | 'more' | 'less' | 'unknown';
  /** Ids of the ingredients that cannot be weighed; they are left out of `inside`. */
  readonly unweighed: readonly string[];
}

type Weighable = Pick<Recipe, 'id' | 'yield' | 'frying' | 'ingredients'>;

function insideFigure(recipe: Weighable): Figure {
  const weighed = recipe.ingredients.flatMap((line) => {
    const weight = lineWeight(recipe, line);
    const grams = weightOf(line);
    return weight === null || grams === null ? [] : [{ line, weight, grams }];
  });
  const sum = weighed.reduce((all, { grams }) => all.plus(grams), new Big(0)).toNumber();
  return figure(sum, 'g', () => {
    const terms: Term[] = weighed.map(({ line, weight }, at) => lineTerm(`line${at + 1}`, line, weight));
    if (terms.length === 0) terms.push({ key: 'none', label: { word: 'recipe.term.nothing' }, value: 0, unit: 'g', origin: { kind: 'recipe', recipe: recipe.id } });
    return workingOf('menu.inside', terms, plus(...terms.map((term) => term.key)));
  });
}

function promisedFigure({ id, yield: made, frying }: Weighable): Figure | null {
  const { unit, amount } = made.amount;
  const of = (label: string, grams: Big, origin: NonNullable<Term['origin']>): Figure => figure(new Big(amount).times(grams).toNumber(), 'g', () => workingOf('menu.promised', [
    { key: 'yield', label: { word: 'recipe.term.yield' }, value: Number(amount), unit, origin: { kind: 'recipe', recipe: id } },
    { key: 'grams', label: { word: label, params: { unit } }, value: grams.toNumber(), unit: 'g', origin },
  ], times('yield', 'grams')));
  const dimension = dimensionOf(unit);
  if (dimension === 'mass') return of('recipe.term.gramsOfOne', baseFactor(unit), { kind: 'definition' });
  if (dimension === 'volume') return of('recipe.term.asWater', baseFactor(unit), { kind: 'table', source: 'common-practice', row: 'recipe.asWater' });
  return unit === 'piece' && frying !== undefined ? of('recipe.term.gramsOfOne', new Big(frying.pieceBatterG), { kind: 'recipe', recipe: id }) : null;
}

/** Grams the ingredients may come to when the dry ones take up water, by the cooked weight of the ingredient table. */
const swollen = (recipe: Weighable): number =>
  recipe.ingredients.reduce((sum, line) => sum + (weightOf(line)?.toNumber() ?? 0) * Math.max(1, ingredient(line.ingredient)?.cookedFactor ?? 1), 0);

/** Compares what goes into a recipe with what its yield promises: "ingredients weigh 2.4 kg but the yield says 3.1 kg". */
export function massBalance(recipe: Weighable): MassBalance {
  const inside = insideFigure(recipe);
  const promised = promisedFigure(recipe);
  const unweighed = [...new Set(recipe.ingredients.filter((line) => weightOf(line) === null).map((line) => line.ingredient))];
  const verdict = (): MassBalance['verdict'] => {
    if (promised === null || inside.value === 0) return 'unknown';
    if (promised.value < inside.value * leastShare) return 'less';
    if (unweighed.length > 0 || promised.value <= inside.value * mostShare) return 'fits';
    return promised.value <= swollen(recipe) * mostShare ? 'swells' : 'more';
  };
  return { inside, promised, verdict: verdict(), unweighed };
}
