import { Big } from 'big.js';
import { baseFactor, dimensionOf, plain, type Dimension } from '../measure';
import { timesAmount } from './line/range';
import type { LineAmount, Measured, ReadLine } from './line/types';
import { lineText, type FormatsOf } from './recipe-line-text';
import type { ImportedRecipe } from './recipe-types';

/** One line of a scaled recipe as other programs read it. Amounts are exact decimal strings; null where the line gives none. */
export interface ScaledLine {
  /** The scaled line in kitchen-rounded words. */
  readonly text: string;
  readonly item: string;
  /** Amount, or the lower end of a range. */
  readonly amount: string | null;
  readonly amountHigh?: string;
  /** Unit id, or the word of what is counted ("can"); `piece` for things simply counted. */
  readonly unit: string | null;
  /** Grams, where the line gives a weight; `gramsHigh` the upper end of a range. */
  readonly grams?: number;
  readonly gramsHigh?: number;
  /** Millilitres, where the line gives a measure. */
  readonly millilitres?: number;
  readonly millilitresHigh?: number;
  readonly preparation?: string;
  readonly toTaste?: true;
  /** Size of each counted thing; it does not grow with the recipe. */
  readonly pack?: { readonly amount: string; readonly amountHigh?: string; readonly unit: string };
  /** The line as it was written. */
  readonly line: string;
}

/** A scaled recipe as other programs read it. `unread`: lines, as written, that were not read or not read in full. */
export interface ScaledRecipe {
  readonly name: string;
  readonly factor: string;
  readonly ingredients: readonly ScaledLine[];
  readonly unread: readonly string[];
}

/** A line with its amounts multiplied; the size of packs stays. */
export function scaledReadLine(line: ReadLine, factor: Big): ReadLine {
  const { amount, pack, also, aside: _aside, ...rest } = line;
  const about = line.aside !== undefined && !/\p{N}/u.test(line.aside) ? { aside: line.aside } : {};
  return {
    ...rest, ...about,
    ...(amount === undefined ? {} : { amount: timesAmount(amount, factor) }),
    ...(pack === undefined ? {} : { pack: { count: timesAmount(pack.count, factor), size: pack.size } }),
    ...(also === undefined ? {} : { also: { amount: timesAmount(also.amount, factor), unit: also.unit } }),
  };
}

/** The line's own statement of its weight or measure: its amount, its packs, or the second amount it gives. */
function stated(line: ReadLine, dimension: Dimension): LineAmount | null {
  const inBase = ({ amount, unit }: Measured): LineAmount | null => (dimensionOf(unit) === dimension ? timesAmount(amount, baseFactor(unit)) : null);
  const { amount, unit, pack, also } = line;
  const own = amount === undefined || unit === undefined ? null : inBase({ amount, unit });
  if (own !== null) return own;
  const size = pack === undefined ? null : inBase(pack.size);
  if (pack !== undefined && size !== null) {
    const [low, high] = [pack.count.low.times(size.low), (pack.count.high ?? pack.count.low).times(size.high ?? size.low)];
    return high.eq(low) ? { low } : { low, high };
  }
  return also === undefined ? null : inBase(also);
}

const number = (value: Big): number => Number(plain(value));

function scaledLine(line: ReadLine, factor: Big, formatsOf: FormatsOf, system: 'metric' | 'us' | undefined): ScaledLine {
  const scaled = scaledReadLine(line, factor);
  const { amount, unit, countedIn, pack } = scaled;
  const [grams, ml] = [stated(scaled, 'mass'), stated(scaled, 'volume')];
  return {
    text: lineText(scaled, formatsOf, system), item: line.item,
    amount: amount === undefined ? null : plain(amount.low), ...(amount?.high === undefined ? {} : { amountHigh: plain(amount.high) }),
    unit: amount === undefined ? null : (countedIn ?? unit ?? 'piece'),
    ...(grams === null ? {} : { grams: number(grams.low) }), ...(grams?.high === undefined ? {} : { gramsHigh: number(grams.high) }),
    ...(ml === null ? {} : { millilitres: number(ml.low) }), ...(ml?.high === undefined ? {} : { millilitresHigh: number(ml.high) }),
    ...(line.preparation === undefined ? {} : { preparation: line.preparation }), ...(line.toTaste ? { toTaste: true } as const : {}),
    ...(pack === undefined ? {} : { pack: { amount: plain(pack.size.amount.low), ...(pack.size.amount.high === undefined ? {} : { amountHigh: plain(pack.size.amount.high) }), unit: pack.size.unit } }),
    line: line.text,
  };
}

/**
 * A foreign recipe for `factor` times its size. Every line is in `ingredients` or in `unread`; one of which a part was not understood is in both.
 * @param factor above 0. @param system units the lines are told in; each line's own when absent. Amounts keep the unit they were written in.
 */
export function scaleImported(recipe: Pick<ImportedRecipe, 'name' | 'lines'>, factor: Big, formatsOf: FormatsOf, system?: 'metric' | 'us'): ScaledRecipe {
  if (factor.lte(0)) throw new RangeError(`a recipe is scaled by a factor above 0, got ${factor.toString()}`);
  return {
    name: recipe.name, factor: plain(factor),
    ingredients: recipe.lines.filter((line) => line.read !== 'none').map((line) => scaledLine(line, factor, formatsOf, system)),
    unread: recipe.lines.filter((line) => line.read !== 'whole').map((line) => line.text),
  };
}
