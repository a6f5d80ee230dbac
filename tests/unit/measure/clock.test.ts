import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius, clockParts, kilograms, litres, minutes, parseClock, watts } from '../../../shared/measure';

describe('clock times', () => {
  it.each([[0, 0, 0, 0], [665, 0, 11, 5], [1440, 1, 0, 0], [1510, 1, 1, 10], [-60, -1, 23, 0], [665.6, 0, 11, 6]])('%d min is day %d, %d:%d', (at, day, hour, minute) => {
    expect(clockParts(minutes(at))).toEqual({ day, hour, minute });
  });

  it.each([['9', 540], ['930', 570], ['9:30', 570], ['9.30', 570], ['9:30 pm', 1290], ['12 am', 0], ['12pm', 720], ['21:30', 1290], ['25:10', 1510], ['0:00', 0], ['11h15', 675]])('%j is %d', (text, at) => {
    expect(parseClock(text)).toBe(at);
  });

  it.each(['', 'noon', '9:75', '48:00', '13 pm', '0 am', '1:2:3', '-9'])('%j is no time', (text) => expect(parseClock(text)).toBeNull());

  it('is written and read back within the day', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 1439 }), (at) => {
      const { hour, minute } = clockParts(minutes(at));
      expect(parseClock(`${hour}:${String(minute).padStart(2, '0')}`)).toBe(at);
    }));
  });
});

describe('branded numbers', () => {
  it('carry the number and refuse what is none', () => {
    expect([minutes(-5), litres(2.5), kilograms(0), celsius(-18), watts(3000)]).toEqual([-5, 2.5, 0, -18, 3000]);
    expect(() => minutes(Number.NaN)).toThrow('minutes must be a finite number');
    expect(() => litres(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
