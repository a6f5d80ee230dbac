import { describe, expect, it } from 'vitest';
import { formatsFor, measureFood, preferencesSchema, type Measuring } from '../../../shared/event';
import { amountOf, amountText } from '../../../shared/measure';
import { ingredient, ingredients } from '../../../shared/reference';

const having = (measuring?: Measuring, units: 'metric' | 'us' = 'metric') => preferencesSchema.parse({ units, ...(measuring === undefined ? {} : { measuring }) });
const plain = (words: string): string => words.replaceAll('\u00a0', ' ');
const said = (grams: number, food: string, measuring?: Measuring, units: 'metric' | 'us' = 'metric') => {
  const { text, beside, rounding } = formatsFor(having(measuring, units), '2026-12-12').food(amountText(amountOf(grams, 'g')), food);
  return { text: plain(text), beside: plain(beside), rounding: plain(rounding) };
};

const poured = (ml: number, food: string, measuring?: Measuring) => {
  const { text, beside, rounding } = formatsFor(having(measuring), '2026-12-12').food(amountText(amountOf(ml, 'ml')), food);
  return [plain(text), plain(beside), plain(rounding)];
};

const roundedUs = (text: string, unit: string): string => plain(formatsFor(having(undefined, 'us'), '2026-12-12').food({ amount: text, unit }, 'no-such-food').rounding);

describe('a food measured in this kitchen', () => {
  it('is weighed from five grams on, spooned below with its weight beside', () => {
    expect(said(250, 'sugar')).toEqual({ text: '250 g', beside: '', rounding: '' });
    expect(said(2, 'baking-soda')).toMatchObject({ text: '3⁄8 tsp', beside: '2 g' });
    expect(said(33, 'sugar', { scaleStepG: 5 }).text).toBe('35 g');
    expect(said(33, 'sugar', { scaleStepG: 5 }).rounding).toMatch(/more$/);
  });

  it('goes by spoons where the scale is too coarse', () => {
    const coarse = measureFood(amountOf(20, 'g'), 'sugar', having({ scaleStepG: 10 }));
    expect([coarse.way, coarse.parts.map((p) => p.unit)]).toEqual(['spoon', ['tbsp', 'tsp']]);
    expect(Math.abs(coarse.off)).toBeLessThanOrEqual(0.05);
  });

  it('a US measure that is rounded says what it stands for, to the quarter ounce or teaspoon', () => {
    expect(roundedUs('2300', 'g')).toBe('rounded to 1.4 % less; exactly 5 lb 1¼ oz');
    expect(roundedUs('500', 'ml')).toBe('rounded to 5.4 % less; exactly 1 pint 1 tbsp 2½ tsp');
    expect(roundedUs('1', 'lb')).toBe('');
  });

  it('without a scale goes by spoon and cup and says how sure that is', () => {
    const flour = measureFood(amountOf(500, 'g'), 'chickpea-flour', having({ scaleStepG: null }, 'us'));
    const density = ingredient('chickpea-flour')?.figures.density;
    expect(flour.way).toBe('noScale');
    expect(flour.parts.every((p) => p.unit === 'cup' || p.unit === 'tbsp')).toBe(true);
    expect(flour.spread).toBeCloseTo((density?.high ?? 0) / (density?.value ?? 1) - 1, 9);
    expect(said(500, 'chickpea-flour', { scaleStepG: null }, 'us').beside).toContain('less sure');
  });

  it('says so when nothing in the house measures it', () => {
    expect(said(40, 'no-such-food', { scaleStepG: null }).beside).toContain('needs a scale');
    expect(measureFood(amountOf(40, 'g'), 'sugar', having({ scaleStepG: null, measures: [] })).way).toBe('unmeasured');
  });

  it('has a path without a scale for every food with a density, within 15 % of the weight asked for from half a teaspoon on', () => {
    for (const { id, gramsPerMl } of ingredients) {
      if (gramsPerMl === null) continue;
      for (const ml of [3, 20, 100, 600, 8000]) {
        const found = measureFood(amountOf(ml * gramsPerMl, 'g'), id, having({ scaleStepG: null }));
        expect([id, found.way]).toEqual([id, 'noScale']);
        expect(Math.abs(found.off), `${id} ${ml} ml`).toBeLessThanOrEqual(ml < 15 ? 0.13 : 0.06);
      }
    }
  });

  it('what is poured goes by the spoons, cups and jug there are, millilitres beside', () => {
    expect(poured(15, 'water')).toEqual(['1 tbsp', '15 ml', 'rounded to 1.4 % less']);
    expect(poured(55, 'water', { jugStepMl: 50 })).toEqual(['50 ml and 1 tsp', '55 ml', '']);
    expect(poured(600, 'water', { jugStepMl: null })).toEqual(['2 1\u20443 metric cups and 1 tbsp', '600 ml', '']);
  });

  it('what no spoon or jug can measure is weighed where its density is known, and said so where not', () => {
    const jugOnly = { measures: [], jugStepMl: 100 };
    expect(measureFood(amountOf(30, 'ml'), 'honey', having(jugOnly)).parts[0]?.unit).toBe('g');
    expect(measureFood(amountOf(30, 'ml'), 'no-such-food', having(jugOnly)).parts).toEqual([{ text: '100', unit: 'ml' }]);
    expect(measureFood(amountOf(30, 'ml'), 'no-such-food', having({ measures: [], jugStepMl: null })).way).toBe('nothing');
    expect(formatsFor(having({ measures: [], jugStepMl: null }), '2026-12-12').food({ amount: '30', unit: 'ml' }, 'no-such-food').beside).toContain('needs a spoon');
  });

  it('big amounts go in big measures', () => {
    expect(measureFood(amountOf(9, 'kg'), 'sugar', having({ scaleStepG: null }, 'us')).parts[0]?.unit).toBe('gallon');
    expect(measureFood(amountOf(9, 'kg'), 'sugar', having({ scaleStepG: null })).parts[0]?.unit).toBe('L');
  });
});
