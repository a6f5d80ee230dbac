import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandIds, recipeSchema } from '../../../shared/event';
import { planGuests } from '../../../shared/guests';
import { massBalance, perHead, planMenu, scaleRecipe } from '../../../shared/menu';
import { bandFactor } from '../../../shared/reference';
import { adults, drinkOf, menuEvent, menuOf, piecesOf, recipeOf, sum } from './make-menu';

const runs = { numRuns: 1000 };
const short = { opensAt: 700, closesAt: 760 };
const wave = (counts: object, more: object = {}) => ({ from: 700, to: 705, counts, stay: { shortest: 20, usual: 30, longest: 40 }, ...more });
const recipes = [recipeOf('rice', 'grain'), recipeOf('dal', 'pulse'), piecesOf('snack', 'friedSnack'), piecesOf('bread', 'bread'), drinkOf('tea', true, true), drinkOf('water', false, false)];
const portions = (event: Parameters<typeof menuOf>[0]): number[] => menuOf(event).dishes.map((d) => d.portions.value);
const people = fc.record({ adult: fc.nat(60), olderAdult: fc.nat(10), age1to3: fc.nat(8), age4to6: fc.nat(8), age7to9: fc.nat(8), age10to12: fc.nat(8), age13to17: fc.nat(8) });
const turnout = fc.oneof(fc.constant({ kind: 'known' }), fc.integer({ min: 10, max: 100 }).map((n) => ({ kind: 'share', share: n / 100 })));

describe('portions, over a thousand menus', () => {
  it('never fall when somebody more comes, of whatever age', () => {
    fc.assert(fc.property(people, fc.constantFrom(...bandIds), turnout, (counts, band, coming) => {
      const more = { ...counts, [band]: (band === 'under1' ? 0 : counts[band]) + 1 };
      const before = portions(menuEvent(recipes, [wave(counts, { turnout: coming })], short));
      const after = portions(menuEvent(recipes, [wave(more, { turnout: coming })], short));
      before.forEach((n, i) => expect(after[i]).toBeGreaterThanOrEqual(n));
    }), runs);
  }, 120_000);

  it('never fall when more of the guests take a dish, and nobody takes what nobody takes', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 100 }), (n, takeUp, extra) => {
      const of = (share: number): number => portions(menuEvent([recipes[0] ?? {}], [wave({ adult: n })], short, [{ id: 'a', recipe: 'rice', takeUp: share }]))[0] ?? Number.NaN;
      const few = of(takeUp / 100);
      expect(of(Math.min(1, (takeUp + extra) / 100))).toBeGreaterThanOrEqual(few);
      expect(takeUp > 0 || few === 0).toBe(true);
    }), runs);
  }, 120_000);

  it('are whole, and equal to the sum of what each minute wants and of what each wave wants', () => {
    fc.assert(fc.property(people, people, turnout, (first, second, coming) => {
      const { dishes } = menuOf(menuEvent(recipes, [wave(first, { turnout: coming }), wave(second, { from: 720, to: 725 })], short));
      for (const d of dishes) {
        expect(Number.isInteger(d.portions.value)).toBe(true);
        expect(sum([...d.demand.values])).toBe(d.portions.value);
        expect(sum(d.byWave.map((w) => w.portions))).toBe(d.portions.value);
        expect(d.factor).toBeGreaterThanOrEqual(0);
      }
    }), runs);
  }, 120_000);

  it('of a child lie between nothing and the larger end of its age factor, an adult being one', () => {
    fc.assert(fc.property(fc.constantFrom(...bandIds), fc.integer({ min: 1, max: 60 }), (band, n) => {
      const { dishes } = menuOf(menuEvent(recipes.slice(0, 3), [wave({ adult: n })], short));
      for (const d of dishes) {
        expect(d.perBand[band]).toBeCloseTo(d.perAdult.value * bandFactor(band).food, 9);
        expect(d.perBand[band]).toBeGreaterThanOrEqual(0);
        expect(d.perBand[band]).toBeLessThanOrEqual(d.perAdult.value * Math.max(1, bandFactor(band).high) + 1e-9);
      }
    }), runs);
  }, 120_000);

  it('of many similar dishes: each further one makes each smaller and the table fuller', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 50 }), (n, guests) => {
      const grams = (count: number): number => {
        const event = menuEvent(Array.from({ length: count }, (_, i) => recipeOf(`g${i}`, 'grain')), [adults(guests, { from: 700, to: 705 })], short);
        return perHead(event, planMenu(event, planGuests(event))).food?.value ?? Number.NaN;
      };
      expect(grams(n + 1) / (n + 1)).toBeLessThanOrEqual(grams(n) / n + 1e-9);
      expect(grams(n + 1)).toBeGreaterThanOrEqual(grams(n) - 1e-9);
    }), runs);
  }, 120_000);
});

const made = (lines: readonly { readonly grams: number; readonly food: string; readonly kind: string }[]) => recipeSchema.parse({
  id: 'r', name: 'R', role: 'plain', yield: { amount: { amount: '2', unit: 'kg' }, portions: 4 },
  ingredients: lines.map(({ grams, food, kind }) => ({ ingredient: food, amount: { amount: String(grams), unit: 'g' }, scaling: kind === 'damped' ? { kind, exponent: 0.85 } : { kind } })),
});

describe('recipes, over a thousand factors', () => {
  const line = fc.record({ grams: fc.integer({ min: 1, max: 5000 }), food: fc.constantFrom('onion', 'salt', 'wheat-flour-white', 'water'), kind: fc.constantFrom('linear', 'damped', 'fixed') });

  it('all linear: the balance of weight stays what it was, and there and back again is the same recipe', () => {
    fc.assert(fc.property(fc.array(line, { minLength: 1, maxLength: 8 }), fc.integer({ min: 1, max: 4000 }), (lines, hundredths) => {
      const recipe = made(lines.map((l) => ({ ...l, kind: 'linear' })));
      const factor = hundredths / 100;
      const [small, large] = [massBalance(recipe), massBalance(scaleRecipe(recipe, factor))];
      expect(large.verdict).toBe(small.verdict);
      expect(large.inside.value / (small.inside.value * factor)).toBeCloseTo(1, 9);
      const back = scaleRecipe(scaleRecipe(recipe, factor), 1 / factor);
      back.ingredients.forEach((l, i) => expect(new Big(l.amount.amount).minus(recipe.ingredients[i]?.amount.amount ?? '0').abs().toNumber()).toBeLessThan(1e-6));
    }), runs);
  }, 120_000);

  it('damped and fixed lines never grow faster than the recipe, nor shrink faster', () => {
    fc.assert(fc.property(fc.array(line, { minLength: 1, maxLength: 8 }), fc.integer({ min: 1, max: 4000 }), (lines, hundredths) => {
      const recipe = made(lines);
      const factor = hundredths / 100;
      const scaled = scaleRecipe(recipe, factor);
      scaled.ingredients.forEach((l, i) => {
        const ratio = new Big(l.amount.amount).div(recipe.ingredients[i]?.amount.amount ?? '1').toNumber();
        expect(ratio).toBeGreaterThanOrEqual(Math.min(1, factor) - 1e-6);
        expect(ratio).toBeLessThanOrEqual(Math.max(1, factor) + 1e-6);
      });
    }), runs);
  }, 120_000);
});
