/** The view Menu. */
export function Menu() {
  return null;
}
