/** An exact amount as it travels: decimal string and unit id. */
export interface AmountWords {
  readonly amount: string;
  readonly unit: string;
}

/** An amount of a food in the cook's measures. */
export interface FoodText {
  readonly text: string;
  /** What to know beside it: the weight of a spoonful, how sure a cup is; empty when it is weighed. */
  readonly beside: string;
  /** The rounding in words ("rounded to 3 % more"), where it is a percent or more and not told in `beside`; else empty. */
  readonly rounding: string;
}

/** Turns numbers into text for one locale and one set of preferences. Made once per event by `shared/event`. */
export interface Formats {
  /** A plain number, grouped and with at most `decimals` (default 0) decimals. */
  number(value: number, decimals?: number): string;
  /** A clock time from minutes after the event's midnight, with the day named when it is not the event's own ("Fri 21:00"). */
  clock(minutesFromMidnight: number): string;
  /** A length of time: "35 min", "2 h 10 min". */
  duration(minutes: number): string;
  /** An amount in the cook's units, kitchen-rounded ("1½ cups", "2.4 kg"). */
  amount(amount: AmountWords): string;
  /** The same for an amount of a food as it is bought: pieces by their own name ("2 heads" of garlic). @param food id of the food. */
  amountOf(amount: AmountWords, food: string): string;
  /** An amount of a food as this kitchen measures it: by scale, spoon or cup. */
  food(amount: AmountWords, food: string): FoodText;
  /** A temperature given in Celsius, shown in the cook's scale with its sign. */
  degrees(celsius: number): string;
  /** A difference of temperature given in kelvin, shown as degrees of the cook's scale ("15 degrees"). */
  degreesDifference(kelvin: number): string;
  /** A share 0-1 as percent. */
  percent(share: number): string;
  /** A date from `YYYY-MM-DD`: "Saturday 12 December". */
  date(iso: string): string;
  /** Money in the event's currency from a decimal string. */
  money(amount: string): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
  /** The form for the language's plural rule, without the number: write `${f.number(n)} ${f.plural(n, 'batch', 'batches')}`. */
  plural(count: number, one: string, other: string): string;
  /** A bare figure with the unit name of `Figure.unit` ("352 pieces", "19.2 kg/h"). `percent` counts 0-100; `min` is a length of time; `money` the event's currency. */
  figure(value: number, unit: string): string;
}

/** A sentence inside a sentence: a `Message` the core passes as a parameter; it is already text when the entry is called, so `${String(p.name)}` writes it. */
export interface Inner {
  readonly id: string;
  readonly params?: unknown;
  toString(): string;
}

/** A catalogue entry: fixed text, or a sentence made from parameters. */
export type Entry = string | ((params: never, formats: Formats) => string);
