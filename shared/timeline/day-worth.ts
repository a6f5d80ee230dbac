import { lengthOf } from './job';
import type { LaidOut } from './lay-out';

/** How a day is judged, most important first; less is better in each. */
export interface DayWorth {
  /** Jobs without hands or things, 1000 each, breaks nobody has room for, 20 each, and minutes that work is done before its window. */
  readonly undone: number;
  /** Percent between the busiest and the least busy helper, of the hours each is there. */
  readonly unfair: number;
  /** Minutes of hands after nine in the evening. */
  readonly lateEvening: number;
  /** Minutes that finished recipe steps stand until they are due at the latest. */
  readonly standing: number;
}

/** Nine in the evening. Unit: minutes from midnight. Common practice, no source. */
const evening = 1260;

/** Judges a day. */
export function worthOf({ draft: { resources }, booked, placed, noRests }: LaidOut): DayWorth {
  let [undone, lateEvening, standing] = [noRests.length * 20, 0, 0];
  for (const p of placed) {
    const wants = p.job.stretches.some((s) => s.attention > 0);
    if (!p.things || (wants && p.who === null)) undone += 1000;
    undone += p.tooEarly;
    let from = p.start;
    for (const s of p.job.stretches) {
      const to = from + s.minutes;
      if (p.who !== null) lateEvening += s.attention * Math.max(0, to - Math.max(from, evening));
      from = to;
    }
    if (p.job.kind === 'step') standing += Math.max(0, p.job.latest - p.start - lengthOf(p.job));
  }
  const shares = resources.helpers.flatMap(({ person }, at) => (person.to > person.from ? [(booked.minutes[at] ?? 0) / (person.to - person.from)] : []));
  const unfair = shares.length < 2 ? 0 : Math.round(100 * (shares.reduce((a, b) => Math.max(a, b)) - shares.reduce((a, b) => Math.min(a, b))));
  return { undone: Math.round(undone), unfair, lateEvening: Math.round(lateEvening), standing: Math.round(standing) };
}

const order = ['undone', 'unfair', 'lateEvening', 'standing'] as const;

/** Below 0 when `a` is better than `b`, 0 when they are equal: the first part that differs decides. */
export function compareWorth(a: DayWorth, b: DayWorth): number {
  for (const part of order) if (a[part] !== b[part]) return a[part] - b[part];
  return 0;
}
