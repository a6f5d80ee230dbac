import { calendarDay, dayNumber, dayOfNumber, monthName, weekdayName } from './calendar';
import { measuringWords } from './catalogue/measuring';
import { pieceInName, pieceNames } from './catalogue/pieces';
import { unitNames, unitsWords, type UnitName } from './catalogue/units';
import type { AmountWords, Formats } from './formats';
import { decimalFormat, isSingular, knownLocale, listText, moneyFormat } from './intl';

/** What the words for numbers depend on. `day` is the event's day, `YYYY-MM-DD`. */
export interface FormatOptions {
  readonly locale: string;
  readonly clock: '24' | '12';
  readonly day: string;
  readonly currency: string;
  readonly units: 'metric' | 'us';
  /** Kitchen rounding in the cook's units: number text and unit id of each part ("1½" cup, "2" tbsp). Passed in, for this room knows no units. */
  readonly showAmount: (amount: AmountWords) => readonly { readonly text: string; readonly unit: string }[];
  /** The same for an amount of a food, in what there is to measure with. Left out: as any amount. */
  readonly showFood?: (amount: AmountWords, food: string) => ShownFood;
}

/** A food measured: its parts, the share it is off by, how it is measured and how sure a level measure is; `grams` to be told beside spoons. */
export interface ShownFood {
  readonly parts: readonly { readonly text: string; readonly unit: string }[];
  readonly off: number;
  readonly way: 'plain' | 'spoon' | 'noScale' | 'unmeasured' | 'nothing';
  readonly spread: number;
  readonly grams: number | null;
  /** The amount to the last quarter ounce or teaspoon, where a rounding of a US measure is told. */
  readonly exact?: readonly { readonly text: string; readonly unit: string }[];
  /** To be told beside spoons of what is poured. */
  readonly millilitres?: number;
}

/** A no-break space: a number and its unit are never parted at the end of a line. */
const gap = '\u00a0';
const minutesPerDay = 1440;
const names: Readonly<Record<string, UnitName>> = unitNames;
/** Figure units shown as another one in US measures, with the exact factor (inch 25.4 mm, pound 0.45359237 kg). */
const usUnits: Readonly<Record<string, { readonly unit: string; readonly factor: number }>> = {
  mm: { unit: 'in', factor: 1 / 25.4 },
  'kg/h': { unit: 'lb/h', factor: 1 / 0.45359237 },
  'kg/L': { unit: 'lb/qt', factor: 0.946352946 / 0.45359237 },
};
const measured = new Set(['g', 'kg', 'ml', 'L']);

/** Decimals that keep about three digits, none for whole numbers. */
function decimalsFor(value: number): number {
  const size = Math.abs(value);
  if (Math.abs(value - Math.round(value)) < 1e-9 || size >= 100) return 0;
  return size >= 10 ? 1 : size >= 1 ? 2 : 3;
}

/** Count for the plural rule of a shown number: "½ cup" and "1 cup", but "1½ cups". */
const countOfText = (text: string): number => (/^(?:1|[¼½¾]|\d\u2044\d)$/u.test(text) ? 1 : 2);

/** What one and several pieces of a food are called; undefined where they are just pieces. */
const pieceName = (food: string | undefined): readonly [string, string] | undefined => (food !== undefined && Object.hasOwn(pieceNames, food) ? pieceNames[food] : undefined);

