/** A list with the row of a key replaced, added at the end, or taken out when `row` is null. Other rows keep their place. */
export function setRow<T>(list: readonly T[], isIt: (row: T) => boolean, row: T | null): T[] {
  const at = list.findIndex(isIt);
  if (row === null) return list.filter((r) => !isIt(r));
  return at < 0 ? [...list, row] : list.with(at, row);
}

/** Place of a row that is to be set: where it stands, or the end. */
export function placeOfRow<T>(list: readonly T[], isIt: (row: T) => boolean): number {
  const at = list.findIndex(isIt);
  return at < 0 ? list.length : at;
}
