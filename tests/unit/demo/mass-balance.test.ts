import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../shared/event';
import { balance, gramsOut } from '../shelf/balance';
import { demo, demoNames } from './demo';

const recipes = demoNames.flatMap((n) => demo(n).recipes.map((r) => [n, r.id, r] as const));

describe('what goes in comes out', () => {
  it.each(recipes)('%s: %s agrees within 5 %%', (_demo, _id, r) => {
    expect(balance(r)).toBeGreaterThan(0.95);
    expect(balance(r)).toBeLessThan(1.05);
  });

  it('finds a recipe that promises too much', () => {
    const rice = demo('lantern-evening').recipes.find((r) => r.id === 'rice');
    if (rice === undefined) throw new Error('the demo has rice');
    const boastful: Recipe = { ...rice, yield: { ...rice.yield, amount: { amount: '3100', unit: 'g' } } };
    expect(balance(boastful)).toBeGreaterThan(1.05);
  });

  it.each(recipes.filter(([, , r]) => r.yield.amount.unit !== 'piece'))('%s: %s has portions of a sensible size', (_demo, _id, r) => {
    const portion = gramsOut(r) / r.yield.portions;
    expect(portion).toBeGreaterThan(15);
    expect(portion).toBeLessThan(350);
  });
});
