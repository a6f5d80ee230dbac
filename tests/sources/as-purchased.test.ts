/**
 * Edible to as purchased against the "issue" column of an armed-forces card for 100 portions (AFRS-E508, Southwestern rice): what is weighed out
 * and what the store issues for it. Their weights are rounded to eighths of an ounce and half ounces.
 */
import { describe, expect, it } from 'vitest';
import { planBuying } from '../../shared/buying';
import { eventSchema } from '../../shared/event';
import { amountOf, convertFood, parseAmount } from '../../shared/measure';
import { ingredient } from '../../shared/reference';
import data from './data/recipes-checks.json';

const event = eventSchema.parse({ format: 'brimful-event/1', id: 'card', title: 'Card', day: '2026-12-12', opensAt: 660, closesAt: 1200, preferences: { units: 'us' } });
const card = data.hundred_portion_cards.find((c) => c.id === 'c1');
const ounces = (text: unknown): number => parseAmount(String(text).replace(/ oz$/, ''))?.toNumber() ?? Number.NaN;

describe('as purchased (AFRS-E508)', () => {
  it.each([['Onion, chopped', 'onion'], ['Green pepper, chopped', 'sweet-pepper']])('%s: issued within 2 %% of ours', (name, id) => {
    const row = card?.ingredients.find((i) => i.name === name);
    const issuedText = row !== undefined && 'issue_as_purchased' in row ? row.issue_as_purchased : '';
    const [edible, issued] = [ounces(row?.weight), ounces(issuedText)];
    expect(edible).toBeGreaterThan(0);
    expect(issued).toBeGreaterThan(edible);
    const [line] = planBuying(event, [{ ingredient: id, amount: amountOf(edible, 'oz'), origin: 'card' }]).lines;
    const food = ingredient(id);
    if (line === undefined || food === undefined) throw new Error(`no line for ${id}`);
    const ours = convertFood(line.need, 'oz', food)?.amount.toNumber() ?? 0;
    expect(Math.abs(ours / issued - 1)).toBeLessThanOrEqual(0.02);
  });
});

describe('weights of cups on the same card', () => {
  // "5 3/4 lb = 3 qt 2 cup" of rice and "11 1/4 oz = 2 cup" of onion, as printed.
  it.each([['long-grain-rice', 5.75 * 16, 14, 0.01], ['onion', 11.25, 2, 0.01]] as const)('%s: printed weight and measure agree with our density', (id, oz, cups, within) => {
    const food = ingredient(id);
    if (food === undefined) throw new Error(`no ${id}`);
    const ours = convertFood(amountOf(oz, 'oz'), 'cup', food)?.amount.toNumber() ?? 0;
    expect(Math.abs(ours / cups - 1)).toBeLessThanOrEqual(within);
  });
});
