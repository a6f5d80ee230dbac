import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleIds } from '../../../shared/figure';
import { amountText, convertFood, type UnitId } from '../../../shared/measure';
import { ingredient, ingredients, sourceTitle } from '../../../shared/reference';
import { isWordId } from '../../../shared/words';
import { allFigures, faultsOf } from '../menu/make-menu';
import { buy, line, needOf } from './make-buying';

const bought = ingredients.filter((i) => i.section !== 'tap');
const units: readonly UnitId[] = ['g', 'kg', 'oz', 'lb', 'ml', 'L', 'cup', 'tbsp', 'tsp', 'piece', 'clove'];
const need = fc.tuple(fc.constantFrom(...bought.map((i) => i.id)), fc.integer({ min: 1, max: 3_000_000 }), fc.constantFrom(...units), fc.constantFrom('a', 'b', 'c'))
  .map(([id, n, unit, origin]) => needOf(id, new Big(n).div(unit === 'g' || unit === 'ml' ? 100 : 100_000).toFixed(), unit, origin));
const needs = fc.array(need, { minLength: 1, maxLength: 12 });
const system = fc.constantFrom('metric', 'us');

const held = (ingredient: string, amount: string, unit: string) => ({ ingredient, amount: { amount, unit } });

const packs = (id: string, amount: string, share: number) => line(buy([needOf(id, amount, 'kg')], { houseFigures: [{ figure: 'buy.extraForFewerPacks', value: share, why: 'test' }] }), id).packs.map((p) => [p.count, p.size.amount.toString()]);

