import { describe, expect, it } from 'vitest';
import * as edit from '../../../shared/edit';
import { formatsFor, newEvent, serialiseEvent, type Event } from '../../../shared/event';
import { sayMessage } from '../../../shared/words';

const start = newEvent({ id: 'a', title: 'Party', day: '2026-12-12' });
const formats = formatsFor(start.preferences, start.day);
const done = (result: edit.EditResult): Event => {
  if ('problem' in result) throw new Error(`${result.path}: ${sayMessage(formats, result.problem)}`);
  return result.event;
};
const nameOf = (result: edit.EditResult): string => sayMessage(formats, 'problem' in result ? result.problem : result.name).replaceAll('\u00a0', ' ');
const pathOf = (result: edit.EditResult): string => ('problem' in result ? result.path : 'done');
const candles = { id: 'own-1', name: 'Candles', amount: { amount: '24', unit: 'piece' as const } };
const salt = { key: 'salt', name: 'Salt' };
const kg = (amount: string) => ({ amount, unit: 'kg' });

describe('own lines of the shopping list', () => {
  it('come with their price, change, and go with all that holds to them', () => {
    const made = done(edit.addOwnLine(start, { ...candles, section: 'bread', when: '2026-12-10' }, '18.50'));
    expect(made.shopping?.ownLines).toEqual([{ ...candles, section: 'bread', when: '2026-12-10' }]);
    expect(made.prices).toEqual([{ ingredient: 'own-1', price: '18.50', per: candles.amount }]);
    const marked = done(edit.setShopper(done(edit.markBought(made, { key: 'own/own-1', name: 'Candles' }, { amount: '4', unit: 'piece' })), { line: 'own/own-1', name: 'Candles' }, 'Aunt'));
    const gone = done(edit.removeOwnLine(marked, 'own-1'));
    expect([gone.shopping?.ownLines, gone.shopping?.marks, gone.shopping?.shoppers, gone.prices]).toEqual([[], [], [], []]);
    expect(Object.keys(done(edit.changeOwnLine(made, 'own-1', { when: undefined })).shopping?.ownLines[0] ?? {})).not.toContain('when');
  });
  it('are refused beside the field when they are not sound', () => {
    expect(pathOf(edit.addOwnLine(start, { ...candles, name: '  ' }))).toBe('shopping.ownLines[0].name');
    expect(pathOf(edit.addOwnLine(start, { ...candles, amount: { amount: '-1', unit: 'piece' } }))).toBe('shopping.ownLines[0].amount.amount');
    expect(pathOf(edit.addOwnLine(start, candles, 'much'))).toBe('prices[0].price');
    expect(pathOf(edit.addOwnLine(done(edit.addOwnLine(start, candles)), candles))).toBe('shopping.ownLines[1].id');
    expect(nameOf(edit.addOwnLine(start, candles))).toBe('line Candles added');
  });
});

describe('marks', () => {
  it('note what is bought and what was asked, and go when they say nothing', () => {
    const bought = done(edit.markBought(start, salt, kg('1'), kg('2')));
    expect(bought.shopping?.marks).toEqual([{ line: 'salt', bought: kg('1'), asked: kg('2'), later: false }]);
    const later = done(edit.markLater(bought, salt, true));
    expect(later.shopping?.marks).toEqual([{ line: 'salt', bought: kg('1'), asked: kg('2'), later: true }]);
    expect(done(edit.markBought(later, salt, null)).shopping?.marks).toEqual([{ line: 'salt', later: true }]);
    expect(done(edit.markLater(done(edit.markBought(later, salt, null)), salt, false)).shopping?.marks).toEqual([]);
    expect([nameOf(edit.markBought(start, salt, kg('1'))), nameOf(edit.markBought(start, salt, null)), nameOf(edit.markLater(start, salt, true))]).toEqual(['Salt: bought', 'Salt: not bought', 'Salt: left for later']);
  });
  it('are refused an amount nobody can read', () => {
    expect(pathOf(edit.markBought(start, salt, kg('lots')))).toBe('shopping.marks[0].bought.amount');
    expect(pathOf(edit.markBought(start, salt, { amount: '1', unit: 'bag' }))).toBe('shopping.marks[0].bought.unit');
  });
});

