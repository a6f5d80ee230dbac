import { describe, expect, it } from 'vitest';
import { againstSolver } from './against-solver';

describe('an independent exact solver (HiGHS)', () => {
  it('finds as few unmet portions, as few batches and on half of them as little waiting, on twenty problems', async () => {
    const found = await againstSolver(20, 20261125, 2);
    expect(found.differences).toEqual([]);
    expect(found.short).toBeGreaterThan(0);
    expect(found.short).toBeLessThan(found.problems);
    expect(found.waitingProven).toBeGreaterThan(5);
  }, 120_000);
});
