import { evaluate, keysIn, type Sum, type TermValues } from './sum';

/** Where a value comes from when it is not worked out from others. */
export type Origin =
  /** Typed by the cook into the event; `path` names the field, e.g. `guests.waves[0].counts.adult`. */
  | { readonly kind: 'entered'; readonly path: string }
  /** A row of a reference table; `source` is an id of `shared/reference` sources ("common-practice" and "from-memory" are ids too). */
  | { readonly kind: 'table'; readonly source: string; readonly row: string }
  /** The household's own measured figure, which replaced a table value; `row` is the key of that value. */
  | { readonly kind: 'house'; readonly why: string; readonly row?: string }
  /** A recipe copied into the event. */
  | { readonly kind: 'recipe'; readonly recipe: string }
  /** A definition or mathematics (a dozen is 12; minutes in an hour): the same in every event. */
  | { readonly kind: 'definition' }
  /** Found by a method that no short sum can show (a search, a schedule, a distribution); `method` is the word id of a sentence that names it. */
  | { readonly kind: 'computed'; readonly method: string };

/**
 * One input of a working. `label` is a word id of the catalogue, or plain text when the label is the cook's own (a dish name).
 * Exactly one of `origin` (a leaf) and `figure` (worked out itself) explains it; list terms carry all items.
 */
export interface Term {
  readonly key: string;
  readonly label: { readonly word: string; readonly params?: Readonly<Record<string, string | number>> } | { readonly text: string };
  readonly value: number | readonly number[];
  readonly unit: string;
  readonly origin?: Origin;
  readonly figure?: Figure;
}

/** How a figure was worked out: the named rule, its inputs and the arithmetic. Made on demand. */
export interface Working {
  /** Rule id of the register; its sentence in words is `rule.<id>` of the catalogue. */
  readonly rule: string;
  readonly terms: readonly Term[];
  readonly sum: Sum;
}

/**
 * A number that a person will see. `unit` is a unit id or one of '', 'people', 'pieces', 'portions', 'cups', 'batches', 'bowls', 'rounds',
 * 'min', 'degC', 'percent', 'kW', 'W', 'mm', 'kg/h', 'money'. The working costs nothing until it is opened.
 */
export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly working: () => Working;
}

/** Makes a figure. `working` is called only when somebody asks for it. */
export const figure = (value: number, unit: string, working: () => Working): Figure => ({ value, unit, working });

/** Values of a working's terms by key, for `evaluate`. */
export const termValues = (working: Working): TermValues => Object.fromEntries(working.terms.map((t) => [t.key, t.value]));

/** Recomputes a working from its terms; equals the figure's value within floating-point error (a test holds every figure to it). */
export const recompute = (working: Working): number => evaluate(working.sum, termValues(working));

/** A term that a person entered. */
export const entered = (key: string, label: Term['label'], value: number, unit: string, path: string): Term =>
  ({ key, label, value, unit, origin: { kind: 'entered', path } });
/** A term that is itself a figure with a working. */
export const worked = (key: string, label: Term['label'], f: Figure): Term => ({ key, label, value: f.value, unit: f.unit, figure: f });
/** A term found by a method that no short sum can show; `method` is the word id of the sentence that names it. */
export const computed = (key: string, label: Term['label'], value: number | readonly number[], unit: string, method: string): Term =>
  ({ key, label, value, unit, origin: { kind: 'computed', method } });

/** A working with the terms its sum uses, and no others: where a formula has cases, only the inputs of the case in force are shown. */
export function workingOf(rule: string, terms: readonly Term[], sum: Sum): Working {
  const used = keysIn(sum);
  return { rule, terms: terms.filter((t) => used.has(t.key)), sum };
}
