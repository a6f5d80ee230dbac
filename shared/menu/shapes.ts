import type { WavePlan } from '../guests';

/** The minutes that demand is counted on: `minutes` whole minutes from `from`. */
export interface Grid {
  readonly from: number;
  readonly minutes: number;
}

/** Share of a wave's demand that has come by the end of each minute of the grid: 0 before minute `start`, 1 from minute `end` on. */
export interface Shape {
  readonly start: number;
  readonly end: number;
  readonly share: Float64Array;
}

const within = (grid: Grid, minute: number): number => Math.min(grid.minutes, Math.max(0, minute));

/** How food is eaten over a stay: this share evenly over the first minutes, the rest evenly after. Drinks: share 0 over 0 minutes. */
export interface Pace {
  readonly firstShare: number;
  readonly firstMinutes: number;
}

const arrivalWidth = (wave: WavePlan): number => Math.max(1, wave.to - wave.from);

/** The last minute in which anybody of the wave still eats, on a mean stay. */
export const waveEnd = (wave: WavePlan): number => wave.from + arrivalWidth(wave) + Math.max(1, wave.stay.mean);

const halfSquare = (x: number): number => (x > 0 ? (x * x) / 2 : 0);

/** Arrivals even over the window, eating even from `start` to `end` minutes after arrival: the cumulative share by time `t` (a trapezoid, integrated). */
function addEven(into: Shape, grid: Grid, wave: WavePlan, start: number, end: number, share: number): void {
  const width = arrivalWidth(wave);
  const scale = share / (width * (end - start));
  const zero = grid.from - wave.from;
  for (let i = into.start; i < into.end; i += 1) {
    const t = zero + i + 1;
    const risen = halfSquare(t - start) - halfSquare(t - width - start) - halfSquare(t - end) + halfSquare(t - width - end);
    into.share[i] = (into.share[i] ?? 0) + risen * scale;
  }
}

/** Shape of something taken throughout the stay at a pace. */
export function throughoutShape(grid: Grid, wave: WavePlan, pace: Pace): Shape {
  const shape: Shape = {
    start: within(grid, Math.floor(wave.from - grid.from)), end: within(grid, Math.ceil(waveEnd(wave) - grid.from)), share: new Float64Array(grid.minutes),
  };
  const stay = Math.max(1, wave.stay.mean);
  const split = pace.firstShare > 0 && pace.firstMinutes >= 1 && stay - pace.firstMinutes >= 1;
  if (split) addEven(shape, grid, wave, 0, pace.firstMinutes, pace.firstShare);
  addEven(shape, grid, wave, split ? pace.firstMinutes : 0, stay, split ? 1 - pace.firstShare : 1);
  return shape;
}

// Groups of guests of one wave who arrive together, for a meal at a set time: fine enough that a minute's demand moves by less than a portion in a hundred.
const groups = 16;

/** Shape of a meal between two times: each guest eats evenly over the part of the stay that falls into it. */
export function betweenShape(grid: Grid, wave: WavePlan, from: number, to: number): Shape {
  const share = new Float64Array(grid.minutes);
  const width = arrivalWidth(wave);
  // When each group sits down and rises; plain number lists, since this runs for every minute of the meal.
  const sits: number[] = [];
  const rises: number[] = [];
  const addFor = (stay: number): void => {
    for (let g = 0; g < groups; g += 1) {
      const arrival = wave.from + (width * (g + 0.5)) / groups;
      const [first, last] = [Math.max(arrival, from), Math.min(arrival + stay, to)];
      if (last <= first) continue;
      sits.push(first);
      rises.push(last);
    }
  };
  addFor(wave.stay.mean);
  // Only those who stay longest may reach the meal; then they set the shape.
  if (sits.length === 0) addFor(wave.stay.longest);
  if (sits.length === 0) {
    sits.push(Math.max(wave.from, from));
    rises.push(Math.max(to, Math.max(wave.from, from) + 1));
  }
  const start = within(grid, Math.floor(Math.min(...sits) - grid.from));
  const end = within(grid, Math.ceil(Math.max(...rises) - grid.from));
  for (let i = start; i < end; i += 1) {
    const t = grid.from + i + 1;
    let eaten = 0;
    for (let g = 0; g < sits.length; g += 1) {
      const first = sits[g] ?? 0;
      const last = rises[g] ?? 0;
      if (t > first) eaten += t >= last ? 1 : (t - first) / (last - first);
    }
    share[i] = eaten / sits.length;
  }
  return { start, end, share };
}
