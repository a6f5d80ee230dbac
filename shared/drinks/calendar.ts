/** Times at which pots and burners are in use, by id; `from` inclusive, `to` exclusive, minutes. */
export type Calendar = Map<string, { readonly from: number; readonly to: number }[]>;

/** Marks a thing as in use. */
export function book(calendar: Calendar, id: string, from: number, to: number): void {
  calendar.set(id, [...(calendar.get(id) ?? []), { from, to }]);
}

/** Start of the latest booking that overlaps [from, to); null when the thing is free. */
export function clash(calendar: Calendar, id: string, from: number, to: number): number | null {
  let latest: number | null = null;
  for (const b of calendar.get(id) ?? []) if (b.from < to && from < b.to && (latest === null || b.from > latest)) latest = b.from;
  return latest;
}

/** Whether one of so many pairs of hands is free in [from, to). */
export function handsFree(calendar: Calendar, hands: number, from: number, to: number): boolean {
  for (let i = 0; i < hands; i += 1) if (clash(calendar, `hands ${i}`, from, to) === null) return true;
  return false;
}

/** Takes the first free pair of hands; nothing when none is free, somebody else must help then. */
export function bookHands(calendar: Calendar, hands: number, from: number, to: number): void {
  for (let i = 0; i < hands; i += 1) {
    if (clash(calendar, `hands ${i}`, from, to) !== null) continue;
    book(calendar, `hands ${i}`, from, to);
    return;
  }
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

/** Latest whole start minute that leaves pot, burner and hands free; null when the drink would wait too long. */
export function latestStart(calendar: Calendar, w: Wish): number | null {
  let start = Math.floor(w.by - w.minutes);
  while (start + w.minutes >= w.by - w.wait) {
    const pot = clash(calendar, w.pot, start, w.by);
    // The pot holds the drink until it is poured; one in use anywhere up to then is no use, whenever the start.
    if (pot !== null && pot >= start + w.minutes) return null;
    const burner = w.burner === null ? null : clash(calendar, w.burner, start, start + w.burnerMinutes);
    if (pot === null && burner === null) {
      if (w.hands === 0 || handsFree(calendar, w.hands, start, start + w.handsMinutes)) return start;
      start -= 1;
      continue;
    }
    start = burner === null ? start - 1 : Math.min(start - 1, Math.floor(burner - w.burnerMinutes));
  }
  return null;
}
