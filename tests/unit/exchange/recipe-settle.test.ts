import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { Big } from 'big.js';
import { describe, expect, it } from 'vitest';
import { eventSchema, formatsFor, recipeSchema, type Recipe } from '../../../shared/event';
import { factorFor, matchIngredient, proposeLine, proposeStepTimes, readIngredientLine, readLoose, readRecipes, recipeJsonLd, scaleOwn, toRecipe, weightOfLines, yieldOfOwn, type ImportedRecipe, type Settled } from '../../../shared/exchange';
import { parseShelf } from '../../../shared/household';
import { plain, unitIds } from '../../../shared/measure';
import { ingredient, ingredients } from '../../../shared/reference';
import { otherNames } from '../../../shared/exchange/line/names';
import { nameInLine } from '../../../shared/exchange/recipe-own';
import { sayMessage } from '../../../shared/words';
import { demo, demos } from './demo';

const formatsOf = (units: 'metric' | 'us') => formatsFor(eventSchema.shape.preferences.parse({ units }), '2026-01-01');
const formats = formatsOf('metric');
const read = (fields: object): ImportedRecipe => readRecipes(JSON.stringify({ '@type': 'Recipe', name: 'R', recipeYield: '4 servings', ...fields })).recipes[0]!;

describe('which food a name means', () => {
  it.each([['large eggs', 'egg'], ['fresh coriander', 'coriander-leaf'], ['finely chopped onion', 'onion'], ['cilantro', 'coriander-leaf'], ['potatoes', 'potato'], ['Chickpea flour', 'chickpea-flour'],
    ['zucchini', 'courgette'], ['scallions', 'spring-onion'], ['all-purpose flour', 'wheat-flour-white'], ['plain yogurt', 'yoghurt'], ['ground turmeric', 'turmeric'], ['curry leaves', 'curry-leaf']])('%s is surely %s', (item, id) => {
    expect(matchIngredient(item)[0]).toEqual({ id, sure: true });
  });
  it.each([['coriander', ['coriander-leaf', 'coriander-seed']], ['flour', ['wheat-flour-white', 'wheat-flour-whole']], ['chickpeas', ['chickpeas-dry', 'chickpeas-canned']], ['milk', ['milk-whole', 'oat-drink']], ['lemon juice', ['lemon-juice', 'lemon-juice-fresh']], ['salt and pepper', ['salt']]])('%s may be several, and none is sure', (item, ids) => {
    const found = matchIngredient(item);
    expect(found.filter((match) => match.sure)).toEqual([]);
    expect(found.map((match) => match.id)).toEqual(expect.arrayContaining(ids));
  });
  it('has no answer where nothing is alike', () => expect(matchIngredient('stardust')).toEqual([]));
  it('names only foods that the table has', () => expect(Object.keys(otherNames).filter((id) => ingredient(id) === undefined)).toEqual([]));
  it('knows every food of the table by the name we write', () => {
    const unsure = ingredients.filter(({ id, name }) => matchIngredient(nameInLine(name))[0]?.sure !== true || matchIngredient(nameInLine(name))[0]?.id !== id);
    // Spinach is sold by the bunch and in bags, and what is trimmed off differs: it is asked.
    expect(unsure.map((food) => food.id)).toEqual(['spinach']);
  });
});

describe('what is open in a line', () => {
  it.each([
    ['500 g potatoes, peeled', []], ['2 eggs', []], ['1½ cups all-purpose flour', []], ['1-2 cloves garlic', ['amount']], ['Salt to taste', ['amount']], ['2 cups flour', ['food']],
    ['1 handful parsley', ['unit']], ['2 (400 g) cans chickpeas', ['canned']], ['a few sprigs of thyme', ['line', 'food', 'amount']], ['1 tsp turmeric, ground', []], ['3 stardust', ['food']],
  ])('%s: %j', (line, open) => {
    const proposal = proposeLine(readIngredientLine(line));
    expect(proposal.open).toEqual(open);
    expect(proposal.settled === null).toBe(open.length > 0);
  });
  it('starts from the contents of all cans, and the lower end of a range', () => {
    expect(proposeLine(readIngredientLine('2 (400 g) cans chickpeas')).amount).toEqual({ amount: '800', unit: 'g' });
    expect(proposeLine(readIngredientLine('2 (400 g) cans chickpeas')).foods[0]).toEqual({ id: 'chickpeas-canned', sure: true });
    expect(proposeLine(readIngredientLine('1-2 cloves garlic')).amount).toEqual({ amount: '1', unit: 'clove' });
  });
});