describe('shoppers, own things, water, what is borrowed', () => {
  it('name a helper by id or anybody by name, for a section and for a line', () => {
    const id = start.people[0]?.id ?? '';
    const split = done(edit.setShopper(done(edit.setShopper(start, { section: 'bread', name: 'Bread' }, id)), { line: 'salt', name: 'Salt' }, 'Aunt'));
    expect(split.shopping?.shoppers).toEqual([{ section: 'bread', who: id }, { line: 'salt', who: 'Aunt' }]);
    expect(nameOf(edit.setShopper(start, { section: 'bread', name: 'Bread' }, id))).toBe(`Bread: ${start.people[0]?.name} buys it`);
    expect(done(edit.setShopper(split, { section: 'bread', name: 'Bread' }, null)).shopping?.shoppers).toEqual([{ line: 'salt', who: 'Aunt' }]);
    expect(pathOf(edit.setShopper(start, { line: 'salt', name: 'Salt' }, '   '))).toBe('shopping.shoppers[0].who');
  });
  it('switch own things on and off, of the table only', () => {
    const own = done(edit.setOwnThing(done(edit.setOwnThing(start, 'plates', true)), 'plates', true));
    expect(own.shopping?.ownThings).toEqual(['plates']);
    expect(done(edit.setOwnThing(own, 'plates', false)).shopping?.ownThings).toEqual([]);
    expect(pathOf(edit.setOwnThing(start, 'silver', true))).toBe('shopping.ownThings');
    expect(done(edit.setCarriesWater(start, true)).shopping?.carriesWater).toBe(true);
  });
  it('borrow, change and give back', () => {
    const lent = done(edit.addBorrowed(start, { id: 'lent-1', name: 'Chairs' }));
    expect(lent.shopping?.borrowed).toEqual([{ id: 'lent-1', name: 'Chairs', count: 1, from: '', here: false, returned: false }]);
    const back = done(edit.changeBorrowed(lent, 'lent-1', { count: 24, from: 'Hall', here: true, returned: true }));
    expect(back.shopping?.borrowed[0]).toMatchObject({ count: 24, from: 'Hall', returned: true });
    expect(pathOf(edit.changeBorrowed(lent, 'lent-1', { count: 0 }))).toBe('shopping.borrowed[0].count');
    expect(done(edit.removeBorrowed(back, 'lent-1')).shopping?.borrowed).toEqual([]);
    expect(nameOf(edit.removeBorrowed(lent, 'lent-1'))).toBe('borrowed thing Chairs taken out');
  });
});

describe('substitutions', () => {
  const dal = done(edit.addDish(done(edit.addRecipe(start, { id: 'dal', name: 'Dal', role: 'pulse', yield: { amount: { amount: '1', unit: 'kg' }, portions: 4 }, ingredients: [{ ingredient: 'ghee', amount: { amount: '50', unit: 'g' } }] })), { id: 'dal', recipe: 'dal' }));
  it('are one step, named, and put back exactly', () => {
    const result = edit.substitute(dal, 'ghee.butter');
    expect(nameOf(result)).toBe('Butter in place of Clarified butter');
    const next = done(result);
    expect(next.recipes[0]?.ingredients[0]).toMatchObject({ ingredient: 'butter', amount: { amount: '60', unit: 'g' }, insteadOf: { ingredient: 'ghee', amount: { amount: '50', unit: 'g' } } });
    expect(serialiseEvent(done(edit.putBackIngredient(next, { now: 'butter', before: 'ghee' })))).toBe(serialiseEvent(dal));
  });
  it('are refused when the table has none, or nothing stands in for anything', () => {
    expect(pathOf(edit.substitute(dal, 'ghee.air'))).toBe('recipes');
    expect(pathOf(edit.putBackIngredient(dal, { now: 'butter', before: 'ghee' }))).toBe('recipes');
  });
});
