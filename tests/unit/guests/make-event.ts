import { eventSchema, type Event } from '../../../shared/event';

/** A wave as tests write it. */
export interface TestWave {
  readonly from: number;
  readonly to: number;
  readonly counts: Readonly<Record<string, number>>;
  readonly stay?: readonly [number, number, number];
  readonly turnout?: unknown;
}

/** An event with these waves, open 11:00 to 20:00. */
export const eventOf = (waves: readonly TestWave[], more: Readonly<Record<string, unknown>> = {}, headcount?: unknown): Event =>
  eventSchema.parse({
    format: 'brimful-event/1', id: 'test', title: 'Test', day: '2026-12-12', opensAt: 660, closesAt: 1200, ...more,
    guests: {
      headcount,
      waves: waves.map((w, i) => ({
        id: `w${i + 1}`, name: `Wave ${i + 1}`, from: w.from, to: w.to, counts: w.counts, turnout: w.turnout,
        stay: { shortest: w.stay?.[0] ?? 60, usual: w.stay?.[1] ?? 90, longest: w.stay?.[2] ?? 180 },
      })),
    },
  });
