import { describe, expect, it } from 'vitest';
import { brewJobs, fillJobs } from '../../../shared/timeline/fixed-jobs';
import { figuresIn, wordFaults, workingFaults } from '../frying/fry-event';
import { drinkEvent, drinksOf } from './drink-event';

const urn = (id: string, more: Record<string, unknown> = {}) => ({ id, name: `Urn ${id}`, litres: 6, massKg: 3, insulation: 'heated', dish: 'tea', brewsW: 1650, ...more });
const coffee = { method: 'percolate', doseGPerL: 55, absorbMlPerG: 2.2, goodForMinutes: 60, steepMinutes: 5 };
const planned = (urns: readonly Record<string, unknown>[], more: Record<string, unknown> = {}) => drinksOf(drinkEvent({ adults: 40, dispensers: urns, tea: coffee, ...more }));

describe('a brewing urn', () => {
  const { drinks, menu } = planned([urn('one'), urn('two')]);
  it('brews in itself: no pot, no burner, nothing carried', () => {
    expect(drinks.rounds.length).toBeGreaterThan(1);
    for (const r of drinks.rounds) expect(r).toMatchObject({ inUrn: true, burner: null });
    expect(new Set(drinks.rounds.map((r) => r.pot))).toEqual(new Set(['one', 'two']));
    for (const fill of drinks.fills) expect(fill).toMatchObject({ trips: 0, dispenser: drinks.rounds.find((r) => r.number === fill.round)!.pot });
    expect(fillJobs(drinks, 3)).toEqual([]);
    expect(brewJobs(menu, drinks, 1).flatMap((j) => j.stretches.flatMap((s) => s.needs.map((n) => n.thing))).every((thing) => thing.startsWith('urn:'))).toBe(true);
  });
  it('is empty or done with before it is started again', () => {
    for (const r of drinks.rounds) {
      const d = drinks.dispensers.find((x) => x.id === r.pot)!;
      const inUse = drinks.fills.filter((f) => f.dispenser === r.pot && f.at < r.startAt).at(-1);
      if (inUse === undefined) continue;
      // The last cup is drawn in the minute the next brew starts; from then on the level stands still.
      const levels = d.litres.slice(r.startAt + 1 - d.fromMinute, r.readyAt - d.fromMinute);
      expect(new Set(levels.map((l) => l.toFixed(6))).size).toBeLessThanOrEqual(1);
    }
  });
  it('takes as long as its element needs: litres and pot to the boil on its own watts', () => {
    const r = drinks.rounds[0]!;
    expect(r.heatMinutes.value).toBeCloseTo(((r.waterLitres.value * 4.18 + 3 * 0.49) * 85) / (1.65 * 0.92) / 60, 6);
    const all = figuresIn(drinks);
    expect(all.flatMap(workingFaults)).toEqual([]);
    expect(all.flatMap(wordFaults)).toEqual([]);
  });
  it('holds its temperature, from brewing heat down to its own', () => {
    const d = drinks.dispensers[0]!;
    const filled = d.celsius.filter((_, i) => (d.litres[i] ?? 0) > 0);
    expect(Math.max(...filled)).toBeLessThanOrEqual(100);
    expect(Math.min(...filled)).toBeGreaterThan(80);
  });
  it('never serves more than it holds, and all of it is counted', () => {
    for (const urns of [[urn('one')], [urn('one'), urn('two')], [urn('one', { litres: 15 })]]) {
      const { drinks: d } = planned(urns);
      for (const one of d.dispensers) for (const litres of one.litres) expect(litres).toBeLessThanOrEqual(one.capacityLitres + 1e-9);
      const [total] = d.totals;
      const wanted = total!.served.value + total!.unmetLitres;
      expect(total!.brewed.value).toBeCloseTo(total!.served.value + total!.leftLitres, 9);
      expect(wanted).toBeCloseTo(drinks.totals[0]!.served.value + drinks.totals[0]!.unmetLitres, 9);
    }
  });
  it('needs no pot and no burner in the kitchen', () => {
    const { drinks: d } = planned([urn('one', { litres: 25 })], { pots: [], burners: [], tea: { ...coffee, goodForMinutes: 300 } });
    expect(d.totals[0]!.unmetLitres).toBe(0);
    expect(d.problems).toEqual([]);
  });
});
