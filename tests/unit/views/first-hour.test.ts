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

  it('is never cut: the first that fits of any list', () => {
    fc.assert(fc.property(fc.array(fc.string({ minLength: 1, maxLength: 60 })), fc.integer({ min: 0, max: 500 }), (labels, width) => {
      const fit = labels.filter((text) => text.length * 6.8 <= width);
      expect(fittingLabel(labels, width)).toBe(fit[0] ?? null);
    }));
  });
});
