import { Big } from 'big.js';
import type { Recipe } from '../../../../shared/event';
import { amountFrom, amountText, convertFood, dimensionOf, type AmountText } from '../../../../shared/measure';
import { ingredient } from '../../../../shared/reference';

/** More comes out than goes in by more than this, or less than this share: worth a look (our choice; boiling down and peeling lose less than half). */
const mostShare = 1.05;
const leastShare = 0.5;

/** The weight of what goes in beside the weight the yield promises. */
export interface MassCheck {
  readonly inside: AmountText;
  /** Weight promised; null when the yield is counted in pieces. */
  readonly promised: AmountText | null;
  /**
   * `more`: it promises more than goes in. `swells`: more than goes in, by no more than the dry foods take up when soaked and cooked (cooked weight of the
   * ingredient table). `less`: it promises less than half of it.
   */
  readonly verdict: 'fits' | 'swells' | 'more' | 'less' | 'unknown';
  /** Ids of the ingredients that cannot be weighed; they are left out of `inside`. */
  readonly unweighed: readonly string[];
}

/** Grams of a line; null when the table does not tell. */
export function gramsOf(line: { readonly ingredient: string; readonly amount: AmountText }): Big | null {
  const known = ingredient(line.ingredient);
  if (known === undefined) return dimensionOf(line.amount.unit) === 'mass' ? (convertFood(amountFrom(line.amount), 'g', { gramsPerMl: null, gramsPer: {} })?.amount ?? null) : null;
  return convertFood(amountFrom(line.amount), 'g', known)?.amount ?? null;
}

const grams = (value: Big): AmountText => amountText({ amount: value.round(0), unit: 'g' });

/** Grams of the yield. A measure counts as water does, 1 g a millilitre; a piece by its batter, where it is fried. */
function promisedGrams({ yield: made, frying }: Pick<Recipe, 'yield' | 'frying'>): Big | null {
  if (made.amount.unit === 'piece' && frying !== undefined) return new Big(made.amount.amount).times(frying.pieceBatterG);
  return convertFood(amountFrom(made.amount), 'g', { gramsPerMl: 1, gramsPer: {} })?.amount ?? null;
}

function verdictOf(promised: Big, inside: Big, swollen: Big, isOpen: boolean): MassCheck['verdict'] {
  if (promised.lt(inside.times(leastShare))) return 'less';
  if (isOpen || promised.lte(inside.times(mostShare))) return 'fits';
  return promised.lte(swollen.times(mostShare)) ? 'swells' : 'more';
}

/** Compares what goes in with what is promised. */
export function massCheck(recipe: Pick<Recipe, 'yield' | 'frying' | 'ingredients'>): MassCheck {
  const weighed = recipe.ingredients.map((line) => ({ line, grams: gramsOf(line) }));
  const inside = weighed.reduce((sum, { grams: own }) => sum.plus(own ?? 0), new Big(0));
  const unweighed = weighed.filter((one) => one.grams === null).map(({ line }) => line.ingredient);
  const promised = promisedGrams(recipe);
  const swollen = weighed.reduce((sum, { line, grams: own }) => sum.plus((own ?? new Big(0)).times(Math.max(1, ingredient(line.ingredient)?.cookedFactor ?? 1))), new Big(0));
  const verdict = promised === null || inside.eq(0) ? 'unknown' : verdictOf(promised, inside, swollen, unweighed.length > 0);
  return { inside: grams(inside), promised: promised === null ? null : grams(promised), verdict, unweighed };
}
