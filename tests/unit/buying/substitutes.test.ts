import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planBuying, needsOfMenu, putBack, standIns, substituteAmount, substitutionEffect, swapped } from '../../../shared/buying';
import { formatsFor, serialiseEvent, type Event } from '../../../shared/event';
import { amountOf, convertFood, unitIds } from '../../../shared/measure';
import { ingredient, sourceTitle, substitutesFor, substitutions, type Substitution } from '../../../shared/reference';
import { plan } from '../../../shared/plan';
import { sayMessage } from '../../../shared/words';
import { demo, demoNames } from '../demo/demo';
import { adults, drinkOf, menuEvent, menuOf, piecesOf, recipeOf } from '../menu/make-menu';

const rowOf = (id: string): Substitution => {
  const found = substitutions.find((s) => s.id === id);
  if (found === undefined) throw new Error(`no row ${id}`);
  return found;
};
const done = (event: Event, id: string): Event => {
  const next = swapped(event, rowOf(id));
  if (next === null) throw new Error(`${id} cannot be done`);
  return next;
};
const of = (amount: number, unit: string, food: string) => ({ ingredient: food, amount: { amount: String(amount), unit } });
const frying = { pieceBatterG: 30, fryMinutes: 3 };
const event = menuEvent([
  recipeOf('rice', 'grain', { ingredients: [of(500, 'g', 'basmati-rice'), of(30, 'ml', 'sunflower-oil')] }),
  piecesOf('fritter', 'friedSnack', { frying, ingredients: [of(500, 'g', 'chickpea-flour')] }),
  recipeOf('raita', 'yoghurt', { ingredients: [of(1, 'kg', 'yoghurt'), of(3, 'tbsp', 'mint-leaf')] }),
], [adults(30)], { guests: { allergies: [{ allergen: 'peanuts', people: 1 }, { allergen: 'milk', people: 2 }], diets: [{ diet: 'nutFree', people: 4 }] } });
const formats = formatsFor(event.preferences, event.day);
const sentences = (id: string, from = event): string[] => substitutionEffect(from, rowOf(id)).sentences.map((m) => sayMessage(formats, m));

describe('the table of substitutions', () => {
  it('names foods the table of ingredients knows, a ratio, a status and a source in every row', () => {
    expect(substitutions.length).toBeGreaterThan(80);
    const wrong = substitutions.filter((s) => ingredient(s.from) === undefined || ingredient(s.to) === undefined || s.from === s.to || !(s.ratio > 0) || s.id !== `${s.from}.${s.to}` || s.status === '' || sourceTitle(s.source) === undefined);
    expect(wrong.map((s) => s.id)).toEqual([]);
    expect(new Set(substitutions.map((s) => s.id)).size).toBe(substitutions.length);
  });
  it('proposes nothing for a food it does not have, and never a food in place of itself', () => {
    expect(substitutesFor('saffron')).toEqual([]);
    expect(substitutesFor('sunflower-oil').map((s) => s.to)).toContain('peanut-oil');
  });
});

describe('the amount of a substitute', () => {
  it('follows the ratio by volume or by mass, through densities where the unit is of the other kind', () => {
    expect(substituteAmount(amountOf(3, 'tbsp'), rowOf('mint-leaf.mint-dried'))?.amount.toNumber()).toBeCloseTo(1, 9);
    const grams = substituteAmount(amountOf(100, 'g'), rowOf('mint-leaf.mint-dried'))?.amount.toNumber() ?? 0;
    const [fresh, dried] = [ingredient('mint-leaf')?.gramsPerMl ?? 1, ingredient('mint-dried')?.gramsPerMl ?? 1];
    expect(grams).toBeCloseTo((100 / fresh / 3) * dried, 6);
    expect(substituteAmount(amountOf(100, 'g'), rowOf('butter.ghee'))?.amount.toString()).toBe('80');
  });
  it('is above nothing for every row and unit that can be told, in a unit the other food has', () => {
    fc.assert(fc.property(fc.constantFrom(...substitutions), fc.constantFrom(...unitIds), fc.integer({ min: 1, max: 5000 }), (row, unit, n) => {
      const found = substituteAmount(amountOf(n, unit), row);
      if (found === null) return;
      expect(found.amount.gt(0)).toBe(true);
      const to = ingredient(row.to);
      expect(to === undefined ? null : convertFood({ amount: new Big(1), unit: found.unit }, found.unit, to)).not.toBeNull();
    }), { numRuns: 400 });
  });
});

