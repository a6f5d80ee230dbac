import type { Event } from '../event';
import { computed, divide, entered, figure, least, minus, most, plus, power, squareRoot, times, worked, type Figure } from '../figure';
import { normalQuantile, rangeHighFigure, rangeSpreadFigure, waveCountFigure, type WavePlan } from '../guests';
import { waveIndex } from './heads';

/** What one wave wants of a dish. */
export interface WaveDemand {
  readonly wave: WavePlan;
  /** Portions expected. */
  readonly figure: Figure;
  /** What an adult of the wave takes. */
  readonly asAdult: Figure;
  /** Sum over families of the square of what a family counts, an adult's being 1. */
  readonly squares: () => number;
}

/** Portions kept above the expected ones, and how they fall to the waves. */
export interface DishReserve {
  readonly figure: Figure;
  readonly byWave: readonly number[];
}

/** Usual distance (standard deviation) of a wave's portions from the expected ones; null when everybody is sure to come. */
function waveSpread(event: Event, unit: string, { wave, figure: expected, asAdult, squares }: WaveDemand): Figure | null {
  const { turnout } = wave;
  if (!turnout.uncertain || turnout.expected <= 0) return null;
  const index = waveIndex(event, wave);
  if (turnout.range !== null) {
    const spread = rangeSpreadFigure(event, index, turnout, wave.counts);
    return figure((spread.value * expected.value) / turnout.expected, unit, () => ({
      rule: 'menu.rangeSpread',
      terms: [worked('portions', { word: 'menu.term.wave', params: { wave: wave.name } }, expected), worked('people', { word: 'menu.term.coming' }, wave.coming), worked('spread', { word: 'menu.term.guessSpread' }, spread)],
      sum: times('spread', divide('portions', 'people')),
    }));
  }
  const { share } = turnout;
  const families = squares();
  return figure(asAdult.value * Math.sqrt(share * (1 - share) * families), unit, () => ({
    rule: 'menu.familySpread',
    terms: [
      worked('each', { word: 'menu.term.asAdultTakes' }, asAdult), entered('share', { word: 'guests.term.share' }, share, '', `guests.waves[${index}].turnout.share`),
      computed('families', { word: 'menu.term.squares' }, families, '', 'guests.method.families'),
    ],
    sum: times('each', squareRoot(times('share', minus(1, 'share'), 'families'))),
  }));
}

/** People of a wave if everybody came who may: all invited, or the high guess, and not fewer than expected. */
function everybodyFigure(event: Event, { turnout, coming, counts }: WavePlan, index: number): Figure {
  const invited = waveCountFigure(event, index, counts);
  if (turnout.range === null) return invited;
  const high = rangeHighFigure(event, index, turnout, counts);
  return figure(Math.max(coming.value, Math.min(invited.value, high.value)), 'people', () => ({
    rule: 'menu.everybody',
    terms: [worked('coming', { word: 'menu.term.coming' }, coming), worked('invited', { word: 'guests.term.invited' }, invited), worked('high', { word: 'guests.term.high' }, high)],
    sum: most('coming', least('invited', 'high')),
  }));
}

/**
 * Portions of a dish above the expected ones, so that they last on the wanted share of days: that many standard deviations of what all waves
 * take together, families coming or staying away as one, never more than if everybody came. Worked out for each dish by what its guests take:
 * a reserve of people shared out over waves and ages would give less to some when a guest more comes, because a larger crowd needs less of it
 * for each; this never falls. Null when everybody is sure to come. Normal distribution of a sum (check `stock.pooling`).
 */
export function reserveOf(event: Event, unit: string, waves: readonly WaveDemand[]): DishReserve | null {
  const spreads = waves.map((w) => waveSpread(event, unit, w));
  if (spreads.every((s) => s === null)) return null;
  const variance = spreads.reduce((sum, s) => sum + (s?.value ?? 0) ** 2, 0);
  const deviations = normalQuantile(event.preferences.cover);
  const room = roomFigure(event, unit, waves);
  const value = Math.max(0, Math.min(room.value, deviations * Math.sqrt(variance)));
  const shown = spreads.flatMap((s, i) => (s === null ? [] : [worked(`s${i}`, { word: 'menu.term.waveSpread', params: { wave: waves[i]?.wave.name ?? '' } }, s)]));
  const cover = Math.round(event.preferences.cover * 1000) / 10;
  return {
    byWave: spreads.map((s) => (variance > 0 ? (value * (s?.value ?? 0) ** 2) / variance : 0)),
    figure: figure(value, unit, () => ({
      rule: 'menu.reserve',
      terms: [computed('deviations', { word: 'guests.term.deviations', params: { cover } }, deviations, '', 'guests.method.normal'), ...shown, worked('room', { word: 'menu.term.room' }, room)],
      sum: most(0, least('room', times('deviations', squareRoot(plus(...shown.map((t) => power(t.key, 2))))))),
    })),
  };
}

/** Portions between those expected and those if everybody came. */
function roomFigure(event: Event, unit: string, waves: readonly WaveDemand[]): Figure {
  const uncertain = waves.filter(({ wave }) => wave.turnout.uncertain && wave.turnout.expected > 0)
    .map(({ wave, figure: portions }) => ({ wave, portions, everybody: everybodyFigure(event, wave, waveIndex(event, wave)) }));
  const more = uncertain.reduce((sum, { wave, portions, everybody }) => sum + (portions.value * (everybody.value - wave.coming.value)) / wave.coming.value, 0);
  return figure(more, unit, () => ({
    rule: 'menu.reserveRoom',
    terms: uncertain.flatMap(({ wave, portions, everybody }, i) => [
      worked(`w${i}`, { word: 'menu.term.wave', params: { wave: wave.name } }, portions), worked(`n${i}`, { word: 'menu.term.coming' }, wave.coming),
      worked(`all${i}`, { word: 'menu.term.everybody', params: { wave: wave.name } }, everybody),
    ]),
    sum: plus(...uncertain.map((_, i) => times(`w${i}`, divide(minus(`all${i}`, `n${i}`), `n${i}`)))),
  }));
}
