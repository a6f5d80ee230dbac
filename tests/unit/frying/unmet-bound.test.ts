import { describe, expect, it } from 'vitest';
import { figuresIn, fry, fryEvent, gasRing, roundPan, wordFaults, workingFaults, type FryChange } from './fry-event';

const weak = { ...gasRing, ratedW: 2500 };
const shared: FryChange = { adults: 160, burners: [weak], second: { fryMinutes: 6, pieceBatterG: 40 } };
/** A second pan half as wide on a ring of its own. */
const unequal: FryChange = {
  ...shared, adults: 260, pans: [roundPan, { ...roundPan, id: 'pan-2', rimMm: 300, depthMm: 120, oilLitres: 1.5, massKg: 1, burner: 'ring-2' }], burners: [weak, { ...weak, id: 'ring-2' }],
};
const all = (change: FryChange) => {
  const { frying } = fry(fryEvent(change));
  return { frying, short: frying.served.reduce((n, s) => n + s.unmet.reduce((a, b) => a + b, 0), 0) };
};

describe('who goes short in every plan', () => {
  it('is not asked when nobody does', () => expect(all({}).frying.unmetBound).toBeNull());
  it('is all who go short where one dish has one line to itself', () => {
    const { frying, short } = all({ adults: 300, burners: [weak] });
    expect(short).toBeGreaterThan(0);
    expect(frying.unmetBound?.unmet.value).toBe(short);
    expect(frying.unmetBound?.atLeast.value).toBe(short);
    expect(frying.unmetBound?.gap.value).toBe(0);
    expect(frying.unmetBound?.atLeast.working().rule).toBe('fry.unmetAlone');
  });
  it('is some, and no more than the plan leaves short, where two dishes share one pan', () => {
    const { frying, short } = all(shared);
    const bound = frying.unmetBound!;
    expect(bound.unmet.value).toBe(short);
    expect(bound.atLeast.value).toBeGreaterThan(short / 2);
    expect(bound.atLeast.value).toBeLessThanOrEqual(short);
    expect(bound.gap.value).toBe(short - bound.atLeast.value);
    // Alone in the pan each would leave fewer: the proof has to count both.
    expect(bound.atLeast.working().rule).toBe('fry.unmetWindows');
  });
  it('is some where two dishes share unequal pans', () => {
    const { frying, short } = all(unequal);
    expect(frying.unmetBound!.atLeast.value).toBeGreaterThan(0);
    expect(frying.unmetBound!.atLeast.value).toBeLessThanOrEqual(short);
  });
  it('is all of a dish without a station', () => {
    const { frying, short } = all({ adults: 20, stations: [] });
    expect(short).toBeGreaterThan(0);
    expect(frying.unmetBound?.gap.value).toBe(0);
  });
  it.each([['one dish', { adults: 300, burners: [weak] }], ['shared', shared], ['unequal', unequal], ['no station', { adults: 20, stations: [] }]] as const)('figures recompute from named inputs, with words: %s', (_, change) => {
    const figures = figuresIn(all(change).frying.unmetBound);
    expect(figures.length).toBeGreaterThanOrEqual(3);
    expect(figures.flatMap((f) => [...workingFaults(f), ...wordFaults(f)])).toEqual([]);
  });
  it('both kinds of proof are told somewhere', () => {
    const rules = new Set([shared, unequal, { ...shared, adults: 90 }, { ...shared, adults: 400 }].flatMap((c) => figuresIn(all(c).frying.unmetBound).map((f) => f.working().rule)));
    expect([...rules].filter((r) => r.startsWith('fry.window')).sort()).toEqual(['fry.windowBatches', 'fry.windowMinutes']);
  });
});
