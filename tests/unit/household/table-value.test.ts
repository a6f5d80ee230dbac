import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setHouseFigure } from '../../../shared/edit';
import { newEvent } from '../../../shared/event';
import { settle, tableValue } from '../../../shared/household';
import { bandFactors, legalRange, parameters, rolePortions, sourceTitle } from '../../../shared/reference';

const keys = [
  ...parameters.map((p) => [p.id, p.unit] as const), ...bandFactors.flatMap((b) => ['food', 'cold', 'hot', 'hotCaffeinated'].map((kind) => [`band.${b.band}.${kind}`, ''] as const)),
  ...[1, 2, 3, 4, 5, 6].map((n) => [`appetite.${n}`, ''] as const),
  ...rolePortions.flatMap((r) => [[r.piece, 'pieces'], [r.g, 'kg'], [r.ml, 'L']] as const).flatMap(([row, unit], i) => (row === null ? [] : [[`portion.${rolePortions[Math.floor(i / 3)]?.role ?? ''}`, unit] as const])),
];

describe('values of the tables that a household may replace', () => {
  it('every parameter, age factor, point of the appetite curve and portion has a value in its legal range, and a named source', () => {
    expect(keys.length).toBeGreaterThan(250);
    for (const [key, unit] of keys) {
      const found = tableValue(key, unit);
      if (found === null) throw new Error(`no value for ${key}`);
      expect([key, found.value >= found.least, found.value <= found.most]).toEqual([key, true, true]);
      expect(found.source === 'definition' || sourceTitle(found.source) !== undefined, `${key}: ${found.source}`).toBe(true);
    }
  });

  it('nothing else is offered', () => {
    for (const key of ['recipe.asWater', 'band.giant.food', 'band.adult.looks', 'portion.nothing', '']) expect(tableValue(key, '')).toBeNull();
  });

  it('an own figure is in force with its key in its origin, and gone again gives the same event', () => {
    const event = newEvent({ id: 'a', title: 'x', day: '2026-12-12' });
    fc.assert(fc.property(fc.constantFrom(...parameters.map((p) => p.id)), fc.double({ min: 0, max: 1, noNaN: true }), (id, at) => {
      const range = legalRange(id);
      const value = (range?.least ?? 0) + at * ((range?.most ?? 0) - (range?.least ?? 0));
      const own = setHouseFigure(event, id, { value, why: 'weighed' });
      if (!('event' in own)) throw new Error('refused');
      expect(settle(own.event, id)).toMatchObject({ value, origin: { kind: 'house', why: 'weighed', row: id } });
      const back = setHouseFigure(own.event, id, null);
      expect('event' in back ? back.event : null).toEqual(event);
    }), { numRuns: 200 });
  });
});
