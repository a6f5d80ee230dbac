import { readdirSync, readFileSync } from 'node:fs';
import { Big } from 'big.js';
import { describe, expect, it } from 'vitest';
import { eventSchema, formatsFor } from '../../../shared/event';
import { readRecipes, scaleImported, type ImportedRecipe, type ScaledLine } from '../../../shared/exchange';

// Ten recipes written for this test, each of another shape that schema.org allows or pages really have.
const folder = new URL('../../sources/jsonld/', import.meta.url);
const text = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const formatsOf = (units: 'metric' | 'us') => formatsFor(eventSchema.shape.preferences.parse({ units }), '2026-01-01');

function only(name: string): ImportedRecipe {
  const { recipes } = readRecipes(text(name));
  expect(recipes.length).toBe(1);
  return recipes[0]!;
}
const factor = new Big('3.48');
/** A scaled line in short: exact amount, upper end, unit, grams, millilitres. */
const short = (line: ScaledLine): string => [line.amount ?? '-', line.amountHigh ?? '', line.unit ?? '-', line.grams?.toFixed(2) ?? '', line.millilitres?.toFixed(2) ?? '', line.item].join('|');
const scaled = (name: string): string[] => scaleImported(only(name), factor, formatsOf).ingredients.map(short);
const unread = (name: string): readonly string[] => scaleImported(only(name), factor, formatsOf).unread;
const problems = (name: string): string[] => readRecipes(text(name)).problems.map((p) => p.message.id);

// Millilitres of a US cup, tablespoon, teaspoon (NIST Handbook 44, Appendix C); grams of an ounce and a pound.
const [cup, tbsp, tsp, oz, lb] = [236.5882365, 14.78676478125, 4.92892159375, 28.349523125, 453.59237];
const by = (amount: number, unit: number): string => (amount * 3.48 * unit).toFixed(2);

it('there are ten', () => expect(readdirSync(folder).length).toBe(10));

it('1: one object; ranges with hyphen, dash and "to"', () => {
  expect(scaled('01-object-ranges.json')).toEqual([
    '3.48|6.96|clove|||garlic', `6.96|10.44|tbsp||${by(2, tbsp)}|olive oil`, '1740||g|1740.00||spinach', '3.48|6.96|piece|||green chillies', `0.87|1.74|tsp||${by(0.25, tsp)}|salt`,
  ]);
  const recipe = only('01-object-ranges.json');
  expect(recipe.minutes).toEqual({ prepare: 10, cook: 8 });
  expect(recipe.steps.map((s) => s.text)).toEqual(['Warm the oil.', 'Add the garlic, then the spinach.', 'Stir until it wilts.']);
  expect(recipe.yield.portions?.low.toString()).toBe('4');
  expect(problems('01-object-ranges.json')).toEqual([]);
});

it('2: a list with other things in it; fractions of every kind', () => {
  expect(scaled('02-list-fractions.json')).toEqual([
    `5.22||cup||${by(1.5, cup)}|all-purpose flour`, `8.7||tsp||${by(2.5, tsp)}|baking powder`, `2.61||tsp||${by(0.75, tsp)}|salt`, `4.64||cup||${by(4 / 3, cup)}|milk`,
    `5.8||tbsp||${by(5 / 3, tbsp)}|sugar`, '6.96||piece|||large eggs', '2.61||stick|||butter',
  ]);
  expect(unread('02-list-fractions.json')).toEqual([]);
});

it('3: @graph and a list of types; tins of a size', () => {
  expect(scaled('03-graph-packs.json')).toEqual([
    '6.96||can|2784.00||chickpeas', `3.48||can|${by(14.5, oz)}||diced tomatoes`, `3.48||can|${by(14, oz)}||coconut milk`, '6.96||tin|2784.00||plum tomatoes',
    '10.44||can|4176.00||red kidney beans', '6.96||can|||white beans',
  ]);
  expect(unread('03-graph-packs.json')).toEqual(['2 cans (800 g) white beans']);
});

it('4: a saved page with two scripts, a comment, entities, a line end inside a text and a comma too many', () => {
  const recipe = only('04-page-two-scripts.html');
  expect(recipe.name).toBe('Ginger & lemon tea');
  expect(recipe.description).toBe('Warm in winter.');
  expect(recipe.steps.map((s) => s.text)).toEqual(['Boil the water.', 'Add the ginger.']);
  expect(recipe.yield.portions?.high?.toString()).toBe('8');
  expect(scaled('04-page-two-scripts.html')).toEqual(['3.48||piece|||fresh ginger', `1.74||tsp||${by(0.5, tsp)}|ground cardamom`, '5.22||L||5220.00|water', '3.48||piece|||lemon', `6.96||tbsp||${by(2, tbsp)}|honey`]);
});

it('5: the old field names and a QuantitativeValue; pinch, to taste, a few, a dozen', () => {
  expect(scaled('05-pinch-to-taste.json')).toEqual([
    '6.96||kg|6960.00||tomatoes', '3.48||pinch|||saffron', '-||-|||Salt', '-||-|||thyme', '3.48||handful|||fresh mint', '41.76||piece|||dates', '-||-|||freshly ground black pepper',
  ]);
  expect(only('05-pinch-to-taste.json').yield.made).toMatchObject({ unit: 'kg' });
  expect(unread('05-pinch-to-taste.json')).toEqual(['a few sprigs of thyme']);
});

