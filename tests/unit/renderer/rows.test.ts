import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitted, rowsOf } from '../../../src-renderer/views/board/rows';

describe('rows of stretches', () => {
  it('puts what does not overlap on one row', () => {
    expect(rowsOf([{ start: 0, end: 10 }, { start: 10, end: 20 }, { start: 5, end: 12 }]).map((r) => r.row)).toEqual([0, 1, 0]);
  });

  it('keeps the asked gap', () => {
    expect(rowsOf([{ start: 0, end: 10 }, { start: 12, end: 20 }], 5).map((r) => r.row)).toEqual([0, 1]);
  });

  it('never lets two stretches of a row overlap, and uses no more rows than overlap at once', () => {
    const stretch = fc.tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 1, max: 90 })).map(([start, length]) => ({ start, end: start + length }));
    fc.assert(fc.property(fc.array(stretch, { maxLength: 40 }), (items) => {
      const placed = rowsOf(items);
      const clashes = placed.flatMap((a) => placed.filter((b) => a !== b && a.row === b.row && a.item.end > b.item.start && b.item.end > a.item.start));
      expect(clashes).toEqual([]);
      const most = Math.max(0, ...items.map((x) => items.filter((y) => y.start <= x.start && y.end > x.start).length));
      expect(Math.max(0, ...placed.map((p) => p.row + 1))).toBe(most);
    }));
  });
});

describe('text that fits', () => {
  it('stays whole where there is room', () => expect(fitted('Flatbread', 200)).toBe('Flatbread'));
  it('is shortened with an ellipsis', () => expect(fitted('Noon meal for all', 80)).toBe('Noon meal…'));
  it('is left out where hardly a letter fits', () => expect(fitted('Noon meal', 30)).toBe(''));
  it('is never longer than the room', () => fc.assert(fc.property(fc.string({ maxLength: 60 }), fc.integer({ min: 0, max: 400 }), (text, width) => {
    expect(fitted(text, width).length * 7.8).toBeLessThanOrEqual(Math.max(width, 0));
  })));
});
