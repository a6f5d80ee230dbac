import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthByJug, oilByDepth, planKitchen } from '../../../shared/kitchen';
import { fryEvent, roundPan } from '../frying/fry-event';

const shapes = [
  roundPan, { ...roundPan, shape: 'flatWok', bottomMm: 150 }, { ...roundPan, shape: 'straight' },
  { ...roundPan, shape: 'rectangular', rimMm: undefined, lengthMm: 400, widthMm: 300 },
];
const withPan = (pan: Record<string, unknown>) => fryEvent({ pans: [pan] });
const panOf = (event: ReturnType<typeof withPan>) => event.kitchen.pans[0]!;

describe('a pan measured with a litre jug', () => {
  it('gets the depth at which it holds as much, whatever its shape', () => {
    fc.assert(fc.property(fc.constantFrom(...shapes), fc.integer({ min: 30, max: 400 }), (shape, depthMm) => {
      const event = withPan({ ...shape, depthMm });
      const litres = planKitchen(event).pans[0]!.fullLitres.value;
      expect(Math.abs((depthByJug(event, panOf(event), litres) ?? 0) - depthMm)).toBeLessThan(0.2);
    }), { numRuns: 200 });
  });
  it('half a sphere of 40 cm holds 16.755 L: two thirds of pi times the cube of its radius', () => {
    const event = withPan({ ...roundPan, rimMm: 400, depthMm: 140 });
    expect(depthByJug(event, panOf(event), (2 / 3) * Math.PI * 2 ** 3)).toBeCloseTo(200, 1);
  });
  it('is told when no pan of that width holds so much or so little', () => {
    const event = withPan(roundPan);
    expect(depthByJug(event, panOf(event), 500)).toBeNull();
    expect(depthByJug(event, panOf(event), 0.1)).toBeNull();
  });
  it('takes its oil by depth: the depth of that oil, cold, is what was entered', () => {
    fc.assert(fc.property(fc.constantFrom(...shapes), fc.integer({ min: 20, max: 100 }), (shape, deep) => {
      const event = withPan(shape);
      const litres = oilByDepth(event, panOf(event), deep);
      const again = withPan({ ...shape, depthMm: deep });
      // A straight pan as deep as the oil is full of it; a curved one is another sphere, so it is asked for its own volume at that depth.
      expect(litres).toBeGreaterThan(0);
      const straight = shape.shape === 'straight' || shape.shape === 'rectangular';
      expect(straight ? Math.abs(planKitchen(again).pans[0]!.fullLitres.value - litres) : 0).toBeLessThan(0.006);
      expect(oilByDepth(event, panOf(event), deep + 10)).toBeGreaterThan(litres);
    }), { numRuns: 100 });
    const bowl = withPan({ ...roundPan, rimMm: 400, depthMm: 200 });
    // Cap of 5 cm in a sphere of 20 cm: pi h squared (3R - h) / 3.
    expect(oilByDepth(bowl, panOf(bowl), 50)).toBeCloseTo((Math.PI * 0.5 ** 2 * (3 * 2 - 0.5)) / 3, 2);
  });
});
