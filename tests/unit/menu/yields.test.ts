import { describe, expect, it } from 'vitest';
import { adults, dish, menuEvent, menuOf, recipeOf } from './make-menu';

const yields = (amount: string, unit: string, portions = 10) => ({ yield: { amount: { amount, unit }, portions } });

describe('recipes that yield in other units', () => {
  it.each([
    // 10 adults: 150 g of rice, 150 ml of pulses, 225 ml of rice by volume.
    ['grain', '2', 'kg', 1.5, 0.75], ['grain', '10', 'L', 2.25, 0.225], ['pulse', '1500', 'ml', 1500, 1], ['pulse', '3', 'kg', 1.5, 0.5],
  ])('%s in %s %s', (role, amount, unit, total, factor) => {
    const plan = dish(menuOf(menuEvent([recipeOf('r', role, yields(amount, unit))], [adults(10)])), 'd-r');
    expect(plan.total.unit).toBe(unit);
    expect(plan.total.amount.toNumber()).toBeCloseTo(total, 10);
    expect(plan.factor).toBeCloseTo(factor, 10);
    expect(plan.totalFigure.unit).toBe(unit);
  });

  it('US units: a pound of rice is the same rice', () => {
    const kilo = dish(menuOf(menuEvent([recipeOf('r', 'grain', yields('1', 'kg'))], [adults(40)])), 'd-r');
    const pound = dish(menuOf(menuEvent([recipeOf('r', 'grain', yields('1', 'lb'))], [adults(40)])), 'd-r');
    expect(pound.total.amount.times('0.45359237').toNumber()).toBeCloseTo(kilo.total.amount.toNumber(), 9);
  });

  it('a portion typed by volume for food weighed out takes a millilitre as a gram', () => {
    const menu = menuOf(menuEvent([recipeOf('r', 'pulse', yields('3', 'kg'))], [adults(10)], {}, [{ id: 'd-r', recipe: 'r', portion: { amount: '200', unit: 'ml' } }]));
    expect(dish(menu, 'd-r').total.amount.toString()).toBe('2');
  });

  it('what the role has no portion for is cut as the recipe says', () => {
    const counted = dish(menuOf(menuEvent([recipeOf('r', 'salad', yields('24', 'piece', 12))], [adults(10)])), 'd-r');
    expect([counted.servedAs, counted.total.amount.toString()]).toEqual(['portion', '20']);
    expect(counted.totalFigure.working().terms[1]?.origin).toEqual({ kind: 'recipe', recipe: 'r' });
  });

  it('sweets in pieces: one and a half for an adult', () => {
    const plan = dish(menuOf(menuEvent([recipeOf('r', 'sweet', yields('20', 'piece'))], [adults(10)])), 'd-r');
    expect([plan.servedAs, plan.portions.value, plan.total.amount.toString()]).toEqual(['portion', 10, '15']);
  });

  it('bread weighed out is served in portions, counted bread by the piece', () => {
    const weighed = dish(menuOf(menuEvent([recipeOf('r', 'bread', yields('1', 'kg'))], [adults(10)])), 'd-r');
    expect([weighed.servedAs, weighed.total.amount.toString()]).toEqual(['portion', '0.9']);
    const counted = dish(menuOf(menuEvent([recipeOf('r', 'bread', yields('20', 'piece'))], [adults(10)])), 'd-r');
    expect([counted.servedAs, counted.portions.value]).toEqual(['piece', 20]);
  });
});
