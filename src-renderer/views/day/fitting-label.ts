/** Widest a letter comes out on average at the picture's 13 px, in pixels; a little above what the face measures, so that no label is cut. */
const letterPx = 7;

/** What to write inside a block so wide (pixels): the whole name, else what stands behind the dish's name, else nothing. A label is never cut. */
export function fittingLabel(name: string, widthPx: number): string | null {
  const behind = name.slice(name.indexOf(': ') + 2);
  return [name, ...(name.includes(': ') ? [behind] : [])].find((text) => text.length * letterPx <= widthPx) ?? null;
}
