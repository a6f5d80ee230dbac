import { latestStart, Profile, type Claim } from '../measure';

/** Times at which pots, burners and hands are in use, by id. One of each: a second booking of the same minutes is a second use. */
export class Calendar {
  private readonly things = new Map<string, Profile>();
  private readonly log: { readonly profile: Profile; readonly from: number; readonly to: number }[] = [];

  /** When a thing is in use. */
  of(id: string): Profile {
    const known = this.things.get(id);
    if (known !== undefined) return known;
    const fresh = new Profile(1);
    this.things.set(id, fresh);
    return fresh;
  }

  /** Marks a thing as in use from `from` (inclusive) to `to` (exclusive), minutes. */
  book(id: string, from: number, to: number): void {
    const profile = this.of(id);
    profile.add(from, to, 1);
    this.log.push({ profile, from, to });
  }

  /** How much has been booked so far; for `backTo`. */
  get booked(): number {
    return this.log.length;
  }

  /** Takes back all bookings made since there were `booked`. */
  backTo(booked: number): void {
    for (const b of this.log.splice(booked)) b.profile.add(b.from, b.to, -1);
  }
}

/** Pairs of hands, each with its own times. */
const pairs = (calendar: Calendar, hands: number): Profile[] => Array.from({ length: hands }, (_, i) => calendar.of(`hands ${i}`));

/** Whether one of so many pairs of hands is free in [from, to). */
export const handsFree = (calendar: Calendar, hands: number, from: number, to: number): boolean => pairs(calendar, hands).some((p) => p.conflict(from, to, 1) === null);

/** Takes the first free pair of hands; nothing when none is free, somebody else must help then. */
export function bookHands(calendar: Calendar, hands: number, from: number, to: number): void {
  const free = pairs(calendar, hands).findIndex((p) => p.conflict(from, to, 1) === null);
  if (free >= 0) calendar.book(`hands ${free}`, from, to);
}

/** A wish: a pot from start until the drink is poured, and a burner (or none) for the first minutes. */
export interface Wish {
  readonly pot: string;
  readonly burner: string | null;
  /** Minutes from start until the burner is free again. */
  readonly burnerMinutes: number;
  /** Minutes from start until ready. */
  readonly minutes: number;
  /** Poured at. */
  readonly by: number;
  /** Longest wait in the pot. */
  readonly wait: number;
  /** Pairs of hands there are, and minutes from start that one of them is wanted; 0 hands when it does not matter. */
  readonly hands: number;
  readonly handsMinutes: number;
}

/** Latest whole start minute that leaves pot, burner and one pair of hands free; null when the drink would wait too long. */
export function latestBrew(calendar: Calendar, w: Wish): number | null {
  // The pot holds the drink until it is poured, so it must be free from the start on.
  const low = Math.max(w.by - w.wait - w.minutes, calendar.of(w.pot).freeSince(w.by, 1));
  const high = Math.floor(w.by - w.minutes);
  if (low > high) return null;
  const burner: Claim[] = w.burner === null ? [] : [{ profile: calendar.of(w.burner), amount: 1, from: 0, to: w.burnerMinutes }];
  if (w.hands === 0) return latestStart(burner, low, high);
  let latest: number | null = null;
  for (const profile of pairs(calendar, w.hands)) {
    const start = latestStart([...burner, { profile, amount: 1, from: 0, to: w.handsMinutes }], latest ?? low, high);
    if (start !== null && (latest === null || start > latest)) latest = start;
    if (latest === high) break;
  }
  return latest;
}
