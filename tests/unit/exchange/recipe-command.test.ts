import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { runCommand } from '../../../src-main/command';
import type { ScaledRecipe } from '../../../shared/exchange';
import { readRecipes } from '../../../shared/exchange';
import { parseShelf } from '../../../shared/household';

const jsonld = (name: string): string => join('tests', 'sources', 'jsonld', name);
const demo = 'assets/app/demo/lantern-evening.brimful';
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-recipe-'));
  vi.stubEnv('BRIMFUL_DATA_DIR', join(folder, 'data'));
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true, force: true });
});

/** Runs a command as if typed. */
async function brimful(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const [out, err]: [string[], string[]] = [[], []];
  const code = await runCommand(args, { out: (text) => out.push(text), err: (text) => err.push(text) });
  return { code, out: out.join('\n').replaceAll('\u00a0', ' '), err: err.join('\n').replaceAll('\u00a0', ' ') };
}
const scaled = async (...args: string[]): Promise<ScaledRecipe> => JSON.parse((await brimful('scale', ...args, '--json')).out) as ScaledRecipe;
async function file(name: string, content: unknown): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}
const own = { id: 'beans', name: 'Beans', role: 'pulse', yield: { amount: { amount: '2', unit: 'kg' }, portions: 8 }, ingredients: [
  { ingredient: 'white-beans-dry', amount: { amount: '0.75', unit: 'kg' }, preparation: 'soaked' }, { ingredient: 'salt', amount: { amount: '2', unit: 'tsp' }, toTaste: true }] };

