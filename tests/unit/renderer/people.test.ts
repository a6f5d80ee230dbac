import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { childBands, type BandId } from '../../../shared/event';
import { spread } from '../../../src-renderer/views/guests/people';

const none: Record<BandId, number> = { under1: 0, age1to3: 0, age4to6: 0, age7to9: 0, age10to12: 0, age13to17: 0, adult: 0, olderAdult: 0 };

describe('a new total spread over age bands', () => {
  it('keeps the proportions', () => {
    expect(spread({ ...none, age4to6: 2, age7to9: 4 }, childBands, 'age7to9', 12)).toMatchObject({ age4to6: 4, age7to9: 8 });
  });
  it('goes into the usual band when all were empty', () => {
    expect(spread(none, childBands, 'age7to9', 5)).toEqual({ under1: 0, age1to3: 0, age4to6: 0, age7to9: 5, age10to12: 0, age13to17: 0 });
  });
  it('always adds up, in whole people, nobody below zero', () => {
    const count = fc.integer({ min: 0, max: 300 });
    fc.assert(fc.property(fc.tuple(count, count, count, count, count, count), fc.integer({ min: 0, max: 5000 }), ([a, b, c, d, e, f], total) => {
      const after = Object.values(spread({ ...none, under1: a, age1to3: b, age4to6: c, age7to9: d, age10to12: e, age13to17: f }, childBands, 'age7to9', total));
      expect(after.reduce((x, y) => x + y, 0)).toBe(total);
      expect(after.every((n) => Number.isInteger(n) && n >= 0)).toBe(true);
    }));
  });
});
