import { describe, expect, test } from 'vitest';
import { recompute, type Figure, type Working } from '../../../shared/figure';
import { meanStayFigure, planGuests, rangeHighFigure, rangeSpreadFigure, spentFigure, sinceFigure, waveCountFigure, windowFigure } from '../../../shared/guests';
import { eventOf, type TestWave } from './make-event';

const term = (w: Working, key: string) => {
  const found = w.terms.find((t) => t.key === key);
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
};
const inner = (f: Figure, ...path: string[]): Figure => path.reduce((at, key) => {
  const found = term(at.working(), key).figure;
  if (found === undefined) throw new Error(`${key} has no working`);
  return found;
}, f);
const wave = (turnout: unknown, more: Partial<TestWave> = {}): TestWave => ({ from: 720, to: 760, counts: { adult: 60, age4to6: 20 }, turnout, ...more });

const at = (value: number) => ({ key: 'at', label: { text: 'at' }, value, unit: 'min', origin: { kind: 'computed', method: 'guests.method.peak' } as const });

describe('people of a wave', () => {
  const event = eventOf([wave({ kind: 'known' })]);
  test('are the bands as entered, added up', () => {
    const w = waveCountFigure(event, 0, event.guests.waves[0]!.counts).working();
    expect(w.terms.map((t) => [t.value, t.origin])).toEqual([
      [20, { kind: 'entered', path: 'guests.waves[0].counts.age4to6' }], [60, { kind: 'entered', path: 'guests.waves[0].counts.adult' }],
    ]);
    expect(recompute(w)).toBe(80);
  });
  test('are said to be worked out where the headcount was set as a whole', () => {
    const set = eventOf([wave({ kind: 'known' })], {}, { adults: 90, children: null });
    const w = inner(planGuests(set).planned, 'expected', 'wave0', 'invited').working();
    expect(term(w, 'adult')).toMatchObject({ value: 90, origin: { kind: 'computed', method: 'guests.method.split' } });
    expect(term(w, 'age4to6')).toMatchObject({ value: 20, origin: { kind: 'entered', path: 'guests.waves[0].counts.age4to6' } });
  });
});

describe('people expected', () => {
  test('a share is shown as typed: 80 × 0.75 = 60', () => {
    const w = inner(planGuests(eventOf([wave({ kind: 'share', share: 0.75 })])).planned, 'expected', 'wave0').working();
    expect(term(w, 'share')).toMatchObject({ value: 0.75, origin: { kind: 'entered', path: 'guests.waves[0].turnout.share' } });
    expect(recompute(w)).toBe(60);
  });
  test('a range typed out of order is shown in order, each with its own field: (40 + 4 × 55 + 70) ÷ 6 = 55', () => {
    const w = inner(planGuests(eventOf([wave({ kind: 'range', low: 55, likely: 70, high: 40 })])).planned, 'expected', 'wave0', 'guess').working();
    expect(w.terms.map((t) => [t.key, t.value, t.origin])).toEqual([
      ['low', 40, { kind: 'entered', path: 'guests.waves[0].turnout.high' }], ['likely', 55, { kind: 'entered', path: 'guests.waves[0].turnout.low' }],
      ['high', 70, { kind: 'entered', path: 'guests.waves[0].turnout.likely' }],
    ]);
    expect(recompute(w)).toBeCloseTo(55, 12);
  });
  test('a range grows with the wave: 160 of 80 invited doubles 55, and shows both counts', () => {
    const event = eventOf([wave({ kind: 'range', low: 40, likely: 55, high: 70 })], {}, { adults: 120, children: 40 });
    const guests = planGuests(event);
    const w = inner(guests.planned, 'expected', 'wave0', 'guess').working();
    expect([term(w, 'now').value, term(w, 'before').value, recompute(w)]).toEqual([160, 80, 110]);
    const { turnout, counts } = guests.waves[0]!;
    expect(rangeHighFigure(event, 0, turnout, counts).value).toBe(140);
    // 30 × sqrt((1 + 4 × 15 ÷ 30) × (1 + 4 × 15 ÷ 30) ÷ 252) = 30 × 3 ÷ 15.8745 = 5.6695, twice.
    const spread = rangeSpreadFigure(event, 0, turnout, counts);
    expect(spread.value).toBeCloseTo(2 * 5.6695, 3);
    expect(recompute(spread.working())).toBeCloseTo(spread.value, 12);
  });
  test('a range of one number does not spread', () => {
    const event = eventOf([wave({ kind: 'range', low: 50, likely: 50, high: 50 })]);
    const { turnout, counts } = planGuests(event).waves[0]!;
    const spread = rangeSpreadFigure(event, 0, turnout, counts);
    expect([spread.value, recompute(spread.working())]).toEqual([0, 0]);
  });
});

describe('people to plan for', () => {
  test('a large crowd shows its distances: 500 in pairs at one half, sqrt(500 × 2 × 0.25) = 15.81 times 1.28 and one more', () => {
    const w = planGuests(eventOf([wave({ kind: 'share', share: 0.5 }, { counts: { adult: 500 } })])).planned.working();
    expect(w.rule).toBe('guests.plannedLarge');
    expect(term(w, 'spread').value).toBeCloseTo(Math.sqrt(250), 10);
    expect(term(w, 'deviations').value).toBeCloseTo(1.2815, 2);
    expect(term(w, 'half').value).toBe(1);
    expect(recompute(w)).toBeCloseTo(250 + 1.28 * Math.sqrt(250) + 1, 0);
  });
  test('a small crowd counts the chances that are too small: two adults, one half: 0.5 is below 0.9, so the pair is planned', () => {
    const w = planGuests(eventOf([wave({ kind: 'share', share: 0.5 }, { counts: { adult: 2 } })])).planned.working();
    expect(term(w, 'chances').value).toEqual([0.5, 0.5]);
    expect(recompute(w)).toBe(2);
  });
});

describe('stays', () => {
  const coming = { from: 720, to: 760, stay: { shortest: 60, usual: 90, longest: 180 } };
  const path = 'guests.waves[0]';
  test.each([[700, 0], [720, 0], [750, 30], [780, 60], [2000, 110]])('at minute %i the first to come have spent %f minutes', (minute, spent) => {
    const f = spentFigure(coming.stay, sinceFigure(coming, at(minute), path, 'first'), path);
    expect(f.value).toBeCloseTo(spent, 10);
    expect(recompute(f.working())).toBeCloseTo(spent, 10);
  });
  test('the last to come are a window behind: 750 − 720 − 40 = −10', () => {
    const f = sinceFigure(coming, at(750), path, 'last');
    expect([f.value, recompute(f.working())]).toEqual([-10, -10]);
  });
  test('mean stay (60 + 90 + 180) ÷ 3 = 110; a window of no length counts one minute', () => {
    expect([meanStayFigure(coming.stay, path).value, recompute(meanStayFigure(coming.stay, path).working())]).toEqual([110, 110]);
    const once = windowFigure({ ...coming, to: 720 }, path);
    expect([once.value, recompute(once.working())]).toEqual([1, 1]);
  });
});
