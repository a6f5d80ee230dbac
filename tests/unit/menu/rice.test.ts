import { describe, expect, it } from 'vitest';
import { isRice } from '../../../shared/menu';
import { ingredients } from '../../../shared/reference';
import { adults, dish, drinkOf, menuEvent, menuOf, recipeOf } from './make-menu';

const riceIn = (ingredient: string, more: Readonly<Record<string, unknown>> = {}): boolean =>
  isRice(dish(menuOf(menuEvent([recipeOf('x', 'grain', { ingredients: [{ ingredient, amount: { amount: '500', unit: 'g' }, ...more }] })], [adults(5)])), 'd-x'));

describe('a dish of rice', () => {
  it('is one with grains of rice that the table marks, and with no other food of it', () => {
    const marked = ingredients.filter((food) => riceIn(food.id)).map((food) => food.id).sort();
    expect(marked).toEqual(['basmati-rice', 'brown-rice', 'flattened-rice', 'long-grain-rice', 'medium-grain-rice', 'parboiled-rice']);
  });
  it.each([['arborio-rice', true], ['rice', true], ['licorice', false], ['liquorice', false], ['rice-paper', false], ['price', false]])('of a food the table does not have goes by the last word: %s', (food, isOne) => {
    expect(riceIn(food)).toBe(isOne);
  });
  it.each([['Sushi rice ', true], ['Grandma’s licorice', false]])('goes by what the cook calls it: %s', (called, isOne) => {
    expect(riceIn('own-food', { called })).toBe(isOne);
  });
  it('is none when it is drunk', () => {
    const tea = menuEvent([drinkOf('tea', true, false, { ingredients: [{ ingredient: 'basmati-rice', amount: { amount: '20', unit: 'g' } }] })], [adults(5)]);
    expect(isRice(dish(menuOf(tea), 'd-tea'))).toBe(false);
  });
});
