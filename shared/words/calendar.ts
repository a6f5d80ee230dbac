import { months, weekdays } from './catalogue/units';

/** A day of the Gregorian calendar. */
export interface CalendarDay {
  readonly year: number;
  /** 1-12 */
  readonly month: number;
  /** 1-31 */
  readonly dayOfMonth: number;
}

/** Reads `YYYY-MM-DD`; parts that are missing count as 1. */
export function calendarDay(iso: string): CalendarDay {
  const [year = 1, month = 1, dayOfMonth = 1] = iso.split('-').map(Number);
  return { year, month, dayOfMonth };
}

/**
 * Days since 1970-01-01, negative before. Counts in eras of 400 years with the year starting in March, so that the leap day is the last of its year.
 * Source: definition of the Gregorian calendar.
 */
export function dayNumber({ year, month, dayOfMonth }: CalendarDay): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + dayOfMonth - 1;
  return era * 146097 + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - 719468;
}

/** The calendar day of a day number; the inverse of `dayNumber`. */
export function dayOfNumber(count: number): CalendarDay {
  const z = count + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1,
  };
}

/** Name of the weekday of a day number. 1970-01-01 was a Thursday. */
export const weekdayName = (count: number): string => weekdays[(((count + 3) % 7) + 7) % 7] ?? '';
/** Name of a month, 1-12. */
export const monthName = (month: number): string => months[month - 1] ?? '';
