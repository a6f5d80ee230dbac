/** The view Guests. */
export function Guests() {
  return null;
}
