import { calendarDay, dayNumber, dayOfNumber } from '../words';

const two = (n: number): string => String(n).padStart(2, '0');

/** The date `days` after an ISO date (`YYYY-MM-DD`); negative goes back. Whole days; needs a real date. */
export function shiftDay(iso: string, days: number): string {
  const { year, month, dayOfMonth } = dayOfNumber(dayNumber(calendarDay(iso)) + days);
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(dayOfMonth)}`;
}
