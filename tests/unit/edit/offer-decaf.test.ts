import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { canOfferDecaf, offerDecaf } from '../../../shared/edit';
import { parseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';

const parsed = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
if (!parsed.ok) throw new Error('the demo does not open');
const demo: Event = parsed.event;
const coffee = plan(demo).menu.dishes.find((d) => d.recipe.brewing?.doseIngredient === 'coffee-ground')!;
const offered = (share: number): Event => {
  const answer = offerDecaf(demo, coffee.id, share, 'Coffee, no caffeine');
  if ('problem' in answer) throw new Error('refused');
  return answer.event;
};
const cups = (event: Event): number => plan(event).menu.dishes.filter((d) => d.recipe.brewing?.hot === true).reduce((sum, d) => sum + d.portions.value, 0);

describe('a drink offered without caffeine too', () => {
  it('is a drink of its own with its own grounds; the shares add up to the one before', () => {
    const event = offered(0.25);
    const added = plan(event).menu.dishes.find((d) => d.name === 'Coffee, no caffeine')!;
    expect(added.recipe.brewing).toMatchObject({ caffeinated: false, doseIngredient: 'coffee-ground-decaf' });
    expect(added.recipe.ingredients.some((l) => l.ingredient === 'coffee-ground')).toBe(false);
    const shares = event.menu.dishes.filter((d) => d.id === coffee.id || d.recipe === added.recipe.id).map((d) => d.takeUp);
    expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(demo.menu.dishes.find((d) => d.id === coffee.id)!.takeUp, 12);
  });
  it('leaves the adults about as many hot cups as before', () => {
    // Children who take no caffeine may take the new one: it adds a little, never takes away.
    const [before, after] = [cups(demo), cups(offered(0.25))];
    expect(after).toBeGreaterThanOrEqual(before - 2);
    expect(after).toBeLessThan(before * 1.15);
  });
  it('is bought: grounds without caffeine stand on the list', () => {
    const lines = plan(offered(0.5)).buying.lines.map((l) => l.ingredient);
    expect(lines).toContain('coffee-ground-decaf');
    expect(plan(demo).buying.lines.map((l) => l.ingredient)).not.toContain('coffee-ground-decaf');
  });
  it('is not offered for what has no caffeine, nor twice of itself', () => {
    expect(canOfferDecaf(demo, coffee.id)).toBe(true);
    const without = demo.menu.dishes.filter((d) => demo.recipes.find((r) => r.id === d.recipe)?.brewing?.caffeinated !== true);
    expect(without.length).toBeGreaterThan(0);
    for (const d of without) expect(canOfferDecaf(demo, d.id)).toBe(false);
    expect('problem' in offerDecaf(demo, 'no-such-dish', 0.25, 'x')).toBe(true);
  });
});
