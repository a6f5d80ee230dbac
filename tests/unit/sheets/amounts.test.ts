import { describe, expect, it } from 'vitest';
import { amountOf, convertFood } from '../../../shared/measure';
import { ingredient, ingredients } from '../../../shared/reference';
import { formatsFor } from '../../../shared/event';
import { measureWords } from '../../../shared/sheets/amounts';
import { lanternEvent } from './lantern';

const event = lanternEvent();
const f = formatsFor(event.preferences, event.day);
const grams = (n: number) => amountOf(n, 'g');
const plain = (food: string, amount: ReturnType<typeof amountOf>): string => measureWords(f, { ingredient: food, amount }).replaceAll('\u00a0', ' ');
/** The spoons alone, without the weight in brackets; null when it is weighed or counted. */
const spoonWords = (food: string, amount: ReturnType<typeof amountOf>): string | null => / tsp| tbsp/.exec(plain(food, amount)) === null ? null : plain(food, amount).replace(/ \(.*\)$/, '');

describe('light amounts in spoons', () => {
  it('are said below five grams, by the density of the table', () => {
    expect(plain('baking-soda', grams(2))).toBe('3\u20448 tsp (2 g)');
    expect(spoonWords('baking-soda', grams(4.99))).toMatch(/tsp$/);
    expect(spoonWords('baking-soda', grams(5))).toBeNull();
  });

  it('are left in grams for foods without a density, for counts, and for less than a spoon can hold', () => {
    expect(spoonWords('no-such-food', grams(2))).toBeNull();
    expect(spoonWords('baking-soda', amountOf(2, 'piece'))).toBeNull();
    expect(spoonWords('baking-soda', grams(0.05))).toBeNull();
  });

  it('stay within a sixteenth of a teaspoon or an eighth of what was asked, for every food with a density', () => {
    let compared = 0;
    for (const food of ingredients.filter((i) => i.gramsPerMl !== null)) {
      for (const n of [0.5, 1, 2, 3.3, 4.9]) {
        const said = spoonWords(food.id, grams(n));
        if (said === null || !said.endsWith('tsp') || said.includes('tbsp')) continue;
        compared += 1;
        const [whole, sign] = said.replace(' tsp', '').split(' ');
        const one = (t: string): number => ({ '¼': 0.25, '½': 0.5, '¾': 0.75 })[t] ?? (t.includes('\u2044') ? Number(t.split('\u2044')[0]) / Number(t.split('\u2044')[1]) : Array.from(t).reduce((sum, c) => (/\d/.test(c) ? sum * 10 + Number(c) : sum + one(c)), 0));
        const spoons = one(whole ?? '0') + (sign === undefined ? 0 : one(sign));
        const exact = Number(convertFood(grams(n), 'tsp', ingredient(food.id)!)!.amount);
        expect(Math.abs(spoons - exact), `${food.id} ${n} g: ${said}`).toBeLessThanOrEqual(Math.max(0.0626, exact / 8));
      }
    }
    // Most foods are measured so in most of these amounts; where none were, nothing would have been compared.
    expect(compared).toBeGreaterThan(200);
  });
});
