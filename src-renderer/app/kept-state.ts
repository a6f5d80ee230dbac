import { useState, type Dispatch, type SetStateAction } from 'react';

const kept = new WeakMap<object, Map<string, unknown>>();

/**
 * State that outlives its page: half-written work is there again when the cook comes back from another view. It lasts as long as `owner`,
 * the thing the work is about; another owner begins anew.
 */
export function useKept<T>(owner: object, name: string, first: () => T): [T, Dispatch<SetStateAction<T>>] {
  const of = kept.get(owner) ?? new Map<string, unknown>();
  kept.set(owner, of);
  const [value, setValue] = useState<T>(() => (of.has(name) ? (of.get(name) as T) : first()));
  of.set(name, value);
  return [value, setValue];
}
