/** The view Kitchen. */
export function Kitchen() {
  return null;
}
