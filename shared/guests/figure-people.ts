import { adultBands, childBands, type BandId, type Counts, type Event } from '../event';
import { computed, entered, figure, just, least, most, plus, squareRoot, sumOf, countOf, times, worked, workingOf, type Figure, type Term, type Working } from '../figure';
import { waveCountFigure } from './figure-counts';
import { guessFigure } from './figure-range';
import type { Reserve, ReserveMethod } from './planned';
import type { Turnout } from './turnout';

const label = (word: string): Term['label'] => ({ word: `guests.term.${word}` });

/** The empty list of waves, for an event without any. */
const noWaves: Term = { key: 'counts', label: label('counts'), value: [], unit: 'people', origin: { kind: 'entered', path: 'guests.waves' } };
const allWaves = (figures: readonly Figure[], event: Event): readonly Term[] => figures.map((f, i) => worked(`wave${i}`, { text: event.guests.waves[i]?.name ?? '' }, f));

function addedUp(rule: string, event: Event, figures: readonly Figure[]): Working {
  if (figures.length === 0) return { rule, terms: [noWaves], sum: sumOf('counts') };
  return { rule, terms: allWaves(figures, event), sum: plus(...figures.map((_, i) => `wave${i}`)) };
}

/** Adults or children invited: the headcount as set, or those of all waves added up. Unit: people. */
export function invitedFigure(event: Event, who: 'adults' | 'children', counts: readonly Counts[]): Figure {
  const bands: readonly BandId[] = who === 'adults' ? adultBands : childBands;
  const byWave = counts.map((c, i) => waveCountFigure(event, i, c, bands));
  const set = event.guests.headcount[who];
  return figure(byWave.reduce((a, f) => a + f.value, 0), 'people', () =>
    set !== null && byWave.length > 0
      ? { rule: `guests.${who}`, terms: [entered('headcount', label('headcount'), set, 'people', `guests.headcount.${who}`)], sum: just('headcount') }
      : addedUp(`guests.${who}`, event, byWave));
}

/** People of one wave expected to come. Unit: people. `index` is the wave's place in the event, `counts` its people after an override. */
export function expectedFigure(event: Event, index: number, turnout: Turnout, counts: Counts): Figure {
  return figure(turnout.expected, 'people', () => {
    const invited = worked('invited', label('invited'), waveCountFigure(event, index, counts));
    if (turnout.guess !== null) {
      return { rule: 'guests.expectedRange', terms: [invited, worked('guess', label('guess'), guessFigure(event, index, turnout, counts))], sum: least('invited', 'guess') };
    }
    const typed = event.guests.waves[index]?.turnout;
    if (typed?.kind !== 'share') return { rule: 'guests.expectedKnown', terms: [invited], sum: just('invited') };
    const share = entered('share', label('share'), typed.share, '', `guests.waves[${index}].turnout.share`);
    return { rule: 'guests.expectedShare', terms: [invited, share], sum: times('invited', 'share') };
  });
}

/** People expected, all waves. Unit: people. */
export function expectedTotalFigure(event: Event, byWave: readonly Figure[]): Figure {
  return figure(byWave.reduce((a, f) => a + f.value, 0), 'people', () => addedUp('guests.expected', event, byWave));
}

/** People the amounts cover. Unit: people; may be a fraction for a likely turnout or a large crowd. `invited`: adults and children. */
export function plannedFigure(event: Event, reserve: Reserve, expected: Figure, invited: readonly Figure[]): Figure {
  return figure(reserve.people, 'people', () => {
    const { method } = reserve;
    const mean = worked('expected', label('expected'), expected);
    if (method.kind === 'sure') return { rule: 'guests.plannedSure', terms: [mean], sum: just('expected') };
    const [adults, children] = [worked('adults', label('adults'), invited[0] ?? expected), worked('children', label('children'), invited[1] ?? expected)];
    const cover = Math.round(event.preferences.cover * 1000) / 10;
    const chances = { word: 'guests.term.chances', params: { cover } };
    const everybody = plus('adults', 'children');
    if (method.kind === 'chances') {
      return workingOf('guests.planned', [
        mean, adults, children, computed('least', label('least'), method.least, 'people', 'guests.method.crowd'), computed('chances', chances, method.chances, '', 'guests.method.crowd'),
      ], most('expected', least(everybody, plus('least', countOf('chances')))));
    }
    return {
      rule: 'guests.plannedLarge',
      terms: [
        mean, adults, children, computed('deviations', { word: 'guests.term.deviations', params: { cover } }, method.deviations, '', 'guests.method.deviations'),
        worked('spread', label('spread'), spreadFigure(event, method)), computed('half', label('halfFamily'), method.halfFamily, 'people', 'guests.method.families'),
      ],
      sum: most('expected', least(everybody, plus('expected', times('deviations', 'spread'), 'half'))),
    };
  });
}

function spreadFigure(event: Event, method: Extract<ReserveMethod, { kind: 'spread' }>): Figure {
  const sd = Math.sqrt(method.variances.reduce((a, b) => a + b, 0));
  return figure(sd, 'people', () => ({
    rule: 'guests.spread',
    terms: method.variances.map((v, i) => computed(`wave${i}`, { text: event.guests.waves[i]?.name ?? '' }, v, '', 'guests.method.families')),
    sum: squareRoot(plus(...method.variances.map((_, i) => `wave${i}`))),
  }));
}
