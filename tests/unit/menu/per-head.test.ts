import { describe, expect, it } from 'vitest';
import { recompute } from '../../../shared/figure';
import { guestsRules } from '../../../shared/figure/register/guests';
import { menuRules } from '../../../shared/figure/register/menu';
import { planGuests } from '../../../shared/guests';
import { perHead, planMenu } from '../../../shared/menu';
import { adults, drinkOf, faultsOf, menuEvent, piecesOf, recipeOf } from './make-menu';

const headOf = (recipes: Parameters<typeof menuEvent>[0], more: object = {}) => {
  const event = menuEvent(recipes, [adults(20)], { ...more });
  return perHead(event, planMenu(event, planGuests(event)));
};
const grain = recipeOf('rice', 'grain');
const pulse = recipeOf('dal', 'pulse');
const tea = drinkOf('tea', true, true);

const portion = (amount: string) => ({ menu: { dishes: [{ id: 'a', recipe: 'rice', portion: { amount, unit: 'g' } }] } });

/** Ids of the notices for a portion of so many grams. */
const notices = (amount: string) => { const e = menuEvent([grain], [adults(20)], portion(amount)); return perHead(e, planMenu(e, planGuests(e))).notices.map((n) => n.id); };

describe('the whole menu for one adult', () => {
  it('adds up grams of every dish and millilitres of every drink, opened down to them', () => {
    const { food, drinks, notices } = headOf([grain, pulse, tea]);
    expect(food?.value).toBeGreaterThan(180);
    expect(drinks?.value).toBeGreaterThan(190);
    expect(notices).toEqual([]);
    for (const f of [food, drinks]) {
      if (f === null) throw new Error('no figure');
      expect(recompute(f.working())).toBeCloseTo(f.value, 9);
      expect(faultsOf(f, [...menuRules, ...guestsRules])).toEqual([]);
    }
  });

  it('says when it is far below the published ranges, and far above', () => {
    expect(notices('179')).toEqual(['menu.head.foodLow']);
    expect(notices('181')).toEqual([]);
    expect(notices('1099')).toEqual([]);
    expect(notices('1101')).toEqual(['menu.head.foodHigh']);
  });

  it('the household may set the range itself', () => {
    expect(headOf([grain, pulse], { houseFigures: [{ figure: 'head.foodHigh', value: 200, why: 'x' }] }).notices.map((n) => n.id)).toEqual(['menu.head.foodHigh']);
  });

  it('weighs pieces by what goes into them, and leaves out what cannot be weighed', () => {
    const bread = piecesOf('bread', 'bread');
    const { food } = headOf([bread]);
    // 500 g of ingredients make 50 pieces: 10 g each.
    expect(food?.working().terms.find((x) => x.key.startsWith('size'))?.value).toBe(10);
    const unknown = piecesOf('odd', 'bread', { ingredients: [{ ingredient: 'moon-dust', amount: { amount: '3', unit: 'piece' } }] });
    expect(headOf([unknown]).food).toBeNull();
  });

  it('nothing on the menu is nothing to say', () => expect(headOf([])).toEqual({ food: null, drinks: null, notices: [] }));
});