describe('what a substitution does, said before it is chosen', () => {
  it('an allergen that comes in, through the dish and the shared oil, with who avoids it', () => {
    expect(sentences('sunflower-oil.peanut-oil')[0]).toBe('Peanut oil, refined adds peanuts to Recipe rice and Recipe fritter: 1 guest avoids it.');
    expect(sentences('sunflower-oil.peanut-oil')[1]).toBe('Closes Recipe rice and Recipe fritter to the diet \u201cnut-free\u201d: 4 guests keep it.');
  });
  it('an allergen that goes, and nothing where nothing changes', () => {
    const ghee = menuEvent([recipeOf('rice', 'grain', { ingredients: [of(30, 'g', 'ghee')] })], [adults(5)], { guests: { allergies: [{ allergen: 'milk', people: 2 }] } });
    expect(sentences('ghee.sunflower-oil', ghee)[0]).toBe('Takes milk out of Recipe rice: 2 guests avoid it.');
    expect(sentences('sunflower-oil.rapeseed-oil')).toEqual(['Changes no allergen and no diet.']);
  });
  it('that it cannot be done, where the other food is no oil to fry in', () => {
    const effect = substitutionEffect({ ...event, kitchen: { ...event.kitchen, oilKind: 'sesame-refined' } }, rowOf('sunflower-oil.rapeseed-oil'));
    expect(effect.event).not.toBeNull();
    const noAmount = menuEvent([recipeOf('x', 'grain', { ingredients: [of(2, 'slice', 'ginger-root')] })], [adults(5)]);
    expect(substitutionEffect(noAmount, rowOf('ginger-root.ginger-ground')).event).toBeNull();
    expect(sentences('ginger-root.ginger-ground', noAmount)[0]).toContain('cannot be worked out');
  });
});