describe('measures of the hand and weights in brackets', () => {
  it.each([
    ['1 handful parsley', { amount: '25', unit: 'g' }], ['a handful of parsley', { amount: '25', unit: 'g' }], ['2 sprigs of rosemary', { amount: '4', unit: 'g' }], ['a knob of butter', { amount: '15', unit: 'g' }], ['a handful of almonds', { amount: '40', unit: 'g' }],
  ])('%s starts from what a hand holds, and is asked', (line, amount) => {
    const proposal = proposeLine(readIngredientLine(line));
    expect(proposal.amount).toEqual(amount);
    expect(proposal.open).toContain('unit');
  });
  it.each([
    ['3 carrots (about 150 g)', '150'], ['2 bunches spinach (about 300 g)', '300'], ['2 carrots (about 150 g each)', '300'], ['2 bunches (about 150 g) spinach', '150'], ['a handful of spinach (about 30 g)', '30'], ['Spinach (about 150 g)', '150'],
  ])('%s weighs what the line says', (line, grams) => {
    expect(proposeLine(readIngredientLine(line)).amount).toEqual({ amount: grams, unit: 'g' });
  });
  it('a weight in the line settles what the table cannot weigh', () => {
    expect(proposeLine(readIngredientLine('3 carrots (about 150 g)')).settled).toMatchObject({ ingredient: 'carrot', amount: { amount: '150', unit: 'g' } });
  });
  it.each([['1 handful', '25', '1 handful'], ['a handful', '25', '1 handful'], ['Handful', '25', '1 handful'], ['2 handfuls', '50', '2 handfuls'], ['a good handful', '25', '1 handful'], ['3 sprigs', '6', '3 sprigs'], ['½ handful', '12.5', '0.5 handful']])('%s is typed for parsley', (typed, grams, words) => {
    expect(readLoose(typed, 'parsley')).toEqual({ amount: { amount: grams, unit: 'g' }, words });
  });
  it.each(['', '30 g', '2 cans', 'a lot', 'handful of parsley', '0 handfuls', '1 piece'])('%s is no measure of the hand', (typed) => expect(readLoose(typed)).toBeNull());
});

