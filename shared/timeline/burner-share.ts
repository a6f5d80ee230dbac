import type { Need } from './job';
import type { Resources } from './resources';

/** A stretch of a pan on the heat, and the burner where this pan is the one that claims it. */
interface HeatedStretch {
  readonly from: number;
  readonly to: number;
  readonly needs: readonly Need[];
}

/**
 * Cuts [from, to) of a pan on the heat where another pan on the same burner has claimed that burner already: a burner is claimed once, by
 * whichever pan is named first, however many pans share its heat. Remembers what it claims.
 */
export function heatedBy(resources: Resources, burner: string | undefined, from: number, to: number): HeatedStretch[] {
  if (burner === undefined) return [{ from, to, needs: [] }];
  const claimed = resources.underOil.get(burner) ?? [];
  const inside = (at: number): boolean => at > from && at < to;
  const cuts = [from, ...new Set(claimed.flatMap((c) => [c.from, c.to]).filter(inside).toSorted((a, b) => a - b)), to];
  const stretches: HeatedStretch[] = [];
  for (const [k, start] of cuts.slice(0, -1).entries()) {
    const end = cuts[k + 1] ?? to;
    const free = !claimed.some((c) => c.from <= start && c.to >= end);
    const last = stretches.at(-1);
    if (last !== undefined && (last.needs.length > 0) === free) stretches[stretches.length - 1] = { ...last, to: end };
    else stretches.push({ from: start, to: end, needs: free ? [{ thing: `burner:${burner}`, count: 1 }] : [] });
  }
  resources.underOil.set(burner, [...claimed, ...stretches.filter((s) => s.needs.length > 0)]);
  return stretches;
}
