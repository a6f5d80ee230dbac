/** Inputs of a named rule: numbers, lists, or small tables, as a check file gives them. */
export type RuleInputs = Readonly<Record<string, unknown>>;
/** Outputs of a named rule by name; units are in the names where there are any. */
export type RuleOutputs = Readonly<Record<string, number | readonly number[]>>;

/** A number of the inputs. @throws RangeError when it is missing or not a finite number. */
export function numberIn(inputs: RuleInputs, key: string): number {
  const value = inputs[key];
  if (typeof value !== 'number' || !Number.isFinite(value)) throw new RangeError(`this rule needs the number "${key}"`);
  return value;
}

/** A list of numbers of the inputs. @throws RangeError when it is missing or holds something else. */
export function listIn(inputs: RuleInputs, key: string): number[] {
  const value = inputs[key];
  if (!Array.isArray(value)) throw new RangeError(`this rule needs the list "${key}"`);
  return value.map((x: unknown) => {
    if (typeof x !== 'number') throw new RangeError(`the list "${key}" must hold numbers only`);
    return x;
  });
}

/** A table of numbers by name. @throws RangeError when it is missing or holds something else. */
export function tableIn(inputs: RuleInputs, key: string): [string, number][] {
  const value = inputs[key];
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new RangeError(`this rule needs the table "${key}"`);
  return Object.entries(value).map(([name, x]: [string, unknown]) => {
    if (typeof x !== 'number') throw new RangeError(`the table "${key}" must hold numbers only`);
    return [name, x];
  });
}
