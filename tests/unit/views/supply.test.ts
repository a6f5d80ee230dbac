import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { eventSchema } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { supplyOf } from '../../../src-renderer/views/frying/supply';

const demo = plan(eventSchema.parse(JSON.parse(readFileSync(new URL('../../../assets/app/demo/lantern-evening.brimful', import.meta.url), 'utf8'))));
const totalAt = (list: readonly { readonly at: number; readonly pieces: number }[], minute: number): number => list.findLast((p) => p.at <= minute)?.pieces ?? 0;

describe('the picture of a fried dish', () => {
  it('is not drawn for what is not fried', () => {
    expect(supplyOf(demo, 'rice')).toBeNull();
    expect(supplyOf(demo, 'no-such-dish')).toBeNull();
  });

  it.each(demo.frying.loads.map((l) => l.dish))('%s: totals rise and end where the plan ends', (dish) => {
    const supply = supplyOf(demo, dish)!;
    for (const list of [supply.lifted, supply.wanted, supply.fresh]) {
      list.slice(1).forEach((p, i) => {
        expect(p.pieces).toBeGreaterThanOrEqual(list[i]!.pieces);
        expect(p.at).toBeGreaterThanOrEqual(list[i]!.at);
      });
    }
    const fried = demo.frying.batches.filter((b) => b.dish === dish).reduce((sum, b) => sum + b.pieces, 0);
    expect(supply.lifted.at(-1)?.pieces).toBe(fried);
    expect(supply.wanted.at(-1)?.pieces).toBe(demo.menu.dishes.find((d) => d.id === dish)!.portions.value);
  });

  it.each(demo.frying.loads.map((l) => l.dish))('%s: what stays fresh is what will be wanted within the hold time', (dish) => {
    const supply = supplyOf(demo, dish)!;
    for (let minute = supply.from + 1; minute < supply.to - supply.holdMinutes; minute += 7) {
      expect(totalAt(supply.fresh, minute)).toBe(totalAt(supply.wanted, minute + supply.holdMinutes));
    }
  });
});
