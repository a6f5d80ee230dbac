import type { Event } from '../event';
import { entered, figure, plus, roundUp, times, worked, type Figure, type Term } from '../figure';
import type { WavePlan } from '../guests';
import type { Course, Table } from './courses';
import { wholePortions } from './demand';
import { countedAsAdults, type BandValue } from './heads';
import { shareThereBetween } from './overlap';
import { unitOf } from './per-adult';
import { cupsForStay, foodForStay, meanStay } from './stay';

/** Portions of a dish wanted by one wave, a real number with its working. */
export interface WavePortions {
  readonly wave: WavePlan;
  readonly figure: Figure;
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
  const stay = meanStay(event, wave);
  return { wave, food: foodForStay(event, stay, false), meal: foodForStay(event, stay, true), cups: cupsForStay(event, stay) };
});

function thereFigure(wave: WavePlan, course: Course, value: number): Figure {
  const { served } = course.dish;
  const [from, to] = served.kind === 'between' ? [served.from, served.to] : [0, 0];
  return figure(value, '', () => ({
    rule: 'menu.thereBetween',
    terms: [
      entered('there', { word: 'menu.term.there', params: { from, to, wave: wave.name } }, value, '', `menu.dishes[${course.index}].served`),
    ],
    sum: plus('there'),
  }));
}

/** Portions of one wave: people counted as adults × portions of an adult × what the stay makes of it × the share that is there for a set meal. */
function portionsOfWave(table: Table, course: Course, bands: BandValue, adult: Figure, of: WaveFigures): WavePortions {
  const { served } = course.dish;
  const heads = countedAsAdults(table.event, of.wave, bands);
  const there = served.kind === 'between' ? shareThereBetween(of.wave, served.from, served.to) : 1;
  const each = course.servedAs === 'cup' ? of.cups : adult;
  const stay = served.kind === 'between' ? of.meal : of.food;
  const factor = course.servedAs === 'cup' ? 1 : stay.value;
  return {
    wave: of.wave,
    figure: figure(heads.value * each.value * factor * there, unitOf(course), () => {
      const terms: Term[] = [worked('heads', { word: 'menu.term.asAdults', params: { wave: of.wave.name } }, heads)];
      terms.push(worked('each', { word: course.servedAs === 'cup' ? 'menu.term.cups' : 'menu.term.perAdult' }, each));
      if (course.servedAs !== 'cup') terms.push(worked('stay', { word: 'menu.term.stayFactor' }, stay));
      if (served.kind === 'between') terms.push(worked('there', { word: 'menu.term.thereShare' }, thereFigure(of.wave, course, there)));
      return { rule: 'menu.wavePortions', terms, sum: times(...terms.map((t) => t.key)) };
    }),
  };
}

/** Portions of a dish for the whole event, and wave by wave. */
export interface EventPortions {
  readonly waves: readonly WavePortions[];
  /** Whole portions. */
  readonly total: Figure;
}

/** Sizes one dish: the portions of all waves added up and rounded up once. */
export function portionsOf(table: Table, course: Course, bands: BandValue, adult: Figure, figures: readonly WaveFigures[]): EventPortions {
  const { served } = course.dish;
  if (served.kind === 'fixed') {
    const { portions } = served;
    const term = entered('portions', { word: 'menu.term.fixedPortions' }, portions, unitOf(course), `menu.dishes[${course.index}].served.portions`);
    return { waves: [], total: figure(wholePortions(portions), unitOf(course), () => ({ rule: 'menu.fixed', terms: [term], sum: roundUp('portions') })) };
  }
  const waves = figures.map((of) => portionsOfWave(table, course, bands, adult, of));
  const real = waves.reduce((sum, w) => sum + w.figure.value, 0);
  const total = figure(wholePortions(real), unitOf(course), () => {
    const terms = waves.map((w, i) => worked(`w${i}`, { word: 'menu.term.wave', params: { wave: w.wave.name } }, w.figure));
    return terms.length === 0
      ? { rule: 'menu.portions', terms: [worked('each', { word: 'menu.term.perAdult' }, adult)], sum: times('each', 0) }
      : { rule: 'menu.portions', terms, sum: roundUp(plus(...terms.map((t) => t.key))) };
  });
  return { waves, total };
}
