import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { changeDish } from '../../../shared/edit';
import { amountText } from '../../../shared/measure';
import { ownPortion } from '../../../shared/menu';
import { parseShelf } from '../../../shared/household';
import type { Event, Recipe } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { plainEvent } from '../shelf/plain-kitchen';

const shelf = ((): readonly Recipe[] => {
  const read = parseShelf(readFileSync('assets/app/shelf/starter.brimful-shelf', 'utf8'));
  if (!read.ok) throw new Error('expected the starter shelf');
  return read.shelf.recipes;
})();
const salad = (): Recipe => {
  const found = shelf.find((one) => one.id === 'carrot-lemon-salad');
  if (found === undefined) throw new Error('expected the salad');
  return { ...found, yield: { amount: { amount: '1.2', unit: 'kg' }, portions: 6 } };
};
/** Six portions of 200 g, offered all day to forty. */
const offered = (recipe: Recipe): Event => {
  const event = plainEvent(recipe, 40);
  return { ...event, menu: { ...event.menu, dishes: event.menu.dishes.map((dish) => ({ ...dish, served: { kind: 'throughout' } })) } };
};
const ownOf = (event: Event) => {
  const [dish] = event.menu.dishes;
  if (dish === undefined) throw new Error('expected a dish');
  const recipe = event.recipes.find((one) => one.id === dish.recipe);
  if (recipe === undefined) throw new Error('expected its recipe');
  return { dish, own: ownPortion(event, dish, recipe) };
};

describe("a recipe's own portion", () => {
  it('is told where a dish is planned with another, by its place in the meal', () => {
    const { own } = ownOf(offered(salad()));
    expect(own === null ? null : [amountText(own.recipe), amountText(own.planned)]).toEqual([{ amount: '0.2', unit: 'kg' }, { amount: '0.07', unit: 'kg' }]);
  });

  it('is taken by one edit, then planned, and told no more', () => {
    const event = offered(salad());
    const { dish, own } = ownOf(event);
    if (own === null) throw new Error('expected two portions');
    const result = changeDish(event, dish.id, { portion: { ...amountText(own.recipe) } });
    if ('problem' in result) throw new Error(result.problem.id);
    expect(ownOf(result.event).own).toBeNull();
    const [before, after] = [event, result.event].map((one) => plan(one).menu.dishes[0]);
    const size = (made: typeof before): number => (made === undefined ? 0 : made.total.amount.div(made.portions.value).toNumber());
    expect([size(before), size(after)].map((kg) => Math.round(kg * 1000))).toEqual([70, 200]);
  });

  it('is not told apart where it is the one planned: alike, typed, a fixed number, pieces, cups', () => {
    expect(ownOf(offered({ ...salad(), yield: { amount: { amount: '0.72', unit: 'kg' }, portions: 10 } })).own).toBeNull();
    const event = offered(salad());
    expect(ownOf({ ...event, menu: { ...event.menu, dishes: event.menu.dishes.map((dish) => ({ ...dish, served: { kind: 'fixed', at: 720, portions: 6 } })) } }).own).toBeNull();
    for (const id of ['greens-fritters', 'black-tea']) expect(ownOf(offered(shelf.find((one) => one.id === id) ?? salad())).own).toBeNull();
  });
});