describe('a foreign recipe in our form', () => {
  const imported = read({ recipeIngredient: ['500 g potatoes, peeled', 'For the top:', '2 eggs'], prepTime: 'PT15M', totalTime: 'PT45M', description: 'Plain.', recipeInstructions: [{ '@type': 'HowToStep', text: 'Boil.' }, { '@type': 'HowToStep', text: 'x'.repeat(200) }] });
  const answers = imported.lines.map((line) => proposeLine(line).settled);
  const settled: Settled = { id: 'bake', role: 'vegetable', yield: { amount: { amount: '0.6', unit: 'kg' }, portions: 4 }, lines: answers };
  it('waits until every line is settled', () => {
    expect(toRecipe(imported, settled)).toMatchObject({ ok: false, open: [{ line: 1 }] });
    expect(toRecipe(imported, { ...settled, lines: [] })).toMatchObject({ ok: false, open: [{ line: 0 }, { line: 1 }, { line: 2 }] });
  });
  it('then keeps amounts, steps, minutes and the words that fit nowhere else', () => {
    const made = toRecipe(imported, { ...settled, lines: [answers[0]!, 'leaveOut', answers[2]!] });
    if (!made.ok) throw new Error(JSON.stringify(made.open));
    expect(made.recipe.ingredients.map((line) => [line.ingredient, line.amount, line.preparation])).toEqual([['potato', { amount: '500', unit: 'g' }, 'peeled'], ['egg', { amount: '2', unit: 'piece' }, undefined]]);
    expect(made.recipe.steps.map((step) => [step.active.fixed, step.after, step.name.length])).toEqual([[15, [], 5], [30, ['step-1'], 120]]);
    expect(made.recipe.notes).toContain('x'.repeat(200));
    expect(made.recipe.notes).toContain('Plain.');
  });
  it('takes the minutes of a step from its words, and from the whole only what they leave', () => {
    const cooked = read({ recipeIngredient: ['2 eggs'], prepTime: 'PT10M', cookTime: 'PT40M', recipeInstructions: ['Mix all.', 'Toast the cumin in the oil for 2 minutes', 'Chill for 30 minutes.', 'Serve.'] });
    expect(proposeStepTimes(cooked).map(({ active, passive }) => [active, passive])).toEqual([[10, 0], [2, 0], [0, 30], [8, 0]]);
    const made = toRecipe(cooked, { ...settled, lines: [answers[2]!] });
    if (!made.ok) throw new Error(JSON.stringify(made.open));
    expect(made.recipe.steps.map((step) => [step.active.fixed, step.passive.fixed, step.does])).toEqual([[10, 0, 'other'], [2, 0, 'other'], [0, 30, 'chill'], [8, 0, 'other']]);
    const hers = toRecipe(cooked, { ...settled, lines: [answers[2]!], steps: proposeStepTimes(cooked).map((time) => ({ ...time, active: time.active + 1 })) });
    expect(hers.ok && hers.recipe.steps.map((step) => step.active.fixed)).toEqual([11, 3, 1, 9]);
  });
  it('says which field does not fit', () => {
    expect(toRecipe(imported, { ...settled, id: 'not an id', lines: ['leaveOut', 'leaveOut', 'leaveOut'] })).toMatchObject({ ok: false, open: [{ line: null, message: { params: { field: 'id' } } }, { line: null, message: { params: { field: 'ingredients' } } }] });
  });
  it('weighs what goes in, and does not guess a weight', () => {
    expect(weightOfLines([answers[0]!, { ingredient: 'salt', amount: { amount: '1', unit: 'kg' } }])).toEqual({ amount: '1500', unit: 'g' });
    expect(weightOfLines([{ ingredient: 'stardust', amount: { amount: '1', unit: 'g' } }])).toBeNull();
  });
});

/** A recipe written as JSON-LD and read back: food, exact amount, unit and preparation of each line. */
function roundTrip(recipe: Recipe): { readonly before: unknown[]; readonly after: unknown[]; readonly back: ImportedRecipe } {
  const { recipes } = readRecipes(JSON.stringify(recipeJsonLd(recipe, formats)));
  const back = recipes[0]!;
  return {
    back,
    before: recipe.ingredients.map((line) => [nameInLine(ingredient(line.ingredient)?.name ?? line.ingredient), plain(new Big(line.amount.amount)), line.amount.unit, line.toTaste]),
    after: back.lines.map((line) => [line.item, plain(line.amount?.low ?? new Big(-1)), line.unit ?? 'piece', line.toTaste]),
  };
}

describe('written as JSON-LD and read back', () => {
  const starter = parseShelf(readFileSync('assets/app/shelf/starter.brimful-shelf', 'utf8'));
  const kept = new Map<string, readonly Recipe[]>([...demos.map((name) => [name, demo(name).recipes] as const), ['the starter shelf', starter.ok ? starter.shelf.recipes : []]]);
  it.each([...kept.keys()])('the recipes of %s keep every amount and the yield', (name) => {
    expect(kept.get(name)?.length).toBeGreaterThan(0);
    for (const recipe of kept.get(name) ?? []) {
      const { before, after, back } = roundTrip(recipe);
      expect(after).toEqual(before);
      expect(back.name).toBe(recipe.name);
      expect(back.yield.portions?.low.toNumber()).toBeCloseTo(recipe.yield.portions, 9);
      expect(back.yield.made).toMatchObject({ unit: recipe.yield.amount.unit });
      expect(plain(back.yield.made!.amount.low)).toBe(plain(new Big(recipe.yield.amount.amount)));
      expect(back.lines.filter((line) => line.amount === undefined || line.item === '')).toEqual([]);
    }
  });
  it('any amount in any unit of any food', () => {
    const amounts = fc.oneof(
      fc.integer({ min: 1, max: 999_999 }).map(String), fc.tuple(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 1, max: 999_999_999 })).map(([whole, rest]) => `${whole}.${rest}`),
      fc.tuple(fc.integer({ min: 0, max: 99 }), fc.constantFrom(3, 4, 6, 8), fc.integer({ min: 1, max: 7 })).map(([whole, parts, above]) => plain(new Big(above).div(parts).plus(whole))),
    );
    fc.assert(fc.property(amounts, fc.constantFrom(...unitIds), fc.constantFrom(...ingredients.map((food) => food.id)), fc.boolean(), (amount, unit, id, toTaste) => {
      const recipe = recipeSchema.parse({ id: 'r', name: 'R', role: 'plain', yield: { amount: { amount, unit }, portions: 4 }, ingredients: [{ ingredient: id, amount: { amount, unit }, toTaste }] });
      const { before, after } = roundTrip(recipe);
      expect(after).toEqual(before);
    }), { numRuns: 1500 });
  });
});

