import type { ClashRemedies, DayRemedy } from '../../../shared/timeline';
import type { Trouble } from './trouble';

/** A way out of a trouble: what to do, and how many of its jobs fit then. */
export interface Way {
  readonly remedy: DayRemedy;
  /** Clashes of this trouble that end with it, and how many there are. */
  readonly ends: number;
  readonly of: number;
  /** Clashes elsewhere in the day that end too. */
  readonly elsewhere: number;
}

/** Ways offered for one trouble. */
const most = 3;

/**
 * The cheapest ways out of one trouble or of several together, those first that end most; the order of the search, cheapest first, decides among
 * equals. None when no single change does.
 */
export function waysOf(troubles: readonly Trouble[], all: readonly ClashRemedies[]): readonly Way[] {
  const mine = new Set(troubles.flatMap((trouble) => trouble.clashes));
  const seen = new Set<string>();
  const ways = all.filter((c) => mine.has(c.task)).flatMap((clash) => clash.remedies.flatMap((remedy): Way[] => {
    const key = JSON.stringify(remedy.change);
    if (seen.has(key)) return [];
    seen.add(key);
    const also = new Set(remedy.alsoEnds);
    const ends = 1 + [...mine].filter((task) => task !== clash.task && also.has(task)).length;
    return [{ remedy, ends, of: mine.size, elsewhere: [...also].filter((task) => !mine.has(task)).length }];
  }));
  return ways.toSorted((a, b) => b.ends - a.ends).slice(0, most);
}
