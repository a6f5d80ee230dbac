import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { createContext, useContext } from 'react';

/** Minutes of the shown span to pixels, the same for every lane. */
export interface TimeScale {
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly x: ScaleLinear<number, number>;
  /** Pixels of a stretch of minutes. */
  readonly span: (minutes: number) => number;
}

const hourAtLeast = 48;

/** A scale from `from` to `to` minutes over `width` pixels; no hour gets narrower than `least` pixels, so the width may grow. */
export function timeScale(from: number, to: number, width: number, least: number = hourAtLeast): TimeScale {
  const wide = Math.max(width, ((to - from) / 60) * least);
  const x = scaleLinear().domain([from, to]).range([0, wide]);
  return { from, to, width: wide, x, span: (minutes) => (minutes / (to - from)) * wide };
}

/** Whole hours of a scale; every second one when they stand too close for their labels. */
export function hoursOf(scale: TimeScale, labelWidth = 48): number[] {
  const every = [1, 2, 3, 4, 6, 12].find((n) => scale.span(60 * n) >= labelWidth) ?? 12;
  const first = Math.ceil(scale.from / 60);
  const hours: number[] = [];
  for (let hour = first; hour * 60 <= scale.to; hour += 1) if ((hour - first) % every === 0) hours.push(hour * 60);
  return hours;
}

/** The scale of the lanes around a component. */
export const TimeScaleContext = createContext<TimeScale>(timeScale(0, 60, 60));
/** The scale of the lanes around a component. */
export const useTimeScale = (): TimeScale => useContext(TimeScaleContext);
