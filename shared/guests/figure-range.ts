import type { Counts, Event } from '../event';
import { divide, entered, figure, just, minus, plus, squareRoot, times, worked, workingOf, type Figure, type Sum, type Term } from '../figure';
import { waveCountFigure } from './figure-counts';
import { pertMean, pertSd, type ThreePoint, type Turnout } from './turnout';

const keys = ['low', 'likely', 'high'] as const;
const none: ThreePoint = { low: 0, likely: 0, high: 0 };
const asEntered = (event: Event): Event => ({ ...event, guests: { ...event.guests, headcount: { adults: null, children: null } } });

/** The three guesses in order. The range may have been typed in any order; each value is shown with the field it came from. */
function guessTerms(event: Event, index: number, guess: ThreePoint): Term[] {
  const turnout = event.guests.waves[index]?.turnout;
  const typed = turnout?.kind === 'range' ? turnout : guess;
  const fields = keys.toSorted((a, b) => typed[a] - typed[b]);
  return keys.map((key, i) => entered(key, { word: `guests.term.${key}` }, guess[key], 'people', `guests.waves[${index}].turnout.${fields[i] ?? key}`));
}

/** A figure of the range, grown with the wave when the headcount is set as a whole. */
function grown(event: Event, index: number, { scale, guess }: Turnout, counts: Counts, rule: string, value: (r: ThreePoint) => number, sum: Sum): Figure {
  const range = guess ?? none;
  return figure(scale * value(range), 'people', () => {
    const terms = guessTerms(event, index, range);
    const wave = event.guests.waves[index];
    if (scale === 1 || wave === undefined) return workingOf(rule, terms, sum);
    return workingOf(rule, [...terms, worked('now', { word: 'guests.term.invited' }, waveCountFigure(event, index, counts)), worked('before', { word: 'guests.term.before' }, waveCountFigure(asEntered(event), index, wave.counts))], times(sum, divide('now', 'before')));
  });
}

/** Mean of the cook's range for a wave, grown with a headcount set as a whole. Unit: people. `counts` after an override. */
export const guessFigure = (event: Event, index: number, turnout: Turnout, counts: Counts): Figure =>
  grown(event, index, turnout, counts, 'guests.rangeMean', pertMean, divide(plus('low', times(4, 'likely'), 'high'), 6));

/** Standard deviation of the cook's range for a wave, grown with a headcount set as a whole. Unit: people. `counts` after an override. */
export function rangeSpreadFigure(event: Event, index: number, turnout: Turnout, counts: Counts): Figure {
  const range = minus('high', 'low');
  const shape = (part: Sum): Sum => plus(1, divide(times(4, part), range));
  const { low, high } = turnout.guess ?? none;
  // A range of one number does not spread; its shape would divide by nothing.
  const sum = high > low ? times(range, squareRoot(divide(times(shape(minus('likely', 'low')), shape(minus('high', 'likely'))), 252))) : times(0, plus('low', 'likely', 'high'));
  return grown(event, index, turnout, counts, 'guests.rangeSpread', pertSd, sum);
}

/** High end of the cook's range for a wave, grown with a headcount set as a whole. Unit: people. `counts` after an override. */
export const rangeHighFigure = (event: Event, index: number, turnout: Turnout, counts: Counts): Figure =>
  grown(event, index, turnout, counts, 'guests.rangeHigh', (r) => r.high, just('high'));
