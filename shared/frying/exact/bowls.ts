/** Batter of one bowl: ready at a minute, for so many pieces, and which batches take from it. */
export interface BowlRun {
  readonly readyAt: number;
  readonly pieces: number;
  readonly takes: readonly { readonly batch: number; readonly pieces: number }[];
}

/**
 * Fewest bowls of finished batter for batches already placed. At the first put-in not covered, finish a bowl just then, use it until it is
 * empty or `life` minutes old; repeat. Optimal by exchange: the first bowl of any plan may be moved to the first put-in and never covers
 * less. A batch may take from several bowls.
 * @param loads put-in minute and pieces of each batch, ascending in time.
 * @param size pieces a bowl holds, at least 1.
 * @param life minutes from ready to the last put-in.
 */
export function fewestBowls(loads: readonly { readonly at: number; readonly pieces: number }[], size: number, life: number): BowlRun[] {
  const bowls: { readyAt: number; pieces: number; takes: { batch: number; pieces: number }[] }[] = [];
  loads.forEach(({ at, pieces }, batch) => {
    let need = pieces;
    while (need > 0) {
      let bowl = bowls.at(-1);
      if (bowl === undefined || bowl.pieces >= size || at > bowl.readyAt + life) {
        bowl = { readyAt: at, pieces: 0, takes: [] };
        bowls.push(bowl);
      }
      const take = Math.min(need, size - bowl.pieces);
      bowl.pieces += take;
      bowl.takes.push({ batch, pieces: take });
      need -= take;
    }
  });
  return bowls;
}
