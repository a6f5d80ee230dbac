import { describe, expect, it } from 'vitest';
import { checkEvent } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { plainEvent } from './plain-kitchen';
import { starter, starterShelf } from './starter';

const sizes = [12, 120] as const;
const cases = starterShelf.recipes.flatMap((r) => sizes.map((n) => [r.id, n, r] as const));

describe('each recipe of the starter shelf, planned alone in a plain kitchen', () => {
  it.each(cases)('%s for %i portions: no warning about itself, nothing unknown, no problem', (_id, n, r) => {
    const event = plainEvent(r, n);
    expect(checkEvent(event)).toEqual([]);
    const p = plan(event);
    const [dish] = p.menu.dishes;
    expect(dish?.portions.value).toBeGreaterThanOrEqual(n);
    expect(dish?.portions.value).toBeLessThanOrEqual(r.brewing === undefined ? n : 2 * n);
    expect(p.safety.findings.filter((f) => f.level !== 'caution')).toEqual([]);
    expect(p.buying.unknown).toEqual([]);
    expect(p.buying.lines.some((l) => l.kind === 'food')).toBe(r.role !== 'water'); // the tap is never on the list
    expect([...p.frying.problems, ...p.frying.shortages, ...p.drinks.problems]).toEqual([]);
    expect(p.day.overloads).toEqual([]);
  });

  it.each(starterShelf.recipes.map((r) => [r.id, r] as const))('%s is shopped for in US packs as well', (_id, r) => {
    const event = plainEvent(r, 12);
    const { lines } = plan({ ...event, preferences: { ...event.preferences, units: 'us' } }).buying;
    expect(lines.filter((l) => l.packs.length === 0 && l.larder.amount.lt(l.need.amount)).map((l) => l.ingredient)).toEqual([]);
    expect(lines.filter((l) => l.buy.amount.plus(l.larder.amount).lt(l.need.amount)).map((l) => l.ingredient)).toEqual([]);
  });

  it('would see a fault: kidney beans boiled too short, and an ingredient nobody knows', () => {
    const beans = starter('kidney-bean-pot');
    const short = { ...beans, steps: beans.steps.map((s) => (s.does === 'boil' ? { ...s, passive: { ...s.passive, fixed: 10 } } : s)) };
    expect(plan(plainEvent(short, 12)).safety.findings.map((f) => [f.rule, f.level])).toContainEqual(['PR-01', 'stop']);
    const odd = { ...beans, ingredients: beans.ingredients.map((l) => (l.ingredient === 'paprika' ? { ...l, ingredient: 'moon-dust' } : l)) };
    expect(plan(plainEvent(odd, 12)).buying.unknown.map((u) => u.ingredient)).toEqual(['moon-dust']);
  });
});
