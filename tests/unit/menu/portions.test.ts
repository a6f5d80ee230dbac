import { describe, expect, it } from 'vitest';
import { planGuests } from '../../../shared/guests';
import { planMenu } from '../../../shared/menu';
import { adults, dish, drinkOf, menuEvent, menuOf, piecesOf, recipeOf } from './make-menu';

describe('portions of food', () => {
  it('gives an adult the portion of the role for a stay of 90 minutes', () => {
    const menu = menuOf(menuEvent([piecesOf('frit', 'friedSnack'), recipeOf('rice', 'grain')], [adults(10)]));
    expect(dish(menu, 'd-frit').perAdult.value).toBe(5);
    expect(dish(menu, 'd-frit').servedAs).toBe('piece');
    expect(dish(menu, 'd-frit').portions.value).toBe(50);
    expect(dish(menu, 'd-frit').total).toEqual({ amount: expect.anything(), unit: 'piece' });
    expect(dish(menu, 'd-frit').total.amount.toString()).toBe('50');
    expect(dish(menu, 'd-rice').portions.value).toBe(10);
    // 10 × 150 g against a yield of 1000 g.
    expect(dish(menu, 'd-rice').total.amount.toString()).toBe('1500');
    expect(dish(menu, 'd-rice').factor).toBe(1.5);
    expect(dish(menu, 'd-rice').lines[0]?.amount.amount.toString()).toBe('750');
  });

  it('shares one appetite among similar dishes: two at 0.65, three at 0.5', () => {
    const two = menuOf(menuEvent([piecesOf('a', 'friedSnack'), piecesOf('b', 'friedSnack')], [adults(20)]));
    expect(dish(two, 'd-a').perAdult.value).toBeCloseTo(3.25, 12);
    const three = menuOf(menuEvent(['a', 'b', 'c'].map((id) => piecesOf(id, 'friedSnack')), [adults(20)]));
    expect(three.dishes.map((d) => d.portions.value)).toEqual([50, 50, 50]);
  });

  it('does not share between different kinds, nor with a dish made in a fixed number', () => {
    const recipes = [recipeOf('rice', 'grain'), recipeOf('dal', 'pulse'), recipeOf('stock', 'grain')];
    const menu = menuOf(menuEvent(recipes, [adults(10)], {}, [
      { id: 'd-rice', recipe: 'rice' }, { id: 'd-dal', recipe: 'dal' },
      { id: 'd-stock', recipe: 'stock', served: { kind: 'fixed', at: 700, portions: 12 } },
    ]));
    expect(dish(menu, 'd-rice').perAdult.value).toBe(1);
    expect(dish(menu, 'd-dal').perAdult.value).toBe(1);
    expect(dish(menu, 'd-stock').portions.value).toBe(12);
    // Cut as the recipe says: 12 × 1000 g / 10.
    expect(dish(menu, 'd-stock').total.amount.toString()).toBe('1200');
    expect(dish(menu, 'd-stock').demand).toEqual({ fromMinute: 700, values: [12] });
  });

  it('lets a typed portion in another measure leave the appetite alone: milk by the millilitre beside chutney by weight', () => {
    const milk = recipeOf('milk', 'condiment', { yield: { amount: { amount: '1', unit: 'L' }, portions: 40 } });
    const chutney = (portion: Record<string, unknown>) => dish(menuOf(menuEvent([recipeOf('chutney', 'condiment'), milk], [adults(10)], {}, [{ id: 'c', recipe: 'chutney' }, { id: 'm', recipe: 'milk', ...portion }])), 'c').perAdult.value;
    expect(chutney({ portion: { amount: '30', unit: 'ml' } })).toBe(1);
    expect(chutney({})).toBe(0.65);
  });

  it('takes a typed portion as it is and multiplies by the take-up', () => {
    const recipes = [piecesOf('a', 'friedSnack'), piecesOf('b', 'friedSnack'), recipeOf('rice', 'grain')];
    const menu = menuOf(menuEvent(recipes, [adults(10)], {}, [
      { id: 'd-a', recipe: 'a', portion: { amount: '6', unit: 'piece' }, takeUp: 0.5 }, { id: 'd-b', recipe: 'b' },
      { id: 'd-rice', recipe: 'rice', portion: { amount: '0.2', unit: 'kg' } },
    ]));
    expect(dish(menu, 'd-a').perAdult.value).toBe(3);
    expect(dish(menu, 'd-b').perAdult.value).toBeCloseTo(3.25, 12);
    expect(dish(menu, 'd-rice').total.amount.toString()).toBe('2000');
  });

  it('puts the household\u2019s own portion before the table', () => {
    const house = { houseFigures: [{ figure: 'portion.friedSnack', value: 7, unit: 'piece', why: 'counted last year' }] };
    const menu = menuOf(menuEvent([piecesOf('a', 'friedSnack')], [adults(10)], house));
    expect(dish(menu, 'd-a').portions.value).toBe(70);
    expect(dish(menu, 'd-a').perAdult.working().terms[0]?.origin).toEqual({ kind: 'house', row: 'portion.friedSnack', why: 'counted last year' });
  });

  it('counts children by age: 3 at 0.45, 5 at 0.58, 8 at 0.75, 15 as an adult, babies not at all', () => {
    const counts = { under1: 4, age1to3: 2, age4to6: 2, age7to9: 4, age13to17: 1, adult: 10, olderAdult: 10 };
    const menu = menuOf(menuEvent([piecesOf('a', 'friedSnack')], [adults(0, { counts })]));
    // 2 × 0.45 + 2 × 0.58 + 4 × 0.75 + 1 + 10 + 10 × 0.9 = 25.06; × 5 = 125.3
    expect(dish(menu, 'd-a').portions.value).toBe(126);
    expect(dish(menu, 'd-a').perBand).toMatchObject({ under1: 0, age7to9: 3.75, adult: 5, olderAdult: 4.5 });
  });

  it.each([[30, 0.35], [60, 0.7], [75, 0.85], [90, 1], [150, 1.2], [270, 1.6], [600, 1.6]])('a stay of %i min eats %f of a portion', (stay, share) => {
    const menu = menuOf(menuEvent([piecesOf('a', 'friedSnack')], [adults(1000, { stay: { shortest: stay, usual: stay, longest: stay } })]));
    expect(dish(menu, 'd-a').portions.value).toBe(Math.ceil(1000 * 5 * share - 1e-9));
  });

  it('serves a meal at a set time to those who are there, once', () => {
    const dishes = [{ id: 'd-rice', recipe: 'rice', served: { kind: 'between', from: 750, to: 810 } }];
    const long = { shortest: 300, usual: 300, longest: 300 };
    const waves = [adults(20, { from: 700, to: 720, stay: long }), adults(20, { from: 900, to: 930, stay: long }), adults(20, { from: 780, to: 840, stay: long })];
    const plan = dish(menuOf(menuEvent([recipeOf('rice', 'grain')], waves, {}, dishes)), 'd-rice');
    // The first wave is there, the second comes later, half of the third comes in time.
    expect(plan.byWave.map((w) => w.portions)).toEqual([20, 0, 10]);
    expect(plan.firstServed).toBeGreaterThanOrEqual(750);
    expect(plan.lastServed).toBeLessThan(810);
  });

  it('plans nothing without guests and leaves out a dish without its recipe', () => {
    const event = menuEvent([recipeOf('rice', 'grain'), drinkOf('tea', true, true)], [], {}, [{ id: 'd-rice', recipe: 'rice' }, { id: 'd-tea', recipe: 'tea' }, { id: 'x', recipe: 'gone' }]);
    const menu = planMenu(event, planGuests(event));
    expect(menu.dishes.map((d) => d.id)).toEqual(['d-rice', 'd-tea']);
    expect(menu.dishes.map((d) => d.portions.value)).toEqual([0, 0]);
    expect(dish(menu, 'd-rice').firstServed).toBeNull();
    expect(dish(menu, 'd-rice').lines[0]?.amount.amount.toString()).toBe('0');
  });
});
