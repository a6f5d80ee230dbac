/** A local high point of a curve worth a label. */
export interface Peak {
  readonly at: number;
  readonly value: number;
}

/**
 * High points of a series that stand out: no higher value within `reach` minutes on either side, and the curve falls by at least
 * `fall` of the largest value between two of them.
 */
export function peaksOf(from: number, values: readonly number[], reach = 60, fall = 0.08): Peak[] {
  const top = Math.max(0, ...values);
  if (top < 1) return [];
  const peaks: Peak[] = [];
  values.forEach((value, i) => {
    if (value < top * 0.1) return;
    const left = Math.max(...values.slice(Math.max(0, i - reach), i), 0);
    const right = Math.max(...values.slice(i + 1, i + reach + 1), 0);
    if (value <= left || value < right) return;
    const last = peaks.at(-1);
    if (last !== undefined && Math.min(...values.slice(last.at - from, i + 1)) > Math.min(last.value, value) - top * fall) {
      if (value > last.value) peaks[peaks.length - 1] = { at: from + i, value };
      return;
    }
    peaks.push({ at: from + i, value });
  });
  return peaks;
}
