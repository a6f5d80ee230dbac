import type { Event } from '../event';
import { divide, entered, figure, just, least, minus, most, plus, squareRoot, sumOf, countOf, times, worked, type Figure, type Term } from '../figure';
import type { Reserve } from './planned';
import type { Turnout } from './turnout';

const label = (word: string): Term['label'] => ({ word: `guests.term.${word}` });

/** Adults or children invited: the headcount as set, or all waves added up. Unit: people. */
export function invitedFigure(event: Event, who: 'adults' | 'children', byWave: readonly number[]): Figure {
  const total = byWave.reduce((a, b) => a + b, 0);
  const set = event.guests.headcount[who];
  return figure(total, 'people', () => {
    if (set !== null && byWave.length > 0) {
      const term = entered('headcount', { word: 'guests.term.headcount' }, set, 'people', `guests.headcount.${who}`);
      return { rule: `guests.${who}`, terms: [term], sum: just('headcount') };
    }
    const counts: Term = { key: 'counts', label: { word: 'guests.term.counts' }, value: byWave, unit: 'people', origin: { kind: 'entered', path: 'guests.waves' } };
    return { rule: `guests.${who}`, terms: [counts], sum: sumOf('counts') };
  });
}

/** People of one wave expected to come. Unit: people. `path` names the wave in the event. */
export function expectedFigure(turnout: Turnout, path: string): Figure {
  return figure(turnout.expected, 'people', () => {
    const invited = entered('invited', label('invited'), turnout.invited, 'people', `${path}.counts`);
    if (turnout.guess !== null) {
      const { scale, guess: { low, likely, high } } = turnout;
      return {
        rule: 'guests.expectedRange',
        terms: [
          entered('low', label('low'), low, 'people', `${path}.turnout.low`), entered('likely', label('likely'), likely, 'people', `${path}.turnout.likely`),
          entered('high', label('high'), high, 'people', `${path}.turnout.high`), invited,
          entered('scale', label('scale'), scale, '', 'guests.headcount'),
        ],
        sum: least('invited', times('scale', divide(plus('low', times(4, 'likely'), 'high'), 6))),
      };
    }
    return { rule: 'guests.expectedShare', terms: [invited, entered('share', label('share'), turnout.share, '', `${path}.turnout`)], sum: times('invited', 'share') };
  });
}

/** People expected, all waves. Unit: people. */
export function expectedTotalFigure(byWave: readonly { readonly name: string; readonly figure: Figure }[]): Figure {
  const total = byWave.reduce((a, w) => a + w.figure.value, 0);
  return figure(total, 'people', () => {
    if (byWave.length === 0) {
      const none: Term = { key: 'counts', label: { word: 'guests.term.counts' }, value: [], unit: 'people', origin: { kind: 'entered', path: 'guests.waves' } };
      return { rule: 'guests.expected', terms: [none], sum: sumOf('counts') };
    }
    return {
      rule: 'guests.expected',
      terms: byWave.map((w, i) => worked(`wave${i}`, { text: w.name }, w.figure)),
      sum: plus(...byWave.map((_, i) => `wave${i}`)),
    };
  });
}

/** People the amounts cover. Unit: people; may be a fraction for a crowd drawn in blocks or a likely turnout. */
export function plannedFigure(event: Event, reserve: Reserve, expected: Figure, invited: number): Figure {
  return figure(reserve.people, 'people', () => {
    const mean = worked('expected', label('expected'), expected);
    if (reserve.chances.length === 0 && reserve.least === 0) return { rule: 'guests.plannedSure', terms: [mean], sum: just('expected') };
    const blocks = plus('least', countOf('chances'));
    const reached = reserve.block === 1 ? blocks
      : plus(times('expected', minus(1, divide(1, squareRoot('block')))), divide(times(blocks, 'block'), squareRoot('block')));
    return {
      rule: 'guests.planned',
      terms: [
        mean,
        entered('invited', label('invited'), invited, 'people', 'guests.waves'),
        entered('cover', label('cover'), event.preferences.cover, '', 'preferences.cover'),
        { key: 'least', label: label('least'), value: reserve.least, unit: 'people', origin: { kind: 'definition' } },
        { key: 'chances', label: label('chances'), value: reserve.chances, unit: '', origin: { kind: 'definition' } },
        { key: 'block', label: label('block'), value: reserve.block, unit: 'people', origin: { kind: 'definition' } },
      ],
      sum: most('expected', least('invited', reached)),
    };
  });
}
