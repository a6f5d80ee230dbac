/** A list with the item at `at` one place earlier or later; the same list at its ends. */
export function moved<T>(list: readonly T[], at: number, by: -1 | 1): T[] {
  const to = at + by;
  const item = list[at];
  if (item === undefined || to < 0 || to >= list.length) return [...list];
  const rest = list.filter((_, i) => i !== at);
  return [...rest.slice(0, to), item, ...rest.slice(to)];
}
