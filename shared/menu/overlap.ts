import { divide, entered, figure, least, minus, most, plus, times, worked, type Figure } from '../figure';
import { minutesSpent, spentFigure, windowFigure, windowMinutes, type Stay, type WavePlan } from '../guests';

/** Minutes from a wave's first arrival to the end of its arrivals or of the meal, whichever is first. */
const arrivedBy = (wave: WavePlan, to: number): number => Math.min(windowMinutes(wave), to - wave.from);

/** Mean of min(stay, x); a guest yet to come in so many minutes counts them below zero. */
const spentUpTo = (stay: Stay, x: number): number => minutesSpent(stay, x) + Math.min(0, x);

/**
 * Share of a wave's people who are there at some time between `from` and `to`: arrivals even over the wave's window, stays triangular.
 * A guest arriving at t is still there at `from` when the stay exceeds from - t; the mean of min(stay, x) adds these chances up.
 * Range 0-1. A wave that arrives all at once is treated as arriving within one minute.
 */
export function shareThereBetween(wave: WavePlan, from: number, to: number): number {
  const arrived = arrivedBy(wave, to);
  if (arrived <= 0 || to <= from) return 0;
  const since = from - wave.from;
  return Math.min(1, Math.max(0, (spentUpTo(wave.stay, since) - spentUpTo(wave.stay, since - arrived)) / windowMinutes(wave)));
}

const label = (word: string): { readonly word: string } => ({ word: `menu.term.${word}` });

/** `shareThereBetween` with its working. @param dish place in the menu. @param index place of the wave in the event. */
export function thereFigure(wave: WavePlan, index: number, dish: number, from: number, to: number): Figure {
  const path = `guests.waves[${index}]`;
  const start = entered('start', label('serveFrom'), from, 'min', `menu.dishes[${dish}].served.from`);
  const end = entered('end', label('serveTo'), to, 'min', `menu.dishes[${dish}].served.to`);
  const first = entered('first', label('firstArrival'), wave.from, 'min', `${path}.from`);
  const window = windowFigure(wave, path);
  const arrived = figure(Math.max(0, arrivedBy(wave, to)), 'min', () => ({
    rule: 'menu.arrivedBy', terms: [worked('window', label('window'), window), end, first], sum: most(0, least('window', minus('end', 'first'))),
  }));
  const since = figure(from - wave.from, 'min', () => ({ rule: 'menu.sinceFirst', terms: [start, first], sum: minus('start', 'first') }));
  const late = figure(since.value - arrived.value, 'min', () => ({
    rule: 'menu.sinceLast', terms: [worked('since', label('sinceFirst'), since), worked('arrived', label('arrived'), arrived)], sum: minus('since', 'arrived'),
  }));
  return figure(shareThereBetween(wave, from, to), '', () => to <= from
    ? { rule: 'menu.thereBetween', terms: [start, end], sum: times(0, minus('end', 'start')) }
    : {
        rule: 'menu.thereBetween',
        terms: [
          worked('since', label('sinceFirst'), since), worked('spentFirst', label('spentFirst'), spentFigure(wave.stay, since, path)),
          worked('late', label('sinceLast'), late), worked('spentLast', label('spentLast'), spentFigure(wave.stay, late, path)), worked('window', label('window'), window),
        ],
        sum: least(1, most(0, divide(minus(plus('spentFirst', least(0, 'since')), plus('spentLast', least(0, 'late'))), 'window'))),
      });
}
