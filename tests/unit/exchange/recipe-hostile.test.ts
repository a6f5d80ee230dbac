import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRecipes } from '../../../shared/exchange';

const ids = (text: string): string[] => readRecipes(text).problems.map((p) => p.message.id);
const recipe = (fields: object): string => JSON.stringify({ '@type': 'Recipe', name: 'R', recipeYield: 4, recipeIngredient: ['1 cup rice'], ...fields });

describe('what is no recipe', () => {
  it.each([
    ['', 'recipe.import.nothing'], ['just words', 'recipe.import.nothing'], ['{"@type": "Article"}', 'recipe.import.nothing'], ['null', 'recipe.import.nothing'],
    ['{"@type": "Recipe", "name": "cut o', 'recipe.import.broken'], ['<script type="application/ld+json">{"@type": </script>', 'recipe.import.broken'],
    ['<script type="text/javascript">{"@type": "Recipe", "name": "code"}</script>', ''],
  ])('%s', (text, id) => expect(ids(text)[0] ?? '').toBe(id === '' ? 'recipe.import.noLines' : id));
  it('is told when it is too long', () => expect(ids(' '.repeat(6_000_001))).toEqual(['recipe.import.tooLong']));
});

describe('hostile text does no harm', () => {
  it('brackets nested without end', () => {
    for (const sign of ['[', '{"a":', '[{"a":']) expect(readRecipes(sign.repeat(200_000)).recipes).toEqual([]);
    expect(readRecipes(`<script type="application/ld+json">${'['.repeat(100_000)}</script>`).recipes).toEqual([]);
  });
  it('names of the language itself', () => {
    const read = readRecipes('{"@type":"Recipe","name":"P","__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},"recipeYield":"4 toString","recipeIngredient":["1 constructor x","2 __proto__"]}');
    expect(read.recipes[0]?.lines.length).toBe(2);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
  it('tags and entities in every field', () => {
    const read = readRecipes(recipe({ name: '<img src=x onerror=alert(1)>Tea &lt;b&gt;', recipeIngredient: ['1 cup <script>alert(1)</script> rice', '&#x0;&#1114112;1 cup salt'] })).recipes[0];
    expect(read?.name).toBe('Tea');
    expect(read?.lines.map((line) => line.item).join()).not.toMatch(/[<>]/);
    expect(read?.lines[0]?.text).toBe('1 cup <script>alert(1)</script> rice');
  });
  it('very long lines, very many lines, very many recipes', () => {
    const long = readRecipes(recipe({ recipeIngredient: [`1 cup ${'a'.repeat(100_000)}`] })).recipes[0];
    expect(long?.lines[0]?.read).toBe('none');
    expect(ids(recipe({ recipeIngredient: Array.from({ length: 5000 }, (_, n) => `${n} cups rice`) }))).toContain('recipe.import.manyLines');
    const many = readRecipes(`[${Array.from({ length: 700 }, (_, n) => recipe({ name: `R${n}` })).join(',')}]`);
    expect(many.recipes.length).toBe(500);
    expect(many.problems[0]).toEqual({ recipe: null, message: { id: 'recipe.import.manyRecipes', params: { most: 500 } } });
  });
  it('texts made to be slow are given up in time', () => {
    const started = performance.now();
    for (const part of ['{x"', '{"a" ', '<script type=application/ld+json>{', '(((((', '1 1 1 1 ', '&amp;', '<!--', '{}{}[']) readRecipes(part.repeat(Math.floor(300_000 / part.length)));
    readRecipes(recipe({ recipeIngredient: ['1-'.repeat(240), '½ '.repeat(200), '('.repeat(490), '1/'.repeat(240), ', boneless'.repeat(50), ' to taste'.repeat(50)] }));
    expect(performance.now() - started).toBeLessThan(8000);
  });
  it('fields of any kind', () => {
    const anything = fc.jsonValue({ maxDepth: 4 });
    fc.assert(fc.property(anything, anything, anything, anything, anything, (name, recipeYield, recipeIngredient, recipeInstructions, prepTime) => {
      const { recipes, problems } = readRecipes(JSON.stringify({ '@graph': [{ '@type': ['Recipe'], name, recipeYield, recipeIngredient, recipeInstructions, prepTime, author: name, ingredients: recipeYield }] }));
      expect(recipes.length).toBe(1);
      expect(problems.every((p) => p.message.id.startsWith('recipe.import.'))).toBe(true);
    }), { numRuns: 1000 });
  });
  it('text of any kind', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom('{', '}', '[', ']', '"', '"@type"', ':', '"Recipe"', ',', '<script type="application/ld+json">', '</script>', '<!--', '-->', '\\', 'x', '\n')).map((parts) => parts.join('')), (text) => {
      const { recipes, problems } = readRecipes(text);
      expect(recipes.length + problems.length).toBeGreaterThan(0);
    }), { numRuns: 1000 });
  });
});
