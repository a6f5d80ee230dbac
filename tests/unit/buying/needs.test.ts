import { describe, expect, it } from 'vitest';
import { needsOfMenu, planBuying } from '../../../shared/buying';
import { adults, drinkOf, menuEvent, menuOf, recipeOf } from '../menu/make-menu';

describe('needs of the menu', () => {
  it('are the scaled lines of every dish, but not of brewed drinks', () => {
    const event = menuEvent([recipeOf('rice', 'grain'), drinkOf('tea', true, true)], [adults(10)]);
    const needs = needsOfMenu(event, menuOf(event));
    expect(needs.map((n) => [n.ingredient, n.amount.amount.toString(), n.amount.unit, n.origin])).toEqual([['basmati-rice', '750', 'g', 'd-rice']]);
    expect(planBuying(event, needs).lines[0]?.need.amount.toString()).toBe('0.75');
  });

  it('are none without guests', () => {
    const event = menuEvent([recipeOf('rice', 'grain')], []);
    expect(needsOfMenu(event, menuOf(event))).toEqual([]);
    expect(planBuying(event, [])).toEqual({ lines: [], sections: [], cost: null, costFigure: null, unpriced: 0, shoppers: [], ownThings: [], borrowed: [], unknown: [], notCounted: [] });
  });

  it('name the dish in the working', () => {
    const event = menuEvent([recipeOf('rice', 'grain', { name: 'Rice of the day' })], [adults(10)]);
    const [first] = planBuying(event, needsOfMenu(event, menuOf(event))).lines;
    expect(first?.needFigure.working().terms[0]?.label).toEqual({ text: 'Rice of the day' });
  });
});
