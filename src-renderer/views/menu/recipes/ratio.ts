import type { IngredientLine } from '../../../../shared/event';
import { gramsOf } from './mass-check';

/** One ingredient as a share of the base. */
export interface RatioRow {
  readonly ingredient: string;
  /** Weight; null when it cannot be weighed. */
  readonly grams: number | null;
  /** Percent of the base ingredient's weight. */
  readonly percent: number | null;
}

type Weighed = Pick<RatioRow, 'ingredient' | 'grams'>;

const heaviest = (rows: readonly Weighed[]): string | undefined => rows.toSorted((a, b) => (b.grams ?? 0) - (a.grams ?? 0))[0]?.ingredient;

/** The ingredient others are told as a share of: the heaviest that is not water. */
export function usualBase(lines: readonly IngredientLine[]): string {
  const weighed = sums(lines).filter((row) => row.grams !== null && row.grams > 0);
  return heaviest(weighed.filter((row) => row.ingredient !== 'water')) ?? heaviest(weighed) ?? lines[0]?.ingredient ?? '';
}

/** Lines of one food added up, in the order of their first. */
function sums(lines: readonly IngredientLine[]): readonly Weighed[] {
  const found = new Map<string, number | null>();
  for (const line of lines) {
    const had = found.get(line.ingredient);
    const own = gramsOf(line)?.toNumber() ?? null;
    found.set(line.ingredient, had === undefined ? own : had === null || own === null ? null : had + own);
  }
  return [...found].map(([ingredient, grams]) => ({ ingredient, grams }));
}

/** Every ingredient in percent of the base: base 100. */
export function ratioRows(lines: readonly IngredientLine[], base: string): readonly RatioRow[] {
  const rows = sums(lines);
  const whole = rows.find((row) => row.ingredient === base)?.grams ?? null;
  return rows.map(({ ingredient, grams }) => ({ ingredient, grams, percent: whole === null || whole <= 0 || grams === null ? null : (100 * grams) / whole }));
}
