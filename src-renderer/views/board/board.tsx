/** The view Board. */
export function Board() {
  return null;
}
