import type { Event } from '../event';
import { entered, figure, plus, roundUp, times, worked, type Figure, type Term } from '../figure';
import { meanStayFigure, type WavePlan } from '../guests';
import type { Course, Table } from './courses';
import { wholePortions } from './demand';
import { countedAsAdults, squaresOfFamilies, waveIndex, type BandValue } from './heads';
import { thereFigure } from './overlap';
import { unitOf } from './per-adult';
import { reserveOf, type WaveDemand } from './reserve';
import { cupsForStay, foodForStay } from './stay';

/** Portions of a dish expected of one wave, a real number with its working, and its part of the reserve. */
export interface WavePortions {
  readonly wave: WavePlan;
  readonly figure: Figure;
  readonly reserve: number;
}

/** Figures of a wave that all dishes share, made once. */
export interface WaveFigures {
  readonly wave: WavePlan;
  readonly food: Figure;
  readonly meal: Figure;
  readonly cups: Figure;
}

/** Stay, food and cups of each wave. */
export const waveFigures = (event: Event, waves: readonly WavePlan[]): WaveFigures[] => waves.map((wave) => {
  const stay = meanStayFigure(wave.stay, `guests.waves[${waveIndex(event, wave)}]`);
  return { wave, food: foodForStay(event, stay, false), meal: foodForStay(event, stay, true), cups: cupsForStay(event, stay) };
});

/** Portions of one wave: people counted as adults × portions of an adult × what the stay makes of it × the share that is there for a set meal. */
function portionsOfWave(table: Table, course: Course, bands: BandValue, adult: Figure, of: WaveFigures): WaveDemand {
  const { served } = course.dish;
  const heads = countedAsAdults(table.event, of.wave, bands);
  const cups = course.servedAs === 'cup';
  const each = [worked('each', { word: cups ? 'menu.term.cups' : 'menu.term.perAdult' }, cups ? of.cups : adult)];
  if (!cups) each.push(worked('stay', { word: 'menu.term.stayFactor' }, served.kind === 'between' ? of.meal : of.food));
  if (served.kind === 'between') each.push(worked('there', { word: 'menu.term.thereShare' }, thereFigure(of.wave, waveIndex(table.event, of.wave), course.index, served.from, served.to)));
  const asAdult = figure(each.reduce((product, t) => product * Number(t.value), 1), unitOf(course), () => ({ rule: 'menu.asAdultTakes', terms: each, sum: times(...each.map((t) => t.key)) }));
  return {
    wave: of.wave, asAdult, squares: () => squaresOfFamilies(of.wave, bands),
    figure: figure(heads.value * asAdult.value, unitOf(course), () => {
      const terms: Term[] = [worked('heads', { word: 'menu.term.asAdults', params: { wave: of.wave.name } }, heads), ...each];
      return { rule: 'menu.wavePortions', terms, sum: times(...terms.map((t) => t.key)) };
    }),
  };
}

/** Portions of a dish for the whole event, and wave by wave. */
export interface EventPortions {
  readonly waves: readonly WavePortions[];
  /** Whole portions, with the reserve for the share of days to be covered. */
  readonly total: Figure;
  /** The reserve of the dish as a whole; null where everything is sure. */
  readonly reserve: Figure | null;
}

/** Sizes one dish: the portions expected of all waves and one reserve for all of them, rounded up once. */
export function portionsOf(table: Table, course: Course, bands: BandValue, adult: Figure, figures: readonly WaveFigures[]): EventPortions {
  const { served } = course.dish;
  if (served.kind === 'fixed') {
    const { portions } = served;
    const term = entered('portions', { word: 'menu.term.fixedPortions' }, portions, unitOf(course), `menu.dishes[${course.index}].served.portions`);
    return { waves: [], reserve: null, total: figure(wholePortions(portions), unitOf(course), () => ({ rule: 'menu.fixed', terms: [term], sum: roundUp('portions') })) };
  }
  const waves = figures.map((of) => portionsOfWave(table, course, bands, adult, of));
  const reserve = reserveOf(table.event, unitOf(course), waves);
  const real = waves.reduce((sum, w) => sum + w.figure.value, 0) + (reserve?.figure.value ?? 0);
  const total = figure(wholePortions(real), unitOf(course), () => {
    const terms = waves.map((w, i) => worked(`w${i}`, { word: 'menu.term.wave', params: { wave: w.wave.name } }, w.figure));
    if (reserve !== null) terms.push(worked('reserve', { word: 'menu.term.reserve' }, reserve.figure));
    return terms.length === 0
      ? { rule: 'menu.portions', terms: [worked('each', { word: 'menu.term.perAdult' }, adult)], sum: times('each', 0) }
      : { rule: 'menu.portions', terms, sum: roundUp(plus(...terms.map((t) => t.key))) };
  });
  return { waves: waves.map((w, i) => ({ wave: w.wave, figure: w.figure, reserve: reserve?.byWave[i] ?? 0 })), total, reserve: reserve?.figure ?? null };
}
