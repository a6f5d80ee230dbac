import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestBowls } from '../../../shared/frying';
import { fry, fryEvent } from './fry-event';

/** Fewest bowls by another way: over pieces, the least number with which the first i pieces can be fried (bowls take consecutive pieces). */
function recount(loads: readonly { at: number; pieces: number }[], size: number, life: number): number {
  const at = loads.flatMap((l) => Array.from({ length: l.pieces }, () => l.at));
  const best = [0];
  for (let i = 1; i <= at.length; i += 1) {
    let least = Infinity;
    for (let from = Math.max(0, i - size); from < i; from += 1) if (at[i - 1]! - at[from]! <= life) least = Math.min(least, best[from]! + 1);
    best.push(least);
  }
  return best.at(-1)!;
}

const loadsOf = fc.array(fc.record({ gap: fc.integer({ min: 0, max: 12 }), pieces: fc.integer({ min: 1, max: 9 }) }), { maxLength: 12 })
  .map((list) => { let at = 600; return list.map(({ gap, pieces }) => ({ at: (at += gap), pieces })); });

describe('bowls', () => {
  it('are as few as can be, never too full, never too old', () => {
    fc.assert(fc.property(loadsOf, fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 30 }), (loads, size, life) => {
      const bowls = fewestBowls(loads, size, life);
      expect(bowls.length).toBe(recount(loads, size, life));
      const fried = loads.map(() => 0);
      for (const b of bowls) {
        expect(b.pieces).toBe(b.takes.reduce((s, t) => s + t.pieces, 0));
        expect(b.pieces).toBeLessThanOrEqual(size);
        for (const t of b.takes) {
          fried[t.batch]! += t.pieces;
          expect(loads[t.batch]!.at - b.readyAt).toBeGreaterThanOrEqual(0);
          expect(loads[t.batch]!.at - b.readyAt).toBeLessThanOrEqual(life);
        }
      }
      expect(fried).toEqual(loads.map((l) => l.pieces));
    }));
  });
  it('together take just what the menu says of every ingredient, and each is mixed before it is ready', () => {
    const { frying, menu } = fry(fryEvent());
    const menuLine = menu.dishes[0]!.lines[0]!;
    const total = frying.bowls.reduce((s, b) => s + b.lines[0]!.amount.amount.toNumber(), 0);
    expect(total).toBeCloseTo(menuLine.amount.amount.toNumber(), 6);
    for (const b of frying.bowls) {
      expect(b.readyAt - b.mixAt).toBe(5);
      expect(b.batterKg).toBeCloseTo(b.pieces * 0.025, 12);
      expect(b.pieces * 0.025).toBeLessThanOrEqual(5 * 0.6 + 1e-9);
    }
  });
  it('are not needed for what has no batter', () => {
    const { frying } = fry(fryEvent({ frying: { bowlMinutes: null } }));
    expect(frying.bowls).toEqual([]);
    expect(frying.batches.every((b) => b.bowls.length === 0)).toBe(true);
  });
});
