import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { calendarDay, dayNumber, dayOfNumber, monthName, weekdayName } from '../../../shared/words';

it('agrees with the platform\'s own calendar for four centuries', () => {
  fc.assert(fc.property(fc.integer({ min: -80000, max: 80000 }), (count) => {
    const date = new Date(count * 86_400_000);
    const day = dayOfNumber(count);
    expect(day).toEqual({ year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, dayOfMonth: date.getUTCDate() });
    expect(dayNumber(day)).toBe(count);
    expect(weekdayName(count)).toBe(new Intl.DateTimeFormat('en', { weekday: 'long', timeZone: 'UTC' }).format(date));
    expect(monthName(day.month)).toBe(new Intl.DateTimeFormat('en', { month: 'long', timeZone: 'UTC' }).format(date));
  }), { numRuns: 300 });
});

it('reads a date and puts 1 for what is missing', () => {
  expect(calendarDay('2026-12-12')).toEqual({ year: 2026, month: 12, dayOfMonth: 12 });
  expect(calendarDay('2026')).toEqual({ year: 2026, month: 1, dayOfMonth: 1 });
  expect(monthName(13)).toBe('');
});
