import { numberIn, numbersIn, type RulesTable } from '../../kitchen';
import { solve } from '../exact';

/** A check wants the proven answer and may take seconds. */
const thorough = 3_000_000;

/** The rule `fry.batches`: batches of one dish in equal pans, where fry time and cycle are one. Put-ins start at minute 0 at the earliest. */
export const batchesTable: RulesTable = {
  'fry.batches': (i) => {
    const wanted = Object.entries(numbersIn(i, 'demand'))
      .map(([minute, n]) => ({ minute: Number(minute), n }))
      .sort((a, b) => a.minute - b.minute)
      .flatMap(({ minute, n }) => Array.from({ length: n }, () => minute));
    const pans = numberIn(i, 'pans');
    const cycle = numberIn(i, 'cycle');
    const answer = solve({ wanted, load: numberIn(i, 'panLoad'), fry: cycle, cycle, hold: numberIn(i, 'hold'), lead: 0, earliest: 0, free: () => pans, pans }, thorough);
    const age = answer.batches.reduce((sum, b) => sum + answer.served.slice(b.first, b.end).reduce((s, t) => s + t - b.dropAt - cycle, 0), 0);
    return { unmet: answer.unmet.length, batches: answer.batches.length, latestStarts: answer.batches.map((b) => b.dropAt), age };
  },
};
