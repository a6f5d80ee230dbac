import { describe, expect, it } from 'vitest';
import { drinkEvent, drinksOf } from './drink-event';

describe('drinking water', () => {
  it('is advised while guests are invited to a menu without it', () => expect(drinksOf(drinkEvent()).drinks.advice.map((m) => m.id)).toEqual(['drinks.advice.noWater']));
  it('is not spoken of once it is on the menu', () => expect(drinksOf(drinkEvent({ water: true })).drinks.advice).toEqual([]));
  it('nor while nobody is invited, or nothing is on the menu', () => {
    expect(drinksOf(drinkEvent({ adults: 0 })).drinks.advice).toEqual([]);
    expect(drinksOf({ ...drinkEvent(), menu: { ...drinkEvent().menu, dishes: [] } }).drinks.advice).toEqual([]);
  });
});
