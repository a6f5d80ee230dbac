import { describe, expect, it, vi } from 'vitest';
import { entered, figure, plus, recompute, ruleIds, termValues, times, worked, type Term } from '../../../shared/figure';

const adults = entered('adults', { text: 'adults' }, 68, 'people', 'guests.waves[0].counts.adult');
const each: Term = { key: 'each', label: { word: 'menu.term.perAdult' }, value: 4, unit: 'pieces', origin: { kind: 'table', source: 'common-practice', row: 'portion.friedSnack' } };

describe('figures', () => {
  it('show their working only when asked', () => {
    const working = vi.fn<() => { rule: string; terms: []; sum: ReturnType<typeof plus> }>(() => ({ rule: 'x', terms: [], sum: plus(1, 2) }));
    const f = figure(3, 'pieces', working);
    expect([f.value, f.unit]).toEqual([3, 'pieces']);
    expect(working).not.toHaveBeenCalled();
    expect(recompute(f.working())).toBe(3);
    expect(working).toHaveBeenCalledTimes(1);
  });

  it('recompute from their terms, nested ones too', () => {
    const inner = figure(272, 'pieces', () => ({ rule: 'menu.wavePortions', terms: [adults, each], sum: times('adults', 'each') }));
    const outer = figure(282, 'pieces', () => ({ rule: 'menu.portions', terms: [worked('wave', { text: 'First' }, inner)], sum: plus('wave', 10) }));
    expect(recompute(inner.working())).toBe(272);
    expect(recompute(outer.working())).toBe(282);
    expect(termValues(outer.working())).toEqual({ wave: 272 });
    expect(outer.working().terms[0]?.figure).toBe(inner);
  });

  it('say where a leaf comes from', () => {
    expect(adults.origin).toEqual({ kind: 'entered', path: 'guests.waves[0].counts.adult' });
  });
});

describe('the rule register', () => {
  it('has every rule once, named by its room', () => {
    expect(new Set(ruleIds).size).toBe(ruleIds.length);
    expect(ruleIds.filter((id) => !/^[a-z]+\.[a-zA-Z.]+$/.test(id))).toEqual([]);
  });
});
