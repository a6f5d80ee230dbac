import { divide, entered, figure, just, least, minus, most, plus, power, times, worked, type Figure, type Part, type Sum, type Term } from '../figure';
import { minutesSpent, presentChance, windowMinutes, type Coming } from './stay';

const label = (word: string): Term['label'] => ({ word: `guests.term.${word}` });
const above = (from: string, n: number): Sum => power(most(0, minus('since', from)), n);
const spread: Part = minus('longest', 'shortest');

/** Minutes a guest is expected to have spent `since` minutes after arriving. Unit: minutes. */
function spentFigure(coming: Coming, since: number, path: string, at: Term): Figure {
  const { stay } = coming;
  return figure(minutesSpent(stay, since), 'min', () => ({
    rule: 'guests.minutesSpent',
    terms: [
      { ...at, key: 'since', label: label('since'), value: since },
      entered('shortest', label('shortest'), stay.shortest, 'min', `${path}.stay.shortest`),
      entered('usual', label('usual'), stay.usual, 'min', `${path}.stay.usual`),
      entered('longest', label('longest'), stay.longest, 'min', `${path}.stay.longest`),
    ],
    sum: spentSum(coming, since),
  }));
}

function spentSum({ stay }: Coming, since: number): Sum {
  if (since <= stay.shortest) return most(0, 'since');
  if (since >= stay.longest) return divide(plus('shortest', 'usual', 'longest'), 3);
  const cubes = (from: string): Sum => divide(above(from, 3), times(3, power(spread, 2)));
  if (stay.usual <= stay.shortest) return plus('since', minus(cubes('shortest'), divide(above('shortest', 2), spread)));
  if (stay.usual >= stay.longest) return minus('since', cubes('shortest'));
  const early = minus('usual', 'shortest');
  const late = minus('longest', 'usual');
  const bend = times(above('usual', 3), plus(divide(1, early), divide(1, late)));
  return minus('since', divide(minus(divide(above('shortest', 3), early), bend), times(3, spread)));
}

/** Chance that a guest of a wave is there at a minute. Unit: none, 0-1. `path` names the wave in the event. */
export function chanceFigure(coming: Coming, at: number, path: string): Figure {
  const window = windowMinutes(coming);
  const whenSeen: Term = { key: 'at', label: label('at'), value: at, unit: 'min', origin: { kind: 'definition' } };
  return figure(presentChance(coming, at), '', () => ({
    rule: 'guests.presentChance',
    terms: [
      worked('first', label('spentByFirst'), spentFigure(coming, at - coming.from, path, whenSeen)),
      worked('last', label('spentByLast'), spentFigure(coming, at - coming.from - window, path, whenSeen)),
      entered('window', label('window'), window, 'min', `${path}.to`),
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
    const present = waves.map((w) => ({ ...w, people: presentFigure(w, at) })).filter((w) => w.people.value > 0);
    const when: Term = { key: 'at', label: label('at'), value: at, unit: 'min', origin: { kind: 'definition' } };
    if (present.length === 0) return { rule: 'guests.peak', terms: [when], sum: times(0, 'at') };
    const keys = present.map((_, i) => `wave${i}`);
    return {
      rule: 'guests.peak',
      terms: [...present.map((w, i) => worked(`wave${i}`, { text: w.name }, w.people)), when],
      sum: keys.length === 1 ? just('wave0') : plus(...keys),
    };
  });
}

function presentFigure(w: PeakWave, at: number): Figure {
  const chance = chanceFigure(w.coming, at, w.path);
  return figure(w.expected.value * chance.value, 'people', () => ({
    rule: 'guests.presentInWave',
    terms: [worked('expected', label('expected'), w.expected), worked('chance', label('chance'), chance)],
    sum: times('expected', 'chance'),
  }));
}
