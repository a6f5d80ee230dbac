import { describe, expect, it } from 'vitest';
import { listFor, ownKey } from '../../../shared/buying';
import { ruleIds } from '../../../shared/figure';
import { faultsOf } from '../menu/make-menu';
import { buy, line, needOf } from './make-buying';

const own = (more: Readonly<Record<string, unknown>> = {}) => ({ id: 'own-1', name: 'Candles', amount: { amount: '7', unit: 'piece' }, ...more });

describe('own lines', () => {
  it('are bought exactly as written, in their section, with their day', () => {
    const l = line(buy([], { shopping: { ownLines: [own({ section: 'bread', when: '2026-12-10' })] } }), 'own-1');
    expect([l.key, l.kind, l.name, l.section, l.when, l.buy.amount.toString(), l.packs.length, l.origins]).toEqual([ownKey('own-1'), 'own', 'Candles', 'bread', '2026-12-10', '7', 1, []]);
    expect([l.needFigure, l.buyFigure].flatMap((f) => faultsOf(f, ruleIds))).toEqual([]);
  });
  it('stand under elsewhere when the shop has no such section', () => expect(line(buy([], { shopping: { ownLines: [own({ section: 'harbour' })] } }), 'own-1').section).toBe('other'));
  it('take marks and prices, and never mix with a food of the same id', () => {
    const plan = buy([needOf('salt', 100, 'g')], {
      prices: [{ ingredient: 'own-1', price: '2.50', per: { amount: '1', unit: 'piece' } }],
      shopping: { ownLines: [own(), own({ id: 'salt', name: 'Salt stone' })], marks: [{ line: 'own/own-1', bought: { amount: '3', unit: 'piece' } }] },
    });
    expect([line(plan, 'own-1').buy.amount.toString(), line(plan, 'own-1').cost]).toEqual(['4', '10.00']);
    expect(plan.lines.map((l) => l.key).toSorted()).toEqual(['own/own-1', 'own/salt', 'salt']);
    expect(plan.unknown).toEqual([]);
  });
});

describe('shoppers', () => {
  const people = [{ id: 'runner', name: 'Runner', roles: ['runner'], from: 0, to: 1000 }];
  const needs = [needOf('carrot', 1, 'kg'), needOf('onion', 1, 'kg'), needOf('salt', 1, 'kg'), needOf('milk-whole', 1, 'L')];
  const plan = buy(needs, { people, shopping: { shoppers: [{ section: 'vegetables', who: 'runner' }, { line: 'onion', who: 'Aunt next door' }, { line: 'milk-whole', who: 'runner' }], marks: [{ line: 'carrot', later: true }] } });

  it('have a section, and lines in spite of it; a helper goes by name', () => {
    expect(plan.lines.map((l) => [l.ingredient, l.shopper])).toEqual([['carrot', 'Runner'], ['onion', 'Aunt next door'], ['milk-whole', 'Runner'], ['salt', null]]);
    expect(plan.shoppers).toEqual(['Runner', 'Aunt next door']);
  });
  it('walk with their own lines; everybody\u2019s lists together are the whole list', () => {
    const keys = (who?: string | null): string[] => {
      const list = listFor(plan, who);
      return [...list.sections.flatMap((s) => s.lines), ...list.later].map((l) => l.key);
    };
    expect(listFor(plan, 'Runner').sections.map((s) => s.section)).toEqual(['dairy']);
    expect(listFor(plan, 'Runner').later.map((l) => l.key)).toEqual(['carrot']);
    expect([...plan.shoppers.flatMap((who) => keys(who)), ...keys(null)].toSorted()).toEqual(keys().toSorted());
  });
});

describe('what is borrowed', () => {
  it('stands beside the list and costs nothing', () => {
    const plan = buy([], { shopping: { borrowed: [{ id: 'a', name: 'Chairs', count: 24, from: 'Hall' }] } });
    expect(plan.borrowed).toEqual([{ id: 'a', name: 'Chairs', count: 24, from: 'Hall', here: false, returned: false }]);
    expect([plan.lines, plan.cost]).toEqual([[], null]);
  });
});
