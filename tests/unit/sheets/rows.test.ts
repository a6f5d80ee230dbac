import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutes } from '../../../shared/measure';
import { flaskFacts } from '../../../shared/sheets/drinks/flask-facts';
import { fryRows, keepTogether } from '../../../shared/sheets/fry/rows';
import { lanternPlan } from './lantern';

describe('rows of a fry sheet', () => {
  it('hold every batch once, in order, and every bowl once, right before its first batch', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 60 }), (batches) => {
      const { frying } = lanternPlan({ batches });
      const rows = fryRows(frying, 'stove');
      expect(rows.flatMap((r) => (r.kind === 'batch' ? [r.batch.number] : []))).toEqual(frying.batches.map((b) => b.number));
      expect(rows.flatMap((r) => (r.kind === 'bowl' ? [r.bowl.number] : []))).toEqual(frying.bowls.map((b) => b.number));
      rows.forEach((row, at) => {
        if (row.kind !== 'bowl') return;
        const next = rows[at + 1];
        expect(next?.kind === 'batch' && next.batch.bowls.includes(row.bowl.number)).toBe(true);
      });
    }));
  });

  it('mark the first batch of each new clock hour, but not the first row', () => {
    const hours = fryRows(lanternPlan().frying, 'stove').flatMap((r) => (r.kind === 'batch' && r.hour ? [r.batch.dropAt] : []));
    expect(hours).toEqual([723, 783]);
  });

  it('leave out other stations', () => {
    expect(fryRows(lanternPlan().frying, 'elsewhere')).toEqual([]);
  });

  it('stay together: no bowl ends a group, no top-up begins one, nothing is lost', () => {
    const rows = fryRows(lanternPlan({ batches: 30 }).frying, 'stove');
    const groups = keepTogether(rows);
    expect(groups.flat()).toEqual(rows);
    for (const group of groups) {
      expect(group.at(-1)?.kind).not.toBe('bowl');
      expect(group[0]?.kind).not.toBe('topUp');
    }
  });
});

const flask = (litres: readonly number[], celsius: readonly number[]) => ({ ...lanternPlan().drinks.dispensers[0]!, fromMinute: minutes(600), litres, celsius });

describe('facts of a flask', () => {
  it('coolest counts only while something is in it', () => {
    expect(flaskFacts(flask([0, 5, 4, 0], [21, 90, 88, 21])).coolest).toEqual({ celsius: 88, at: 602 });
    expect(flaskFacts(flask([0, 5, 4, 0], [99, 8, 11, 21])).warmest).toEqual({ celsius: 11, at: 602 });
  });

  it('an empty flask that was never filled has no facts', () => {
    expect(flaskFacts(flask([0, 0], [21, 21]))).toEqual({ coolest: null, warmest: null, emptyAt: [] });
  });

  it('tells each time it runs empty', () => {
    expect(flaskFacts(flask([5, 0, 5, 0.04, 0], [90, 21, 90, 30, 21])).emptyAt).toEqual([601, 603]);
  });
});
