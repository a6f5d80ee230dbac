/** Something with a start and an end on the clock. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Puts stretches into as few rows as they need, each on the first row where it fits; ordered by start. */
export function rowsOf<T extends Stretch>(items: readonly T[], gap = 0): { readonly item: T; readonly row: number }[] {
  const ends: number[] = [];
  return [...items].sort((a, b) => a.start - b.start || b.end - a.end).map((item) => {
    const free = ends.findIndex((end) => end + gap <= item.start);
    const row = free === -1 ? ends.length : free;
    ends[row] = item.end;
    return { item, row };
  });
}

const letterWidth = 7.8;

/** As much of a text as fits a width, with an ellipsis; empty when not even three letters do. */
export function fitted(text: string, width: number): string {
  const letters = Math.floor(width / letterWidth);
  if (text.length <= letters) return text;
  return letters < 5 ? '' : `${text.slice(0, letters - 1).trimEnd()}…`;
}
