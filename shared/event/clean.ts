/** A JSON document made harmless, and what was done to it. */
export interface Cleaned {
  readonly value: unknown;
  /** Fields left out because of their name. */
  readonly dropped: number;
  /** Ways to numbers too large to be kept. */
  readonly tooLarge: readonly (readonly (string | number)[])[];
}

/**
 * Copies a parsed JSON document without what could do harm or change silently: fields named `__proto__` are left out, -0 becomes 0,
 * numbers that became infinite are reported. Depth is limited before (`tooDeepAt`).
 */
export function clean(document: unknown): Cleaned {
  let dropped = 0;
  const tooLarge: (readonly (string | number)[])[] = [];
  const copy = (value: unknown, path: readonly (string | number)[]): unknown => {
    if (typeof value === 'number') {
      if (!Number.isFinite(value)) tooLarge.push(path);
      return value === 0 ? 0 : value;
    }
    if (Array.isArray(value)) return value.map((item: unknown, at) => copy(item, [...path, at]));
    if (typeof value !== 'object' || value === null) return value;
    const kept: [string, unknown][] = [];
    for (const [key, item] of Object.entries(value)) {
      if (key === '__proto__') dropped++;
      else kept.push([key, copy(item, [...path, key])]);
    }
    return Object.fromEntries(kept);
  };
  return { value: copy(document, []), dropped, tooLarge };
}
