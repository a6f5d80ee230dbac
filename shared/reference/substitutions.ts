import rows from './substitutions.json';

/** One food in place of another: how much of it, and what a cook should know. The row's way is one way; the other is a row of its own. */
export interface Substitution {
  /** `from.to`. */
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** Amount of `to` for one of `from`, above 0. */
  readonly ratio: number;
  /** Whether the ratio holds for volumes or for masses. */
  readonly by: 'volume' | 'mass';
  /** What changes beside the amount; empty when there is nothing to say. */
  readonly note: string;
  readonly status: string;
  /** An id of `sourceTitle`. */
  readonly source: string;
}

/** All substitutions, in the order of the table. What may stand for what is a cook's judgement: a brand, or a food not named here, is not proposed. */
export const substitutions: readonly Substitution[] = rows.map((row) => ({ ...row, by: row.by === 'mass' ? 'mass' : 'volume' }));

const byFrom = new Map<string, Substitution[]>();
for (const row of substitutions) byFrom.set(row.from, [...(byFrom.get(row.from) ?? []), row]);

/** What may stand in for a food; none for a food the table does not have. */
export const substitutesFor = (ingredient: string): readonly Substitution[] => byFrom.get(ingredient) ?? [];
