import { describe, expect, it } from 'vitest';
import { firstServing } from '../../../shared/cooking';
import type { Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { mealEvent, recipeOf } from './meal-event';

const empty: Event = { ...mealEvent(), menu: { dishes: [] } };

describe('when a new dish is served', () => {
  it.each(['boiled-rice', 'kidney-bean-pot', 'yoghurt-cucumber-bowl', 'cucumber-tomato-salad', 'bulgur-tomato', 'plain-mash'])('%s at a meal it keeps for, cooked once', (id) => {
    const served = firstServing(empty, recipeOf(id));
    if (served.kind !== 'between') throw new Error(`${id} is served ${served.kind}`);
    expect(served.from).toBeGreaterThanOrEqual(empty.opensAt);
    expect(served.to).toBeLessThanOrEqual(empty.closesAt);
    expect(served.to).toBeGreaterThan(served.from);
    const big = { ...mealEvent({ recipes: [id], pots: [60] }), menu: { dishes: [{ id, recipe: id, takeUp: 1, served }] } };
    expect(plan(big).cooking.dishes.map((d) => d.cookings.length)).toEqual([1]);
  });
  it('with the other dishes of the meal, where there are some', () => {
    const other = { id: 'kidney-bean-pot', recipe: 'kidney-bean-pot', takeUp: 1, served: { kind: 'between', from: 750, to: 800 } } as const;
    expect(firstServing({ ...mealEvent(), menu: { dishes: [other] } }, recipeOf('boiled-rice'))).toEqual({ kind: 'between', from: 750, to: 800 });
  });
  it('all day for what is no meal, and where no guests are known', () => {
    for (const id of ['mint-yoghurt-dip', 'coconut-bites', 'freezer-griddle-cakes']) expect(firstServing(empty, recipeOf(id))).toEqual({ kind: 'throughout' });
    expect(firstServing({ ...empty, guests: { ...empty.guests, waves: [] } }, recipeOf('boiled-rice'))).toEqual({ kind: 'throughout' });
  });
});
