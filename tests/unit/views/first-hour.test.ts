import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstHourLoss } from '../../../src-renderer/views/drinks/first-hour';
import { fittingLabel } from '../../../src-renderer/views/day/fitting-label';
import { lanternPlan } from '../sheets/lantern';

const flask = { ...lanternPlan().drinks.dispensers[0]!, litres: [0, 6, 6], celsius: [21, 92, 91.9] };

describe('what a flask loses in its first hour', () => {
  it('follows its own rate towards the room', () => {
    // 71 degrees above the room at 0.05 an hour: 71 × (1 − e^−0.05) = 3.46.
    expect(firstHourLoss(flask, 21)).toBeCloseTo(3.4627, 3);
  });

  it('is a gain for a cold drink, and nothing to tell for a flask never filled', () => {
    expect(firstHourLoss({ ...flask, celsius: [21, 6, 6] }, 21)).toBeCloseTo(-0.7316, 3);
    expect(firstHourLoss({ ...flask, litres: [0, 0, 0] }, 21)).toBeNull();
  });
});

describe('the label of a block', () => {
  it('is the first that fits whole, or none', () => {
    expect(fittingLabel(['Rice: Boil', 'Boil'], 200)).toBe('Rice: Boil');
    expect(fittingLabel(['Rice: Boil', 'Boil'], 40)).toBe('Boil');
    expect(fittingLabel(['Rice: Boil', 'Boil'], 20)).toBeNull();
    expect(fittingLabel(['Clean the kitchen'], 60)).toBeNull();
  });

  it('is never cut: it is one of the labels offered, and fits', () => {
    fc.assert(fc.property(fc.array(fc.string({ minLength: 1, maxLength: 60 })), fc.integer({ min: 0, max: 500 }), (labels, width) => {
      const label = fittingLabel(labels, width);
      if (label === null) for (const text of labels) expect(text.length * 6.8).toBeGreaterThan(width);
      else {
        expect(labels).toContain(label);
        expect(label.length * 6.8).toBeLessThanOrEqual(width);
      }
    }));
  });
});