describe('scale', () => {
  it('says that portions are the recipe\u2019s own, and only where portions were asked for', async () => {
    const own = (await brimful('scale', demo, '--portions', '20', '--recipe', 'chutney')).out;
    expect(own.replaceAll('\u00a0', ' ')).toMatch(/a portion is the recipe's own: \d+ g/);
    expect((await brimful('scale', demo, '--factor', '2', '--recipe', 'chutney')).out).not.toContain('a portion is');
    expect((await brimful('scale', '--help')).out).toContain("portions as large as the recipe's own");
  });

  it('tells exact amounts as JSON', async () => {
    const { name, factor, ingredients, unread } = await scaled(jsonld('03-graph-packs.json'), '--factor', '3.48');
    expect({ name, factor, unread }).toEqual({ name: 'Chickpea stew', factor: '3.48', unread: ['2 cans (800 g) white beans'] });
    expect(ingredients[0]).toEqual({ text: '7 (400 g) cans chickpeas, drained', item: 'chickpeas', amount: '6.96', unit: 'can', grams: 2784, preparation: 'drained', pack: { amount: '400', unit: 'g' }, line: '2 (400 g) cans chickpeas, drained' });
    expect(ingredients.length).toBe(6);
  });
  it('to portions, to an amount in all, by a factor', async () => {
    const amounts = async (...size: string[]): Promise<(string | null)[]> => (await scaled(jsonld('01-object-ranges.json'), ...size)).ingredients.map((line) => line.amount);
    expect(await amounts('--portions', '12')).toEqual(await amounts('--factor', '3'));
    expect(await amounts('--yield', '12 servings')).toEqual(await amounts('--factor', '3'));
    expect((await scaled(jsonld('05-pinch-to-taste.json'), '--yield', '1500 g')).factor).toBe('0.5');
  });
  it('tells the lines in the units asked for; amounts keep their own', async () => {
    const metric = await scaled(jsonld('06-mixed-units.json'), '--factor', '2', '--units', 'metric');
    const us = await scaled(jsonld('06-mixed-units.json'), '--factor', '2', '--units', 'us');
    expect(metric.ingredients[0]).toMatchObject({ text: '1.15 kg potatoes, peeled', amount: '2.5', unit: 'lb' });
    expect(us.ingredients[0]).toMatchObject({ text: '2 lb and 8 oz potatoes, peeled', amount: '2.5', unit: 'lb' });
    expect(metric.ingredients.map((line) => line.text).join()).not.toMatch(/\b(?:cups?|oz|lb|tbsp)\b/);
    expect(us.ingredients.map((line) => line.text).join()).not.toMatch(/\d (?:kg|g|ml|L)\b/);
  });
  it('takes a recipe, an event and a shelf of our own', async () => {
    const alone = await scaled(await file('beans.json', own), '--portions', '20');
    expect(alone.ingredients.map(({ amount, unit, grams, item, toTaste }) => ({ amount, unit, grams, item, toTaste }))).toEqual([
      { amount: '1.875', unit: 'kg', grams: 1875, item: 'dry white beans' }, { amount: '5', unit: 'tsp', item: 'fine salt', toTaste: true }]);
    expect(await scaled(await file('my.brimful-shelf', { format: 'brimful-shelf/1', recipes: [own] }), '--yield', '5 kg')).toEqual(alone);
    expect((await scaled(demo, '--factor', '2', '--recipe', 'chutney')).ingredients.length).toBeGreaterThan(2);
    expect(await scaled(demo, '--factor', '2', '--recipe', '1')).toEqual(await scaled(demo, '--factor', '2', '--recipe', 'FRITTERS'));
  });
  it('tells it in text, with what could not be read', async () => {
    const { code, out, err } = await brimful('scale', jsonld('08-decimal-comma.json'), '--portions', '8');
    expect(code).toBe(0);
    expect(out.split('\n')).toEqual(['Ofenkartoffeln, 2 times', '  3 kg Kartoffeln', '  500 ml Wasser', '  500 ml Sahne', '  3 kg Mehl', '  1 bunch Petersilie, gehackt', '  6 cloves Knoblauch', 'Look at these lines yourself; they could not be read in full:', '  1.500 g Zwiebeln']);
    expect(err).toBe('1 ingredient line could not be read in full. Look at it and fill in what is missing.');
  });
  it.each([
    [[], 'Name the recipe, or the file with the recipe.'],
    [[jsonld('01-object-ranges.json')], 'one of --portions, --yield and --factor'],
    [[jsonld('01-object-ranges.json'), '--portions', '3', '--factor', '2'], 'one of --portions, --yield and --factor'],
    [[jsonld('01-object-ranges.json'), '--factor', 'x'], '"x" is no number above 0'],
    [[jsonld('01-object-ranges.json'), '--factor', '2', '--units', 'stone'], '--units is us or metric'],
    [[jsonld('07-no-amounts.json'), '--portions', '3'], 'does not say how many portions'],
    [[demo, '--factor', '2'], 'There are several recipes.'],
    [[demo, '--factor', '2', '--recipe', 'none'], 'There is no recipe "none".'],
    [['README.md', '--factor', '2'], 'There is no recipe in this text.'],
    [['nowhere.json', '--factor', '2'], 'nowhere.json, and no recipe "nowhere.json"'],
  ])('%j ends with 2', async (args, message) => {
    const { code, out, err } = await brimful('scale', ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
  });
  it('says what is wrong in a recipe of our own', async () => {
    const { code, err } = await brimful('scale', await file('wrong.json', { ...own, yield: { amount: { amount: 'much', unit: 'kg' }, portions: 8 } }), '--factor', '2');
    expect(code).toBe(2);
    expect(err).toContain('cannot be used:');
  });
});

describe('shelf', () => {
  it('has the recipes of the program until the household has its own', async () => {
    const { code, out } = await brimful('shelf', 'list');
    expect(code).toBe(0);
    expect(out.split('\n').length).toBeGreaterThanOrEqual(48);
  });
  it('takes recipes in, once, and keeps them', async () => {
    const path = await file('beans.json', own);
    const before = (await brimful('shelf', 'list')).out.split('\n').length;
    expect((await brimful('shelf', 'import', path)).out).toContain('1 recipe added.');
    expect((await brimful('shelf', 'import', path)).out).toContain('1 already on the shelf');
    expect((await brimful('shelf', 'list')).out.split('\n').length).toBe(before + 1);
    expect((await brimful('shelf', 'show', 'beans')).out).toContain('750 g dry white beans, soaked');
    expect(JSON.parse((await brimful('shelf', 'show', 'Beans', '--json')).out)).toMatchObject(own);
  });
  it('keeps ours, theirs or both where they differ', async () => {
    const shelf = await file('two.brimful-shelf', { format: 'brimful-shelf/1', recipes: [own] });
    const other = await file('other.json', { ...own, name: 'Other beans' });
    expect((await brimful('shelf', 'import', other, '--file', shelf, '--keep', 'mine')).out).toContain('Your own stays as it is: beans.');
    expect((await brimful('shelf', 'import', other, '--file', shelf)).out).toContain('second name');
    expect((await brimful('shelf', 'list', '--file', shelf)).out.split('\n').map((line) => line.split(':')[0])).toEqual(['beans', 'beans-2']);
    expect((await brimful('shelf', 'import', other, '--file', shelf, '--keep', 'none')).code).toBe(2);
  });
  it('tells recipes of one name apart and joins them', async () => {
    const shelf = await file('twins.brimful-shelf', { format: 'brimful-shelf/1', recipes: [own] });
    await brimful('shelf', 'import', await file('twin.json', { ...own, notes: 'The other way.' }), '--file', shelf);
    const listed = await brimful('shelf', 'list', '--file', shelf);
    expect(listed.err).toContain('beans and beans-2');
    expect((await brimful('shelf', 'join', 'beans-2', '--file', shelf, '--keep', 'none')).code).toBe(2);
    expect((await brimful('shelf', 'join', 'beans-2', '--file', shelf, '--keep', 'both')).out).toContain('the second is now called');
    expect((await brimful('shelf', 'list', '--file', shelf)).err).toBe('');
    expect((await brimful('shelf', 'join', 'beans', '--file', shelf)).err).toContain('There is nothing to join');
  });
  it('takes in a foreign recipe when nothing is open, and names what is', async () => {
    const shelf = await file('foreign.brimful-shelf', { format: 'brimful-shelf/1', recipes: [] });
    const open = await brimful('shelf', 'import', jsonld('01-object-ranges.json'), '--file', shelf, '--role', 'vegetable');
    expect(open).toMatchObject({ code: 2, out: '' });
    expect(open.err).toContain('1-2 cloves garlic, minced: how much');
    const clear = await file('clear.json', { '@type': 'Recipe', name: 'Potatoes & salt', recipeYield: 4, recipeIngredient: ['1 kg potatoes', '10 g salt'], recipeInstructions: 'Boil.' });
    expect((await brimful('shelf', 'import', clear, '--file', shelf)).err).toContain('Say with --role');
    const taken = await brimful('shelf', 'import', clear, '--file', shelf, '--role', 'vegetable');
    expect(taken.err).toContain('counts as 1 kg');
    const read = parseShelf(await readFile(shelf, 'utf8'));
    expect(read.ok && read.shelf.recipes.map(({ id, role, yield: made, ingredients }) => [id, role, made, ingredients.map((line) => line.ingredient)])).toEqual([
      ['potatoes-salt', 'vegetable', { amount: { amount: '1010', unit: 'g' }, portions: 4 }, ['potato', 'salt']]]);
  });
  it('gives recipes out as a shelf and as JSON-LD', async () => {
    const out = join(folder, 'out.brimful-shelf');
    expect((await brimful('shelf', 'export', 'beans', '--out', out)).code).toBe(0);
    const read = parseShelf(await readFile(out, 'utf8'));
    expect(read.ok && read.shelf.recipes.map((recipe) => recipe.id)).toEqual(['beans']);
    const linked = readRecipes((await brimful('shelf', 'export', '--schema-org')).out);
    expect(linked.recipes.length).toBe((await brimful('shelf', 'list')).out.split('\n').length);
    expect(readRecipes((await brimful('shelf', 'show', 'beans', '--schema-org')).out).recipes[0]?.lines.map((line) => line.read)).toEqual(['whole', 'whole']);
  });
  it.each([[[], 'list, show, import, export or join'], [['show'], 'Name the recipe.'], [['show', 'nothing'], 'There is no recipe "nothing"'], [['import'], 'Name the file'], [['list', '--file', 'README.md'], 'cannot be used:']])('%j ends with 2', async (args, message) => {
    const { code, err } = await brimful('shelf', ...args);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});
