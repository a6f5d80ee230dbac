/** A name not yet used in a list: `wave-1`, `wave-2` … the first that is free. Always the same for the same list. */
export function freshId(list: readonly { readonly id: string }[], prefix: string): string {
  const used = new Set(list.map((item) => item.id));
  let number = 1;
  while (used.has(`${prefix}-${number}`)) number++;
  return `${prefix}-${number}`;
}