describe('shopping lines', () => {
  it('buy at least what is needed and not in the larder, in whole packs; origins add up exactly, in files too', () => {
    fc.assert(fc.property(needs, system, fc.integer({ min: 0, max: 500 }), (list, s, grams) => {
      const larder = [{ ingredient: list[0]?.ingredient, amount: { amount: String(grams), unit: 'g' } }];
      for (const l of buy(list, { preferences: { units: s }, larder }).lines) {
        expect(l.buy.amount.plus(l.larder.amount).gte(l.need.amount)).toBe(true);
        const packed = l.packs.reduce((sum, p) => sum.plus(p.size.amount.times(p.count)), new Big(0));
        expect(packed.eq(l.buy.amount)).toBe(true);
        const added = l.origins.reduce((sum, o) => sum.plus(o.amount.amount), new Big(0));
        expect(added.eq(l.need.amount)).toBe(true);
        const written = l.origins.reduce((sum, o) => sum.plus(amountText(o.amount).amount), new Big(0));
        expect(written.eq(amountText(l.need).amount)).toBe(true);
        const all = [l.need, l.larder, l.buy, ...l.origins.map((o) => o.amount), ...l.packs.map((p) => p.size)];
        expect(new Set(all.map((a) => a.unit))).toEqual(new Set([l.need.unit]));
      }
    }), { numRuns: 150 });
  });

  it('every working recomputes, has words and known sources', () => {
    fc.assert(fc.property(needs, system, (list, s) => {
      for (const l of buy(list, { preferences: { units: s } }).lines) {
        expect(faultsOf(l.needFigure, ruleIds)).toEqual([]);
        for (const w of allFigures(l.needFigure).map((f) => f.working())) {
          expect(isWordId(`rule.${w.rule}`)).toBe(true);
          for (const t of w.terms) {
            expect('text' in t.label || isWordId(t.label.word)).toBe(true);
            expect(t.origin?.kind === 'table' && sourceTitle(t.origin.source) === undefined ? t.origin.source : 'known').toBe('known');
          }
        }
      }
    }), { numRuns: 80 });
  });

  it('buys the same food in metric and in US units, but for the packs', () => {
    fc.assert(fc.property(needs, (list) => {
      const metric = buy(list, { preferences: { units: 'metric' } });
      const us = buy(list, { preferences: { units: 'us' } });
      for (const m of metric.lines) {
        const row = ingredient(m.ingredient);
        const same = us.lines.filter((l) => l.ingredient === m.ingredient);
        if (row === undefined || same.length !== 1 || metric.lines.filter((l) => l.ingredient === m.ingredient).length !== 1) continue;
        const back = same[0] === undefined ? null : convertFood(same[0].need, m.need.unit, row);
        if (back === null) continue;
        // Each share is rounded up at the ninth decimal of its unit.
        expect(Math.abs(back.amount.minus(m.need.amount).toNumber())).toBeLessThanOrEqual(1e-4 + m.need.amount.toNumber() * 1e-9);
      }
    }), { numRuns: 100 });
  });

  it('buys more for what is lost in trimming', () => {
    const percent = ingredient('spinach')?.epPercent ?? 100;
    const l = line(buy([needOf('spinach', 720, 'g')]), 'spinach');
    const grams = convertFood(l.need, 'g', { gramsPerMl: null, gramsPer: ingredient('spinach')?.gramsPer ?? {} });
    expect(grams?.amount.toNumber()).toBeCloseTo((720 * 100) / percent, 5);
    expect(percent).toBeLessThan(100);
  });

  it('adds dishes to one line and takes the larder off before the packs', () => {
    const plan = buy([needOf('chickpea-flour', 600, 'g', 'a'), needOf('chickpea-flour', '0.9', 'kg', 'b'), needOf('chickpea-flour', 100, 'g', 'a')], {
      larder: [{ ingredient: 'chickpea-flour', amount: { amount: '350', unit: 'g' } }],
    });
    const l = line(plan, 'chickpea-flour');
    expect(plan.lines.length).toBe(1);
    expect(l.need.amount.toString()).toBe('1.6');
    expect(l.origins.map((o) => [o.dish, o.amount.amount.toString()])).toEqual([['a', '0.7'], ['b', '0.9']]);
    expect(l.larder.amount.toString()).toBe('0.35');
    // 1.25 kg missing: 1 kg + 500 g.
    expect(l.packs.map((p) => [p.count, p.size.amount.toString()])).toEqual([[1, '1'], [1, '0.5']]);
  });

  it('buys nothing when the larder has enough, and no water from the tap', () => {
    const plan = buy([needOf('salt', 100, 'g'), needOf('water', 5, 'L')], { larder: [{ ingredient: 'salt', amount: { amount: '1', unit: 'kg' } }] });
    expect(plan.lines.map((l) => l.ingredient)).toEqual(['salt']);
    expect(plan.lines[0]?.packs).toEqual([]);
    expect(plan.lines[0]?.buy.amount.toString()).toBe('0');
  });

  it('prices what is bought, not what is needed, and adds up exactly', () => {
    const prices = [
      { ingredient: 'chickpea-flour', price: '3.10', per: { amount: '1', unit: 'kg' } },
      { ingredient: 'milk-whole', price: '0.57', per: { amount: '500', unit: 'ml' } },
    ];
    const plan = buy([needOf('chickpea-flour', 1100, 'g'), needOf('milk-whole', '1.4', 'L'), needOf('salt', 10, 'g')], { prices });
    expect(line(plan, 'chickpea-flour').cost).toBe('4.65');
    expect(line(plan, 'milk-whole').cost).toBe('2.28');
    expect(line(plan, 'salt').cost).toBeUndefined();
    expect(plan.cost).toBe('6.93');
    expect(buy([needOf('salt', 10, 'g')]).cost).toBeNull();
  });

  it('lists what it does not know in the recipe\u2019s own unit and says so', () => {
    const plan = buy([needOf('grandmothers-mix', 123, 'g', 'a'), needOf('grandmothers-mix', '0.2', 'kg', 'b'), needOf('grandmothers-mix', 2, 'piece', 'b')]);
    expect(plan.unknown).toEqual([{ ingredient: 'grandmothers-mix', dishes: ['a', 'b'] }]);
    expect(plan.lines.map((l) => [l.name, l.section, l.need.unit, l.need.amount.toString(), l.buy.amount.toString()])).toEqual([
      ['grandmothers mix', 'other', 'g', '323', '323'], ['grandmothers mix', 'other', 'piece', '2', '2'],
    ]);
    expect(plan.sections).toEqual(['other']);
  });

  it('buys spoons of what it does not know in millilitres, just as much, named as the cook typed it, with a price for all of it', () => {
    const recipe = { id: 'stew', name: 'Stew', role: 'soup', yield: { amount: { amount: '1', unit: 'kg' }, portions: 4 }, ingredients: [{ ingredient: 'grandmas-special-stuff', called: 'grandma\u2019s special stuff', amount: { amount: '5', unit: 'metricTbsp' } }] };
    const [l] = buy([needOf('grandmas-special-stuff', 5, 'metricTbsp')], { recipes: [recipe] }).lines;
    expect([l?.name, l?.need.amount.toString(), l?.buy.amount.toString(), l?.buy.unit, l?.price.per.amount.toString(), l?.price.per.unit]).toEqual(['grandma\u2019s special stuff', '75', '75', 'ml', '75', 'ml']);
    expect(buy([needOf('grandmas-special-stuff', 2, 'cup')], { preferences: { units: 'us' } }).lines[0]?.buy.unit).toBe('floz');
  });

  it('buys an oil it does not know under its own name', () => {
    const plan = buy([{ ...needOf('groundnut-oil', '7.2', 'L', 'frying-oil'), name: 'groundnut oil' }]);
    expect(plan.lines.map((l) => [l.ingredient, l.name, l.buy.unit, l.buy.amount.gte('7.2')])).toEqual([['groundnut-oil', 'groundnut oil', 'L', true]]);
    expect(plan.unknown).toEqual([{ ingredient: 'groundnut-oil', dishes: ['frying-oil'] }]);
  });

  it('says which of the larder it cannot count, and buys as if it were not there', () => {
    const plan = buy([needOf('salt', 100, 'g'), needOf('grandmothers-mix', 100, 'g')], { larder: [held('salt', '3', 'piece'), held('salt', '20', 'g'), held('sugar', '2', 'slice'), held('grandmothers-mix', '1', 'cup')] });
    expect(plan.notCounted).toEqual([
      { id: 'buying.notCounted', params: { name: line(plan, 'salt').name, held: { amount: '3', unit: 'piece' }, listUnit: line(plan, 'salt').need.unit } },
      { id: 'buying.notCounted', params: { name: 'grandmothers mix', held: { amount: '1', unit: 'cup' }, listUnit: 'g' } },
    ]);
    expect(line(plan, 'salt').larder.amount.toString()).toBe('20');
    expect(line(plan, 'grandmothers-mix').larder.amount.toString()).toBe('0');
  });
  it('has nothing to say of a larder it can count, whichever line it goes to', () => {
    const larder = [{ ingredient: 'grandmothers-mix', amount: { amount: '1', unit: 'piece' } }, { ingredient: 'salt', amount: { amount: '0', unit: 'piece' } }];
    expect(buy([needOf('grandmothers-mix', 100, 'g'), needOf('grandmothers-mix', 2, 'piece'), needOf('salt', 5, 'g')], { larder }).notCounted).toEqual([]);
  });

  it('takes fewer packs of what keeps, as far as the household allows', () => {
    expect([packs('chickpea-flour', '3.4', 0), packs('chickpea-flour', '3.4', 0.15)]).toEqual([[[1, '2'], [1, '1'], [1, '0.5']], [[2, '2']]]);
    // Spinach does not keep.
    expect(packs('spinach', '1.3', 0.6)).toEqual(packs('spinach', '1.3', 0));
  });

  it('goes through the shop in order', () => {
    const plan = buy([needOf('salt', 10, 'g'), needOf('milk-whole', 1, 'L'), needOf('onion', 1, 'kg'), needOf('carrot', 1, 'kg')]);
    expect(plan.lines.map((l) => l.ingredient)).toEqual(['carrot', 'onion', 'milk-whole', 'salt']);
    expect(plan.sections).toEqual(['vegetables', 'dairy', 'spices']);
  });
});
