import { computed, divide, entered, figure, just, least, minus, most, plus, power, times, worked, workingOf, type Figure, type Part, type Sum, type Term } from '../figure';
import { minutesSpent, presentChance, windowMinutes, type Coming, type Stay } from './stay';

const label = (word: string): Term['label'] => ({ word: `guests.term.${word}` });
const above = (from: string, n: number): Sum => power(most(0, minus('since', from)), n);
const spread: Part = minus('longest', 'shortest');

/** The three stays of a wave as inputs. `path` names the wave in the event. */
const stayTerms = (stay: Stay, path: string): Term[] =>
  (['shortest', 'usual', 'longest'] as const).map((key) => entered(key, label(key), stay[key], 'min', `${path}.stay.${key}`));

/** Mean stay of a wave, minutes: the mean of a triangular distribution, (shortest + usual + longest) / 3. `path` names the wave in the event. */
export function meanStayFigure(stay: Stay, path: string): Figure {
  return figure(minutesSpent(stay, Infinity), 'min', () => ({ rule: 'guests.meanStay', terms: stayTerms(stay, path), sum: divide(plus('shortest', 'usual', 'longest'), 3) }));
}

/** Minutes a guest is expected to have spent so many minutes after arriving. Unit: minutes. `path` names the wave in the event. */
export function spentFigure(stay: Stay, since: Figure, path: string): Figure {
  return figure(minutesSpent(stay, since.value), 'min', () =>
    workingOf('guests.minutesSpent', [worked('since', label('since'), since), ...stayTerms(stay, path)], spentSum(stay, since.value)));
}

function spentSum(stay: Stay, since: number): Sum {
  if (since <= stay.shortest) return most(0, least('since', 'shortest'));
  if (since >= stay.longest) return divide(plus('shortest', 'usual', 'longest'), 3);
  const cubes = (from: string): Sum => divide(above(from, 3), times(3, power(spread, 2)));
  if (stay.usual <= stay.shortest) return plus('since', minus(cubes('shortest'), divide(above('shortest', 2), spread)));
  if (stay.usual >= stay.longest) return minus('since', cubes('shortest'));
  const early = minus('usual', 'shortest');
  const late = minus('longest', 'usual');
  const bend = times(above('usual', 3), plus(divide(1, early), divide(1, late)));
  return minus('since', divide(minus(divide(above('shortest', 3), early), bend), times(3, spread)));
}

/** When a wave's people come and how long the arrivals last, as inputs. */
const fromTerm = (coming: Coming, path: string): Term => entered('from', label('from'), coming.from, 'min', `${path}.from`);
const toTerm = (coming: Coming, path: string): Term => entered('to', label('to'), coming.to, 'min', `${path}.to`);

/** Length of the arrivals, minutes, at least one. `path` names the wave in the event. */
export const windowFigure = (coming: Coming, path: string): Figure =>
  figure(windowMinutes(coming), 'min', () => ({ rule: 'guests.window', terms: [fromTerm(coming, path), toTerm(coming, path)], sum: most(1, minus('to', 'from')) }));

/** Minutes from the first (or the last) arrival of a wave to the minute `at`; below zero when they are yet to come. */
export function sinceFigure(coming: Coming, at: Term & { readonly value: number }, path: string, arrival: 'first' | 'last'): Figure {
  const window = windowFigure(coming, path);
  const first = at.value - coming.from;
  return figure(arrival === 'first' ? first : first - window.value, 'min', () => arrival === 'first'
    ? { rule: 'guests.since', terms: [{ ...at, key: 'at' }, fromTerm(coming, path)], sum: minus('at', 'from') }
    : { rule: 'guests.since', terms: [{ ...at, key: 'at' }, fromTerm(coming, path), worked('window', label('window'), window)], sum: minus(minus('at', 'from'), 'window') });
}

/** Chance that a guest of a wave is there at a minute. Unit: none, 0-1. `path` names the wave in the event. */
export function chanceFigure(coming: Coming, at: Term & { readonly value: number }, path: string): Figure {
  return figure(presentChance(coming, at.value), '', () => ({
    rule: 'guests.presentChance',
    terms: [
      worked('first', label('spentByFirst'), spentFigure(coming.stay, sinceFigure(coming, at, path, 'first'), path)),
      worked('last', label('spentByLast'), spentFigure(coming.stay, sinceFigure(coming, at, path, 'last'), path)),
      worked('window', label('window'), windowFigure(coming, path)),
    ],
    sum: least(1, most(0, divide(minus('first', 'last'), 'window'))),
  }));
}

/** A wave as the peak's working shows it. */
export interface PeakWave {
  readonly name: string;
  readonly path: string;
  readonly coming: Coming;
  readonly expected: Figure;
}

/** Most people present at once, expected. Unit: people. */
export function peakFigure(value: number, at: number, waves: readonly PeakWave[]): Figure {
  return figure(value, 'people', () => {
    const when = { ...computed('at', label('at'), at, 'min', 'guests.method.peak'), value: at };
    const present = waves.map((w) => ({ ...w, people: presentFigure(w, when) })).filter((w) => w.people.value > 0);
    if (present.length === 0) return { rule: 'guests.peak', terms: [when], sum: times(0, 'at') };
    const keys = present.map((_, i) => `wave${i}`);
    return {
      rule: 'guests.peak', terms: present.map((w, i) => worked(`wave${i}`, { text: w.name }, w.people)), sum: keys.length === 1 ? just('wave0') : plus(...keys),
    };
  });
}

function presentFigure(w: PeakWave, at: Term & { readonly value: number }): Figure {
  const chance = chanceFigure(w.coming, at, w.path);
  return figure(w.expected.value * chance.value, 'people', () => ({
    rule: 'guests.presentInWave',
    terms: [worked('expected', label('expected'), w.expected), worked('chance', label('chance'), chance)],
    sum: times('expected', 'chance'),
  }));
}