const factor = (wanted: Parameters<typeof factorFor>[0], recipeYield: unknown): string => {
  const found = factorFor(wanted, read({ recipeIngredient: ['1 egg'], recipeYield }).yield);
  return 'problem' in found ? `${found.problem.id}: ${sayMessage(formats, found.problem)}` : [plain(found.factor), ...found.notes.map((note) => note.id)].join(' ');
};

describe('the factor for a size', () => {
  it.each([
    [{ portions: '12' }, 4, '3'], [{ portions: '10' }, ['4', '4 servings'], '2.5'], [{ portions: '12' }, 'Serves 4 to 6', '3 recipe.scale.range'], [{ portions: '48' }, '24 biscuits', '2 recipe.scale.pieces'],
    [{ factor: '3.48' }, undefined, '3.48'], [{ factor: '1/2' }, 4, '0.5'], [{ yield: '3 kg' }, '750 g', '4'], [{ yield: '1 gallon' }, '2 quarts', '2'], [{ yield: '48 biscuits' }, '24 biscuits', '2'],
    [{ yield: '12 servings' }, 4, '3'], [{ yield: '3 kg' }, ['6 servings', '1.5 kg'], '2'], [{ portions: '3' }, { '@type': 'QuantitativeValue', value: '6', unitText: 'servings' }, '0.5'],
    [{ portions: '6' }, '12', '0.5'], [{ portions: '6' }, 'Makes about 2 portions', '3'],
  ] as const)('%j of %j is %s', (wanted, made, result) => expect(factor(wanted, made)).toBe(result));
  it.each([
    [{ portions: '0' }, 4, 'recipe.scale.number'], [{ portions: 'many' }, 4, 'recipe.scale.number'], [{ portions: '12' }, undefined, 'recipe.scale.noPortions'], [{ portions: '12' }, '3 kg', 'recipe.scale.noPortions'],
    [{ yield: 'lots' }, 4, 'recipe.scale.yield'], [{ yield: '3 kg' }, 4, 'recipe.scale.otherYield'], [{ yield: '3 kg' }, '2 L', 'recipe.scale.otherYield'], [{ factor: '1000000' }, 4, 'recipe.scale.far'], [{ factor: '-2' }, 4, 'recipe.scale.number'],
  ] as const)('%j of %j is refused: %s', (wanted, made, id) => expect(factor(wanted, made)).toContain(`${id}: `));
  it('of an own recipe goes by its portions or its amount, and each line by its own rule', () => {
    const own = recipeSchema.parse({ id: 'r', name: 'R', role: 'pulse', yield: { amount: { amount: '2', unit: 'kg' }, portions: 8 }, ingredients: [
      { ingredient: 'chickpeas-dry', amount: { amount: '1', unit: 'kg' } }, { ingredient: 'bay-leaf', amount: { amount: '2', unit: 'piece' }, scaling: { kind: 'fixed' } }, { ingredient: 'salt', amount: { amount: '10', unit: 'g' }, scaling: { kind: 'perBatch' } }] });
    const found = factorFor({ yield: '5 kg' }, yieldOfOwn(own));
    expect('factor' in found ? plain(found.factor) : '').toBe('2.5');
    const scaled = scaleOwn(own, new Big('2.5'), formatsOf);
    expect(scaled.ingredients.map((line) => [line.amount, line.unit, line.grams, line.item])).toEqual([['2.5', 'kg', 2500, 'dry chickpeas'], ['2', 'piece', undefined, 'dried bay leaf'], ['30', 'g', 30, 'fine salt']]);
    expect(scaled.factor).toBe('2.5');
    expect(scaled.unread).toEqual([]);
  });
});