/** Makes the formats of one event. Cheap: the slow Intl objects behind it are shared between all formats of a locale. */
export function makeFormats(options: FormatOptions): Formats {
  const locale = knownLocale(options.locale);
  const us = options.units === 'us';
  const eventDay = dayNumber(calendarDay(options.day));

  const number = (value: number, decimals = 0): string => decimalFormat(locale, decimals).format(Object.is(value, -0) ? 0 : value);
  const unitName = (unit: string, count: number): string => {
    const name = Object.hasOwn(names, `unit.${unit}`) ? names[`unit.${unit}`] : undefined;
    return typeof name === 'function' ? name({ count }, formats) : (name ?? unit);
  };
  const withUnit = (text: string, unit: string, count: number): string => (unit === '' ? text : `${text}${gap}${unitName(unit, count)}`);

  const dayLabel = (dayOffset: number): string => {
    const count = eventDay + dayOffset;
    const weekday = weekdayName(count).slice(0, 3);
    if (Math.abs(dayOffset) < 7) return weekday;
    // A weekday alone would be read as the nearest one.
    const { dayOfMonth, month } = dayOfNumber(count);
    return `${weekday} ${dayOfMonth} ${monthName(month).slice(0, 3)}`;
  };

  const countedFood = (text: string, unit: string, food: string | undefined): string => {
    const name = unit === 'piece' ? pieceName(food) : undefined;
    return name === undefined ? withUnit(text, unit, countOfText(text)) : `${text}${gap}${name[countOfText(text) === 1 ? 0 : 1]}`;
  };

  const joined = (parts: readonly { readonly text: string; readonly unit: string }[], food?: string): string =>
    parts.map((p) => countedFood(p.text, p.unit, food)).join(` ${unitsWords['amount.and']} `);

  const formats: Formats = {
    number,
    clock(minutesFromMidnight) {
      const whole = Math.round(minutesFromMidnight);
      const day = Math.floor(whole / minutesPerDay);
      const inDay = whole - day * minutesPerDay;
      const hour = Math.floor(inDay / 60);
      const minute = String(inDay % 60).padStart(2, '0');
      const time = options.clock === '24'
        ? `${String(hour).padStart(2, '0')}:${minute}`
        : `${hour % 12 === 0 ? 12 : hour % 12}:${minute}${gap}${unitsWords[hour < 12 ? 'time.am' : 'time.pm']}`;
      return day === 0 ? time : `${dayLabel(day)} ${time}`;
    },
    duration(minutes) {
      const sign = minutes < 0 ? '-' : '';
      const size = Math.abs(minutes);
      if (size > 0 && size < 1) return `${sign}${number(size * 60)}${gap}${unitsWords['time.s']}`;
      // Short times keep half minutes: 2½ min of frying is not 3.
      if (size < 10) return `${sign}${number(size, 1)}${gap}${unitsWords['time.min']}`;
      const whole = Math.round(size);
      if (whole < 60) return `${sign}${whole}${gap}${unitsWords['time.min']}`;
      const hours = `${sign}${number(Math.floor(whole / 60))}${gap}${unitsWords['time.h']}`;
      return whole % 60 === 0 ? hours : `${hours} ${whole % 60}${gap}${unitsWords['time.min']}`;
    },
    amount: (amount) => joined(options.showAmount(amount)),
    amountOf: (amount, food) => joined(options.showAmount(amount), food),
    food(amount, food) {
      const shown = options.showFood?.(amount, food);
      if (shown === undefined) return { text: formats.amountOf(amount, food), beside: '', rounding: '' };
      const { off, way, spread, grams, millilitres, exact } = shown;
      const beside = way === 'noScale' ? measuringWords['measuring.lessSure']({ spread, off }, formats)
        : way === 'unmeasured' || way === 'nothing' ? measuringWords[`measuring.${way}`]
          : way === 'spoon' && grams !== null ? formats.figure(Math.round(grams * 10) / 10, 'g')
            : millilitres === undefined ? '' : formats.figure(Math.round(millilitres * 10) / 10, 'ml');
      return { text: joined(pieceInName(food) ? shown.parts.map((p) => (p.unit === 'piece' ? { ...p, unit: '' } : p)) : shown.parts, food), beside, rounding: way === 'noScale' || Math.abs(off) < 0.01 ? '' : measuringWords['measuring.rounded']({ off, exact: exact === undefined ? null : exact.map((p) => withUnit(p.text, p.unit, countOfText(p.text))).join(' ') }, formats) };
    },
    degrees(celsius) {
      return us ? `${number(celsius * 1.8 + 32)}${gap}${unitsWords['degrees.fahrenheit']}` : `${number(celsius)}${gap}${unitsWords['degrees.celsius']}`;
    },
    degreesDifference(kelvin) {
      const shown = us ? kelvin * 1.8 : kelvin;
      return unitsWords['degrees.difference']({ count: Math.abs(Math.round(shown)), text: number(shown) }, formats);
    },
    percent: (share) => `${number(share * 100, Math.abs(share) < 0.0995 && share !== 0 ? 1 : 0)}${gap}${unitsWords['unit.percent']}`,
    date(iso) {
      const day = calendarDay(iso);
      return `${weekdayName(dayNumber(day))} ${day.dayOfMonth} ${monthName(day.month)}`;
    },
    money: (amount) => moneyFormat(locale, options.currency).format(Number(amount)),
    list: listText,
    plural: (count, one, other) => (isSingular(count) ? one : other),
    figure(value, unit) {
      if (unit === 'degC' || unit === 'C') return formats.degrees(value);
      if (unit === 'K') return formats.degreesDifference(value);
      if (unit === 'min') return formats.duration(value);
      if (unit === 'money') return formats.money(String(value));
      if (us && measured.has(unit) && value >= 0) return formats.amount({ amount: value.toFixed(9), unit });
      const other = us ? usUnits[unit] : undefined;
      const shown = other === undefined ? value : value * other.factor;
      return withUnit(number(shown, decimalsFor(shown)), other?.unit ?? unit, Math.abs(shown));
    },
  };
  return formats;
}