describe('a substitution', () => {
  it('changes the need and the allergens of the dishes concerned, the oil of the pans too', () => {
    const next = done(event, 'sunflower-oil.peanut-oil');
    expect([next.kitchen.oilKind, next.shopping?.oilBefore]).toEqual(['peanut-refined', 'sunflower-refined']);
    const menu = menuOf(next);
    expect(menu.dishes.map((d) => d.allergens.includes('peanuts'))).toEqual([true, false, false]);
    const lines = planBuying(next, needsOfMenu(next, menu)).lines.map((l) => l.ingredient);
    expect([lines.includes('peanut-oil'), lines.includes('sunflower-oil')]).toEqual([true, false]);
    expect(plan(next).safety.findings.length).toBeGreaterThanOrEqual(plan(event).safety.findings.length);
  });
  it('leaves recipes off the menu alone', () => {
    const off: Event = { ...event, menu: { dishes: [] } };
    expect(done(off, 'yoghurt.buttermilk').recipes).toEqual(off.recipes);
  });
  it('takes the leaf of a drink along', () => {
    const tea = menuEvent([drinkOf('tea', true, true, { ingredients: [of(1, 'L', 'water'), of(10, 'g', 'coriander-seed')], brewing: { method: 'infuse', hot: true, cupMl: 150, doseGPerL: 10, doseIngredient: 'coriander-seed' } })], [adults(5)]);
    const next = done(tea, 'coriander-seed.coriander-ground');
    expect(next.recipes[0]?.brewing?.doseIngredient).toBe('coriander-ground');
    expect(serialiseEvent(putBack(next, { now: 'coriander-ground', before: 'coriander-seed' }))).toBe(serialiseEvent(tea));
  });
  it('can be put back to the very bytes, after one step or several', () => {
    fc.assert(fc.property(fc.constantFrom(...demoNames), fc.array(fc.nat(400), { minLength: 1, maxLength: 4 }), (name, picks) => {
      const start = demo(name);
      let here = start;
      for (const pick of picks) {
        const open = substitutions.filter((s) => here.recipes.some((r) => r.ingredients.some((l) => l.ingredient === s.from)) && !here.recipes.some((r) => r.ingredients.some((l) => l.ingredient === s.to)));
        const row = open[pick % Math.max(1, open.length)];
        if (row !== undefined) here = swapped(here, row) ?? here;
      }
      for (const pair of standIns(here)) here = putBack(here, pair);
      const { shopping: _, ...back } = here;
      expect(serialiseEvent(back)).toBe(serialiseEvent(start));
    }), { numRuns: 80 });
  });
  it.each([
    ['doubled', { amount: '48', unit: 'g' }, '60'], ['in another unit', { amount: '0.048', unit: 'kg' }, '60'], ['halved', { amount: '12', unit: 'g' }, '15'], ['left alone', undefined, '30'],
  ])('keeps a change of the amount that came after it when it is put back: %s', (_name, amount, before) => {
    const start = menuEvent([recipeOf('rice', 'grain', { ingredients: [of(30, 'g', 'butter')] })], [adults(5)]);
    const there = done(start, 'butter.ghee');
    expect(there.recipes[0]?.ingredients[0]).toMatchObject({ ingredient: 'ghee', amount: { amount: '24', unit: 'g' } });
    const changed: Event = amount === undefined ? there : { ...there, recipes: there.recipes.map((r) => ({ ...r, ingredients: r.ingredients.map((l) => ({ ...l, amount: { ...amount, unit: amount.unit === 'kg' ? 'kg' : 'g' } })) })) };
    for (const back of [putBack(changed, { now: 'ghee', before: 'butter' }), done(changed, 'ghee.butter')]) {
      expect(back.recipes[0]?.ingredients[0]).toMatchObject({ ingredient: 'butter', amount: { amount: before, unit: 'g' } });
      expect(back.recipes[0]?.ingredients[0]?.insteadOf).toBeUndefined();
    }
  });
  it('keeps a change made between two substitutions', () => {
    const start = menuEvent([recipeOf('rice', 'grain', { ingredients: [of(30, 'ml', 'sunflower-oil')] })], [adults(5)]);
    const there = done(start, 'sunflower-oil.rapeseed-oil');
    const doubled: Event = { ...there, recipes: there.recipes.map((r) => ({ ...r, ingredients: r.ingredients.map((l) => ({ ...l, amount: { amount: '60', unit: 'ml' } })) })) };
    const further = substitutions.find((s) => s.from === 'rapeseed-oil' && s.to !== 'sunflower-oil' && swapped(doubled, s) !== null);
    expect(further).toBeDefined();
    const next = further === undefined ? doubled : (swapped(doubled, further) ?? doubled);
    for (const pair of standIns(next)) expect(putBack(next, pair).recipes[0]?.ingredients[0]).toMatchObject({ ingredient: 'sunflower-oil', amount: { amount: '60', unit: 'ml' } });
    expect(standIns(next).length).toBeGreaterThan(0);
  });
  it('of a file that does not say what it gave is put back as it was written', () => {
    const start = menuEvent([recipeOf('rice', 'grain', { ingredients: [{ ...of(48, 'g', 'ghee'), insteadOf: of(30, 'g', 'butter') }] })], [adults(5)]);
    expect(putBack(start, { now: 'ghee', before: 'butter' }).recipes[0]?.ingredients[0]).toMatchObject({ ingredient: 'butter', amount: { amount: '30', unit: 'g' } });
  });
  it('back to what it was is no substitution any more', () => {
    const there = done(event, 'sunflower-oil.rapeseed-oil');
    expect(standIns(there)).toEqual([{ now: 'rapeseed-oil', before: 'sunflower-oil' }]);
    const back = done(there, 'rapeseed-oil.sunflower-oil');
    expect(standIns(back)).toEqual([]);
    expect([back.kitchen.oilKind, back.recipes]).toEqual([event.kitchen.oilKind, event.recipes]);
  });
});
