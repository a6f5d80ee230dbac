import { byDay, type AheadJob, type KeepingPlace } from '../../../shared/sheets';

/** Where a result is kept; `on`: its recipe names no place, because the next job takes it up. */
export type PrepPlace = KeepingPlace | 'on';

/** Jobs of a day whose results are kept in one place. */
export interface PrepGroup {
  readonly place: PrepPlace;
  readonly jobs: readonly AheadJob[];
}

/** Jobs of one day, counted from the event's day (0), by place. */
export interface PrepDay {
  readonly day: number;
  readonly groups: readonly PrepGroup[];
}

/** What keeps longest first. */
const places: readonly PrepPlace[] = ['freezer', 'cold', 'counter', 'hot', 'on'];

const placeOf = (job: AheadJob): PrepPlace => job.step?.keeps?.place ?? 'on';

/** Jobs by day and by place kept, each by start. No job is left out. */
export const prepDays = (jobs: readonly AheadJob[]): readonly PrepDay[] =>
  byDay(jobs.map((job) => ({ job, start: job.row.start }))).map(({ day, rows }) => ({
    day, groups: places.map((place) => ({ place, jobs: rows.map(({ job }) => job).filter((job) => placeOf(job) === place) })).filter((group) => group.jobs.length > 0),
  }));

/** Minute from the event's midnight until which the result keeps; null where the recipe names none. It keeps from the end of the last part. */
export const keepsUntil = ({ row, step }: AheadJob): number | null => (step?.keeps === undefined ? null : row.end + step.keeps.minutes);

/** Jobs in which a person has a hand. */
export const jobsOf = (jobs: readonly AheadJob[], person: string): readonly AheadJob[] => jobs.filter(({ row }) => row.tasks.some((task) => task.who.includes(person)));
