import { describe, expect, it } from 'vitest';
import { adults, dish, drinkOf, menuEvent, menuOf } from './make-menu';

const stay = (minutes: number) => ({ stay: { shortest: minutes, usual: minutes, longest: minutes } });

describe('drinks', () => {
  it.each([[30, 1], [60, 2], [120, 3], [180, 4]])('a stay of %i min takes %i cups', (minutes, cups) => {
    const menu = menuOf(menuEvent([drinkOf('tea', true, true)], [adults(10, stay(minutes))]));
    expect(dish(menu, 'd-tea').portions.value).toBe(10 * cups);
    expect(dish(menu, 'd-tea').perAdult.value).toBeCloseTo(cups, 12);
    // Cups of 150 ml.
    expect(dish(menu, 'd-tea').total.amount.toNumber()).toBeCloseTo(1.5 * cups, 12);
  });

  it('shares the cups of a person by take-up; a take-up below 1 in all leaves the rest undrunk', () => {
    const recipes = [drinkOf('tea', true, true), drinkOf('water', false, false)];
    const both = menuOf(menuEvent(recipes, [adults(30, stay(60))], {}, [{ id: 'd-tea', recipe: 'tea', takeUp: 0.5 }, { id: 'd-water', recipe: 'water', takeUp: 1 }]));
    expect(both.dishes.map((d) => d.portions.value)).toEqual([20, 40]);
    const few = menuOf(menuEvent(recipes, [adults(30, stay(60))], {}, [{ id: 'd-tea', recipe: 'tea', takeUp: 0.5 }, { id: 'd-water', recipe: 'water', takeUp: 0.25 }]));
    expect(few.dishes.map((d) => d.portions.value)).toEqual([30, 15]);
  });

  it('gives children under 13 no tea or coffee, and what they drink comes from the cold drinks', () => {
    const recipes = [drinkOf('tea', true, true), drinkOf('water', false, false)];
    const menu = menuOf(menuEvent(recipes, [adults(0, { counts: { age7to9: 40 }, ...stay(60) })]));
    expect(dish(menu, 'd-tea').portions.value).toBe(0);
    expect(dish(menu, 'd-tea').perBand.age7to9).toBe(0);
    // 40 × 2 cups × 0.75.
    expect(dish(menu, 'd-water').portions.value).toBe(60);
  });

  it('gives older children a little of a hot drink without caffeine', () => {
    const menu = menuOf(menuEvent([drinkOf('cocoa', true, false)], [adults(0, { counts: { age10to12: 50 }, ...stay(60) })]));
    expect(dish(menu, 'd-cocoa').portions.value).toBe(10);
  });

  it('never lets a strong liking of tea make the cold drinks negative', () => {
    const recipes = [drinkOf('tea', true, true), drinkOf('water', false, false)];
    const menu = menuOf(menuEvent(recipes, [adults(0, { counts: { olderAdult: 20 }, ...stay(60) })], {}, [{ id: 'd-tea', recipe: 'tea', takeUp: 1 }, { id: 'd-water', recipe: 'water', takeUp: 0.05 }]));
    expect(dish(menu, 'd-water').portions.value).toBe(0);
    expect(dish(menu, 'd-tea').portions.value).toBeGreaterThan(40);
  });

  it('takes a typed portion as the size of the cup', () => {
    const menu = menuOf(menuEvent([drinkOf('tea', true, true)], [adults(10, stay(60))], {}, [{ id: 'd-tea', recipe: 'tea', portion: { amount: '250', unit: 'ml' } }]));
    expect(dish(menu, 'd-tea').portions.value).toBe(20);
    expect(dish(menu, 'd-tea').total.amount.toString()).toBe('5');
    expect(dish(menu, 'd-tea').recipe.brewing?.cupMl).toBe(250);
  });
});