it('6: metric and US mixed, sums and second amounts', () => {
  expect(scaled('06-mixed-units.json')).toEqual([
    `4.35||lb|${by(1.25, lb)}||potatoes`, '1740||g|1740.00||onions', `3.48||cup||${by(1, cup)}|milk`, `6.96||cup|870.00|${by(2, cup)}|flour`, `3.915||cup||${by(1.125, cup)}|grated cheese`,
    `27.84||floz||${by(1, cup)}|cream`, '696||ml||696.00|water', `3.48|10.44|tsp||${by(1, tsp)}|mustard seed`,
  ]);
});

it('7: no amounts: none is made up', () => {
  expect(scaled('07-no-amounts.json')).toEqual(['-||-|||onions', '-||-|||carrots', '-||-|||Salt and pepper', '-||-|||oil', '-||-|||water']);
  expect(unread('07-no-amounts.json')).toEqual(['For the broth:']);
  expect(problems('07-no-amounts.json')).toEqual(['recipe.import.openLines', 'recipe.import.noYield']);
});

it('8: decimal comma, and a number that could mean two things', () => {
  expect(scaled('08-decimal-comma.json')).toEqual(['5.22||kg|5220.00||Kartoffeln', '0.87||L||870.00|Wasser', '870||ml||870.00|Sahne', '5220||g|5220.00||Mehl', '1.74||bunch|||Petersilie', '10.44||clove|||Knoblauch']);
  expect(unread('08-decimal-comma.json')).toEqual(['1.500 g Zwiebeln']);
  expect(only('08-decimal-comma.json').minutes).toEqual({ prepare: 20 });
});

it('9: mainEntity, ingredients as groups, sections of steps, a time that is none', () => {
  const recipe = only('09-sections-groups.json');
  expect(recipe.name).toBe('Layered rice');
  expect(recipe.source).toBe('The test');
  expect(recipe.steps).toEqual([{ text: 'Soak.', section: 'Rice' }, { text: 'Boil.', section: 'Rice' }, { text: 'Layer and bake.', section: 'Layers' }]);
  expect(recipe.yield.portions?.low.toString()).toBe('12');
  expect(scaled('09-sections-groups.json')).toEqual(['2610||g|2610.00||basmati rice', `5.22||cup||${by(1.5, cup)}|yoghurt`, '10.44||piece|||Onion', `3.48||cup||${by(1, cup)}|Chickpea flour`, `6.96||tbsp||${by(2, tbsp)}|ghee`]);
  expect(problems('09-sections-groups.json')).toEqual(['recipe.import.time']);
});

it('10: pasted between other words; alternatives and extras are left to the cook', () => {
  expect(scaled('10-pasted-text.txt')).toEqual([
    `8.7||cup||${by(2.5, cup)}|plain flour`, `27.84||tbsp|${by(115, 1)}|${by(8, tbsp)}|butter`, '6.96||piece|||large eggs', `1.74||cup||${by(0.5, cup)}|sugar`,
    `6.96||cup||${by(2, cup)}|milk or 1 can coconut milk`, `10.44||tbsp||${by(3, tbsp)}|oats`, `3.48||tbsp||${by(1, tbsp)}|vanilla extract`, '34.8|41.76|piece|||almonds',
  ]);
  expect(unread('10-pasted-text.txt')).toEqual(['2 cups milk or 1 can coconut milk', '3 tbsp oats, plus 2 tbsp for dusting']);
  expect(only('10-pasted-text.txt').steps.map((s) => s.text)).toEqual(['Rub.', 'Bake.']);
});

describe('every one of the ten', () => {
  it.each(readdirSync(folder))('%s: each line is among the read or the unread, in its order', (name) => {
    const recipe = only(name);
    const { ingredients, unread: left } = scaleImported(recipe, factor, formatsOf);
    const told = ingredients.map((line) => line.line);
    expect(recipe.lines.map((line) => line.text).filter((line) => !told.includes(line) && !left.includes(line))).toEqual([]);
    expect(told).toEqual(recipe.lines.map((line) => line.text).filter((line) => told.includes(line)));
    expect(ingredients.map((line) => line.text).join('\n')).not.toMatch(/undefined|NaN|null|\u00a0/);
  });
  it.each(readdirSync(folder))('%s: scaled by 1 keeps every amount, by a and then b is by a times b', (name) => {
    const recipe = only(name);
    const amounts = (by: string) => scaleImported(recipe, new Big(by), formatsOf).ingredients.map((line) => line.amount);
    const once = recipe.lines.filter((line) => line.read !== 'none').map((line) => line.amount?.low);
    expect(amounts('1').map((a) => (a === null ? null : Number(a)))).toEqual(once.map((a) => (a === undefined ? null : Number(a.round(12)))));
    expect(amounts('6')).toEqual(once.map((a) => (a === undefined ? null : a.times(2).times(3).round(12).toFixed().replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, ''))));
  });
});
