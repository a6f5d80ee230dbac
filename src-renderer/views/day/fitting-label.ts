/** Widest a letter comes out on average at the picture's 13 px, in pixels; a little above what the face measures, so that no label is cut. */
const letterPx = 6.8;

/** The first of these labels that fits whole into a block so wide (pixels); none where all are too long. A label is never cut. */
export const fittingLabel = (labels: readonly string[], widthPx: number): string | null => labels.find((text) => text.length * letterPx <= widthPx) ?? null;
