import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeFormats, type FormatOptions, type Formats } from '../../../shared/words';

const options: FormatOptions = {
  locale: 'en-GB', clock: '24', day: '2026-12-12', currency: 'EUR', units: 'metric',
  showAmount: ({ amount, unit }) => [{ text: amount, unit }],
};
const make = (over: Partial<FormatOptions> = {}): Formats => makeFormats({ ...options, ...over });
const f = make();
const us = make({ units: 'us', clock: '12', locale: 'en-US', currency: 'USD' });
/** No-break spaces read as spaces, so that expectations can be typed. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('clock', () => {
  it('writes 24 hours with two digits', () => {
    expect(f.clock(9 * 60 + 5)).toBe('09:05');
    expect(f.clock(0)).toBe('00:00');
  });
  it('writes 12 hours with am and pm', () => {
    expect(plain(us.clock(0))).toBe('12:00 am');
    expect(plain(us.clock(12 * 60))).toBe('12:00 pm');
    expect(plain(us.clock(21 * 60 + 30))).toBe('9:30 pm');
  });
  it('names the day when it is not the event\'s own', () => {
    expect(f.clock(-180)).toBe('Fri 21:00');
    expect(f.clock(1440 + 70)).toBe('Sun 01:10');
  });
  it('adds the date a week and more away', () => {
    expect(f.clock(-8 * 1440 + 60)).toBe('Fri 4 Dec 01:00');
  });
  it('rounds to the nearest minute, over midnight too', () => {
    expect(f.clock(659.6)).toBe('11:00');
    expect(f.clock(1439.7)).toBe('Sun 00:00');
  });
  it('gives back the minute it was given, whatever the day', () => {
    fc.assert(fc.property(fc.integer({ min: -20160, max: 4320 }), (minute) => {
      const match = /(\d\d):(\d\d)$/.exec(f.clock(minute));
      expect(Number(match?.[1]) * 60 + Number(match?.[2])).toBe(((minute % 1440) + 1440) % 1440);
    }));
  });
});

describe('duration', () => {
  it.each([[35, '35 min'], [130, '2 h 10 min'], [120, '2 h'], [2.5, '2.5 min'], [0.5, '30 s'], [0, '0 min'], [59.7, '1 h'], [-20, '-20 min']])('writes %f minutes as %s', (minutes, text) => {
    expect(plain(f.duration(minutes))).toBe(text);
  });
});

describe('numbers', () => {
  it('groups thousands and limits decimals', () => {
    expect(f.number(12345.678)).toBe('12,346');
    expect(f.number(1.25, 1)).toBe('1.3');
    expect(f.number(-0)).toBe('0');
  });
  it('follows the locale', () => {
    expect(make({ locale: 'de-DE' }).number(1234.5, 1)).toBe('1.234,5');
  });
  it('falls back to its own language for a locale that is none', () => {
    expect(make({ locale: 'not a locale!' }).number(1234.5, 1)).toBe('1,234.5');
    expect(make({ locale: '' }).number(1234)).toBe('1,234');
  });
  it('writes shares as percent', () => {
    expect(plain(f.percent(0.62))).toBe('62 %');
    expect(plain(f.percent(0.025))).toBe('2.5 %');
    expect(plain(f.percent(0))).toBe('0 %');
  });
  it('writes money in the event\'s currency', () => {
    expect(f.money('12.5')).toBe('€12.50');
    expect(us.money('0.1')).toBe('$0.10');
  });
  it('takes the singular for one alone', () => {
    expect(f.plural(1, 'batch', 'batches')).toBe('batch');
    expect(f.plural(0, 'batch', 'batches')).toBe('batches');
    expect(f.plural(1.5, 'batch', 'batches')).toBe('batches');
  });
  it('joins a list in words', () => {
    expect(f.list(['a', 'b', 'c'])).toBe('a, b and c');
    expect(f.list([])).toBe('');
  });
});

describe('temperature', () => {
  it('shows Celsius, or Fahrenheit in US measures', () => {
    expect(plain(f.degrees(177))).toBe('177 °C');
    expect(plain(us.degrees(177))).toBe('351 °F');
    expect(plain(us.degrees(-40))).toBe('-40 °F');
  });
  it('scales differences without the offset, and says degrees', () => {
    expect(f.degreesDifference(15)).toBe('15 degrees');
    expect(us.degreesDifference(15)).toBe('27 degrees');
    expect(f.degreesDifference(1)).toBe('1 degree');
  });
});

describe('amounts', () => {
  it('joins several measures and takes the plural by what is shown', () => {
    const shown = make({ showAmount: () => [{ text: '1½', unit: 'cup' }, { text: '2', unit: 'tbsp' }] });
    expect(plain(shown.amount({ amount: '0', unit: 'g' }))).toBe('1½ cups and 2 tbsp');
    expect(plain(make({ showAmount: () => [{ text: '½', unit: 'cup' }] }).amount({ amount: '0', unit: 'g' }))).toBe('½ cup');
  });
  it('parts number and unit by a no-break space', () => {
    expect(f.amount({ amount: '2.4', unit: 'kg' })).toBe('2.4\u00a0kg');
  });
  it('keeps an unknown unit as it is, prototype names too', () => {
    expect(plain(f.amount({ amount: '2', unit: 'constructor' }))).toBe('2 constructor');
  });
});

describe('figures', () => {
  it.each([[352, 'pieces', '352 pieces'], [1, 'batches', '1 batch'], [19.23, 'kg/h', '19.2 kg/h'], [35, 'min', '35 min'], [177, 'degC', '177 °C'], [62, 'percent', '62 %'],
    [3, '', '3'], [0.0312, 'kg', '0.031 kg'], [4.25, 'L', '4.25 L'], [1234.5, 'people', '1,235 people']])('writes %f %s as %s', (value, unit, text) => {
    expect(plain(f.figure(value, unit))).toBe(text);
  });
  it('turns millimetres and kilograms an hour into US measures', () => {
    expect(plain(us.figure(254, 'mm'))).toBe('10 in');
    expect(plain(us.figure(10, 'kg/h'))).toBe('22 lb/h');
  });
});

describe('dates', () => {
  it('writes the weekday, day and month', () => {
    expect(f.date('2026-12-12')).toBe('Saturday 12 December');
    expect(f.date('2024-02-29')).toBe('Thursday 29 February');
  });
});

describe('pieces of a food', () => {
  const f = makeFormats({ locale: 'en-GB', clock: '24', day: '2026-12-12', currency: 'EUR', units: 'metric', showAmount: ({ amount, unit }) => [{ text: amount, unit }], showFood: ({ amount, unit }) => ({ parts: [{ text: amount, unit }], off: 0, way: 'plain', spread: 0, grams: null }) });
  const said = (amount: string, unit: string, food: string): string => f.amountOf({ amount, unit }, food).replaceAll('\u00a0', ' ');
  it.each([['2', 'piece', 'garlic', '2 heads'], ['1', 'piece', 'garlic', '1 head'], ['6', 'piece', 'lime-juice-fresh', '6 limes'], ['3', 'piece', 'cinnamon-stick', '3 sticks'], ['3', 'bunch', 'parsley', '3 bunches'], ['4', 'clove', 'garlic', '4 cloves'], ['5', 'piece', 'moon-root', '5 pieces'], ['500', 'g', 'garlic', '500 g']])('%s %s of %s: %s', (amount, unit, food, text) => {
    expect(said(amount, unit, food)).toBe(text);
  });
  it('are a number alone beside a name that says what they are', () => {
    expect(f.food({ amount: '6', unit: 'piece' }, 'egg').text).toBe('6');
    expect(f.food({ amount: '2', unit: 'piece' }, 'garlic').text.replace('\u00a0', ' ')).toBe('2 heads');
    expect(f.food({ amount: '2', unit: 'piece' }, 'moon-root').text.replace('\u00a0', ' ')).toBe('2 pieces');
  });
});
