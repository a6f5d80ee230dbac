/** Lengths of time a cook speaks in. */
export const spans = ['min', 'h', 'day'] as const;
/** A length of time a cook speaks in. */
export type Span = (typeof spans)[number];

/** Minutes in each. */
export const minutesIn: Readonly<Record<Span, number>> = { min: 1, h: 60, day: 1440 };

/** The largest in which the minutes are told without a long fraction: whole days from two days on, quarter hours from two hours on. */
export function naturalSpan(minutes: number): Span {
  if (minutes >= 2880 && minutes % 1440 === 0) return 'day';
  return minutes >= 120 && minutes % 15 === 0 ? 'h' : 'min';
}
