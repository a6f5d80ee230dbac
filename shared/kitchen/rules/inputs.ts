/** Inputs of a rule as a check file gives them: by key, anything JSON holds. */
export type RuleInputs = Readonly<Record<string, unknown>>;
/** Outputs of a rule by key. */
export type RuleOutputs = Readonly<Record<string, number | readonly number[]>>;
/** Rules by id, callable with named inputs. */
export type RulesTable = Readonly<Record<string, (inputs: RuleInputs) => RuleOutputs>>;

/** A number by key. @throws RangeError when it is missing or not a finite number. */
export function numberIn(inputs: RuleInputs, key: string): number {
  const value = inputs[key];
  if (typeof value !== 'number' || !Number.isFinite(value)) throw new RangeError(`the rule needs the number "${key}"`);
  return value;
}

/** A number by key, or the given value when it is absent. @throws RangeError when it is there and not a number. */
export const numberOr = (inputs: RuleInputs, key: string, otherwise: number): number =>
  inputs[key] === undefined ? otherwise : numberIn(inputs, key);

/** A text by key. @throws RangeError when it is missing or not a text. */
export function textIn(inputs: RuleInputs, key: string): string {
  const value = inputs[key];
  if (typeof value !== 'string') throw new RangeError(`the rule needs the text "${key}"`);
  return value;
}

/** True when the key is there. */
export const has = (inputs: RuleInputs, key: string): boolean => inputs[key] !== undefined;

/** An object of numbers by key, e.g. masses by ingredient. @throws RangeError when it is missing or holds anything else. */
export function numbersIn(inputs: RuleInputs, key: string): Readonly<Record<string, number>> {
  const value = inputs[key];
  if (typeof value !== 'object' || value === null) throw new RangeError(`the rule needs an object of numbers "${key}"`);
  return Object.fromEntries(Object.entries(value).map(([name, n]) => {
    if (typeof n !== 'number') throw new RangeError(`"${key}.${name}" must be a number`);
    return [name, n];
  }));
}
