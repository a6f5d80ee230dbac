import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WavePlan } from '../../../shared/guests';
import { planGuests } from '../../../shared/guests';
import { shareThereBetween } from '../../../shared/menu/overlap';
import { menuEvent } from './make-menu';

const waveOf = (from: number, to: number, shortest: number, usual: number, longest: number): WavePlan => {
  const [wave] = planGuests(menuEvent([], [{ from, to, counts: { adult: 10 }, stay: { shortest, usual, longest } }])).waves;
  if (wave === undefined) throw new Error('no wave');
  return wave;
};

/** Chance to stay longer than x, triangular, written out again for the check. */
function stillThere(x: number, a: number, c: number, b: number): number {
  if (x < a) return 1;
  if (x >= b) return 0;
  if (x < c) return 1 - (x - a) ** 2 / ((b - a) * (c - a));
  return (b - x) ** 2 / ((b - a) * (b - c));
}

describe('share of a wave that is there between two times', () => {
  it('agrees with adding up arrivals one by one', () => {
    const n = fc.integer({ min: 1, max: 150 });
    fc.assert(fc.property(fc.integer({ min: 600, max: 900 }), n, n, n, n, fc.integer({ min: 500, max: 1100 }), n, (from, length, a, b, c, start, width) => {
      const [shortest, usual, longest] = [a, a + b, a + b + c];
      const wave = waveOf(from, from + length, shortest, usual, longest);
      const steps = 4000;
      let share = 0;
      for (let i = 0; i < steps; i += 1) {
        const arrival = from + (length * (i + 0.5)) / steps;
        if (arrival < start + width) share += stillThere(start - arrival, shortest, usual, longest) / steps;
      }
      expect(shareThereBetween(wave, start, start + width)).toBeCloseTo(share, 3);
    }), { numRuns: 80 });
  });

  it.each([
    ['before anybody comes', 500, 700, 0], ['all day', 0, 2000, 1], ['after all have gone', 1000, 1100, 0],
    ['an empty window', 760, 760, 0], ['half of the arrivals', 720, 750, 0.5],
  ])('%s', (_, start, end, share) => expect(shareThereBetween(waveOf(720, 780, 60, 60, 60), start, end)).toBeCloseTo(share, 12));

  it('a wave that comes all at once is there from that minute on', () => {
    const wave = waveOf(720, 720, 30, 30, 30);
    expect(shareThereBetween(wave, 740, 745)).toBe(1);
    expect(shareThereBetween(wave, 760, 765)).toBe(0);
  });
});
