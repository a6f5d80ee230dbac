import type { BandId, Counts } from '../event';
import type { Figure } from '../figure';
import type { Minutes, Series } from '../measure';
import type { Turnout } from './turnout';

/** One wave after headcount override and turnout. */
export interface WavePlan {
  readonly id: string;
  readonly name: string;
  readonly from: Minutes;
  readonly to: Minutes;
  /** Invited, whole people by band, after a headcount override (Webster's method). */
  readonly counts: Counts;
  readonly adults: number;
  readonly children: number;
  /** Expected people by band (turnout mean × counts). */
  readonly expected: Readonly<Record<BandId, number>>;
  /** People by band the amounts are planned for, at the event's share of days to cover; fractions allowed. */
  readonly planned: Readonly<Record<BandId, number>>;
  /** People of the wave expected, with the working. */
  readonly coming: Figure;
  readonly turnout: Turnout;
  readonly stay: { readonly shortest: number; readonly usual: number; readonly longest: number; readonly mean: number };
}

/** What the room `guests` computes. */
export interface GuestsPlan {
  readonly adults: Figure;
  readonly children: Figure;
  /** People the amounts cover, all waves. */
  readonly planned: Figure;
  readonly waves: readonly WavePlan[];
  /** People present at the start of each minute. `planning` is the mean at the planned counts. All four have the same length. */
  readonly presence: { readonly fromMinute: Minutes; readonly expected: readonly number[]; readonly p10: readonly number[]; readonly p90: readonly number[]; readonly planning: readonly number[] };
  /** People arriving and leaving within each minute, expected. */
  readonly arrivals: Series;
  readonly departures: Series;
  /** Most people present at once (expected), and when. */
  readonly peak: Figure;
  readonly peakAt: Minutes;
}
