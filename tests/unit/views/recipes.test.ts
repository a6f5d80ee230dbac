import { assert, constantFrom, integer, array, property, string } from 'fast-check';
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { removeRecipe, type EditResult } from '../../../shared/edit';
import { newEvent, parseEvent, roleIds, serialiseEvent, stepSchema, type Event, type Recipe } from '../../../shared/event';
import { readRecipes, weightOfLines, type ImportedRecipe } from '../../../shared/exchange';
import { parseShelf } from '../../../shared/household';
import { ingredient } from '../../../shared/reference';
import { byRole, findRecipes } from '../../../src-renderer/views/menu/recipes/find-recipes';
import { firstAnswer, keptLines, openLines, ownFood, ownName, settle, startAmount, startFood, typedAnswer } from '../../../src-renderer/views/menu/recipes/line-answer';
import { moved } from '../../../src-renderer/views/menu/recipes/moved';
import { duplicateRecipe, freeId, putOnMenu, shortName } from '../../../src-renderer/views/menu/recipes/put-on-menu';
import { otherNamedRecipes, otherNamesOf } from '../../../src-renderer/views/menu/recipes/search-words';
import { finish, firstForm, weighed } from '../../../src-renderer/views/menu/recipes/settle-form';
import { pastedRecipes } from '../../../src-renderer/views/menu/recipes/text-recipe';
import { withoutStep } from '../../../src-renderer/views/menu/recipes/without-step';

const shelf = ((): readonly Recipe[] => {
  const read = parseShelf(readFileSync('assets/app/shelf/starter.brimful-shelf', 'utf8'));
  if (!read.ok) throw new Error('expected the starter shelf');
  return read.shelf.recipes;
})();
const recipe = (id: string): Recipe => {
  const found = shelf.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const empty = newEvent({ id: 'e', title: 'E', day: '2026-12-12' });
const done = (result: EditResult): Event => {
  if ('problem' in result) throw new Error(result.problem.id);
  return result.event;
};
const page04 = readFileSync('tests/sources/jsonld/04-page-two-scripts.html', 'utf8');
const only = (found: { readonly recipes: readonly ImportedRecipe[] }): ImportedRecipe => {
  const [first] = found.recipes;
  if (first === undefined || found.recipes.length !== 1) throw new Error('expected one recipe');
  return first;
};
const entry = ({ amount, unit }: { readonly amount: string; readonly unit: string }) => `${amount} ${unit}`;
const wordsOf = (one: Recipe) => one.ingredients.map((line) => ingredient(line.ingredient)?.name ?? '').join(' ');

describe('putting a recipe on the menu', () => {
  it('copies what the event uses into it, and the file still opens', () => {
    for (const one of shelf) {
      const event = done(putOnMenu(empty, one));
      expect(event.recipes).toEqual([one]);
      expect(event.menu.dishes.map((dish) => dish.recipe)).toEqual([one.id]);
      expect(parseEvent(serialiseEvent(event)).ok, one.id).toBe(true);
    }
  });

  it('uses the recipe the event has, as it was changed there, and gives a second dish a name of its own', () => {
    const first = done(putOnMenu(empty, recipe('ginger-tea')));
    const changed = { ...first, recipes: first.recipes.map((own) => ({ ...own, name: 'My tea' })) };
    const second = done(putOnMenu(changed, recipe('ginger-tea')));
    expect(second.recipes.map((own) => own.name)).toEqual(['My tea']);
    expect(second.menu.dishes.map((dish) => dish.id)).toEqual(['ginger-tea', 'ginger-tea-1']);
  });

  it('duplicates under another name; the one in use stays, the other can go', () => {
    const event = done(putOnMenu(empty, recipe('ginger-tea')));
    const second = duplicateRecipe(event, 'ginger-tea', 'Ginger tea, second way');
    expect(second?.id).toBe('ginger-tea-second-way');
    const both = second === null ? event : done(second.result);
    expect(both.recipes).toHaveLength(2);
    expect('problem' in removeRecipe(both, 'ginger-tea')).toBe(true);
    expect(done(removeRecipe(both, 'ginger-tea-second-way')).recipes).toEqual(event.recipes);
    expect(duplicateRecipe(event, 'nothing', 'x')).toBeNull();
  });

  it('makes short names the event takes, of any name', () => {
    assert(property(string({ maxLength: 200, unit: 'grapheme' }), (name) => {
      expect(shortName(name)).toMatch(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/);
    }), { numRuns: 500 });
    expect(shortName('Crème brûlée & co.')).toBe('creme-brulee-co');
    expect(freeId([{ id: 'a' }, { id: 'a-1' }], 'A')).toBe('a-2');
    expect(freeId([], 'A')).toBe('a');
  });
});

describe('finding a recipe', () => {
  it('by the beginnings of words of its name or its ingredients, accents or not', () => {
    expect(findRecipes(shelf, 'ging te', wordsOf).map((one) => one.id)).toContain('ginger-tea');
    expect(findRecipes(shelf, 'chickpea flour', wordsOf).map((one) => one.id)).toContain('greens-fritters');
    expect(findRecipes(shelf, 'nothing at all like it', wordsOf)).toEqual([]);
    expect(findRecipes(shelf, '  ', wordsOf)).toBe(shelf);
  });

  it.each([
    ['chili', 'blistered-peppers'], ['chilli', 'blistered-peppers'], ['fried chillies', 'blistered-peppers'], ['chilli peppers', 'blistered-peppers'], ['salted peppers', 'blistered-peppers'],
    ['chai', 'spiced-milk-tea'], ['tea with milk', 'spiced-milk-tea'], ['milk tea', 'spiced-milk-tea'], ['greens fritters', 'greens-fritters'], ['fritters with onion', 'onion-fritters'], ['pakora', 'onion-fritters'],
    ['zucchini', 'courgette-corn-fritters'], ['eggplant', 'aubergine-rounds'], ['yogurt dip', 'mint-yoghurt-dip'], ['dip with yogurt', 'mint-yoghurt-dip'], ['dal', 'split-peas-tomato'], ['CHAÍ', 'spiced-milk-tea'], ['cilantro', 'green-herb-dip'],
  ])('finds by other words and spellings: %s', (typed, id) => {
    expect(findRecipes(shelf, typed, wordsOf).map((one) => one.id)).toContain(id);
  });

  it('finds the same in any order of the words, and not everything', () => {
    for (const typed of ['chilli', 'chai', 'fritters', 'milk tea']) {
      const found = findRecipes(shelf, typed, wordsOf);
      expect(found.length).toBeGreaterThan(0);
      expect(found.length).toBeLessThan(shelf.length / 2);
      expect(findRecipes(shelf, typed.split(' ').toReversed().join(' '), wordsOf)).toEqual(found);
    }
  });

  it('knows other names only of recipes that are there', () => {
    for (const one of shelf) for (const word of otherNamesOf(one.id).split(' ')) expect(findRecipes([one], word, () => '')).toEqual([one]);
    expect(otherNamedRecipes.filter((id) => !shelf.some((one) => one.id === id))).toEqual([]);
  });

  it('groups every recipe once, in the order of the meal', () => {
    const groups = byRole(shelf);
    expect(groups.flatMap((group) => group.recipes)).toHaveLength(shelf.length);
    expect(groups.map((group) => group.role)).toEqual(roleIds.filter((role) => groups.some((group) => group.role === role)));
    for (const { recipes } of groups) expect(recipes.map((one) => one.name)).toEqual(recipes.map((one) => one.name).toSorted((a, b) => a.localeCompare(b, 'en')));
  });
});

describe('a pasted text', () => {
  it('is read as a saved page', () => {
    expect(only(pastedRecipes(page04)).name).toBe('Ginger & lemon tea');
  });

  it('is read as plain lines, of which none is lost', () => {
    const found = only(pastedRecipes('Leek soup\nServes 8\nIngredients:\n1 kg leeks, sliced\n1.5 l water\na bit of luck\nMethod\n1. Boil.\nServe hot.'));
    expect(found.name).toBe('Leek soup');
    expect(found.yield.portions?.low.toNumber()).toBe(8);
    expect(found.lines.map((line) => line.text)).toEqual(['1 kg leeks, sliced', '1.5 l water', 'a bit of luck']);
    expect(found.steps.map((step) => step.text)).toEqual(['Boil.', 'Serve hot.']);
  });

  it('takes numbered lines as steps where no heading stands', () => {
    const found = only(pastedRecipes('Tea\n2 l water\n1. Boil the water\n2. Pour'));
    expect(found.lines).toHaveLength(1);
    expect(found.steps.map((step) => step.text)).toEqual(['Boil the water', 'Pour']);
  });

  it.each(['', 'one line only', '<html><p>no recipe</p></html>', '{"@type": "Recipe", "name": "cut off', 'x'.repeat(30_000)])('says so when there is none: %#', (text) => {
    const found = pastedRecipes(text);
    expect(found.recipes).toEqual([]);
    expect(found.problems.length).toBeGreaterThan(0);
  });

  it('never throws', () => {
    assert(property(array(constantFrom('2 kg onions', 'Method', '<script', '{', '"', 'Serves', '1.', '½', 'Ingredients', ':'), { maxLength: 20 }), (parts) => {
      expect(Array.isArray(pastedRecipes(parts.join('\n')).recipes)).toBe(true);
    }), { numRuns: 300 });
  });
});

describe('settling a line', () => {
  it('counts as settled by itself only when it is sure', () => {
    expect(typedAnswer('2 kg onions, finely cut').settled).toMatchObject({ ingredient: 'onion', amount: { amount: '2', unit: 'kg' }, preparation: 'finely cut' });
    for (const open of ['onions', '1-2 onions', '500 g spinach', '2 kg moon roots']) expect(typedAnswer(open).settled, open).toBeNull();
  });

  it('starts from a sure food and from none else', () => {
    expect(startFood(typedAnswer('1-2 kg onions').proposal)).toBe('onion');
    expect(startFood(typedAnswer('500 g spinach').proposal)).toBe('');
    expect(ownFood(typedAnswer('2 kg moon roots').proposal)).toBe('moon-roots');
  });

  const filled = { food: 'onion', amount: '2 kg', preparation: ' cut ', toTaste: false };
  it('takes what the cook filled in', () => {
    expect(settle(filled)).toEqual({ ingredient: 'onion', amount: { amount: '2', unit: 'kg' }, preparation: 'cut' });
    expect(settle({ ...filled, food: 'moon-roots', amount: '3', preparation: '', toTaste: true })).toEqual({ ingredient: 'moon-roots', amount: { amount: '3', unit: 'piece' }, toTaste: true });
  });

  it('takes a handful by hand, to taste, and says how it was said', () => {
    expect(settle({ ...filled, food: 'parsley', amount: 'a handful', preparation: 'chopped' })).toEqual({ ingredient: 'parsley', amount: { amount: '25', unit: 'g' }, preparation: '1 handful, chopped', toTaste: true });
    expect(settle({ ...filled, food: 'moon-roots', amount: '2 handfuls', preparation: '' })).toMatchObject({ amount: { amount: '80', unit: 'g' }, toTaste: true });
    const open = typedAnswer('1 handful parsley').proposal;
    expect(startAmount(open, entry)).toBe('1 handful');
    expect(startAmount(typedAnswer('1-2 cloves garlic').proposal, entry)).toBe('1 clove');
  });

  it('keeps what she calls a food the table does not have, word for word', () => {
    const { proposal } = typedAnswer("80 ml grandma's special stuff");
    expect(ownName(proposal)).toBe("grandma's special stuff");
    expect(ownFood(proposal)).toBe('grandmas-special-stuff');
    expect(settle({ food: ownFood(proposal), called: ownName(proposal), amount: '80 ml', preparation: '', toTaste: false })).toMatchObject({ called: "grandma's special stuff" });
    expect(settle({ food: 'onion', called: ownName(proposal), amount: '80 ml', preparation: '', toTaste: false })).not.toHaveProperty('called');
  });

  it.each([
    [{ food: '' }, 'food', 'view.recipes.needsFood'], [{ amount: ' ' }, 'amount', 'view.recipes.needsAmount'], [{ amount: 'a lot' }, 'amount', 'view.recipes.amountUnread'],
    [{ food: 'ginger-root', amount: '1 piece' }, 'amount', 'view.recipes.noPieceWeight'],
  ] as const)('says at which field %j does not do', (part, field, id) => {
    expect(settle({ ...filled, ...part })).toMatchObject({ field, problem: { id } });
  });
});

const own = (text: string, food: string) => {
  const line = settle({ food, amount: text, preparation: '', toTaste: false });
  if ('problem' in line) throw new Error('expected a line');
  return { ...typedAnswer(text), settled: line };
};

describe('finishing a recipe taken in', () => {
  const imported = only(pastedRecipes(page04));
  const answers = imported.lines.map(firstAnswer);
  const settledAll = answers.map((answer) => {
    const result = answer.settled ?? settle({ food: 'ginger-root', amount: '30 g', preparation: '', toTaste: false });
    if (result !== 'leaveOut' && 'problem' in result) throw new Error('expected a line');
    return { ...answer, settled: result };
  });
  const form = { ...firstForm(imported, entry), role: 'soup' };

  it('starts from what the recipe says and leaves the rest open', () => {
    expect(firstForm(imported, entry)).toEqual({ name: 'Ginger & lemon tea', role: '', portions: '6', made: '' });
    expect(openLines(answers)).toBe(1);
  });

  it('says what is missing at each field', () => {
    const result = finish(empty, imported, answers, { name: ' ', role: '', portions: 'x', made: '' });
    expect('problems' in result && Object.keys(result.problems).sort()).toEqual(['lines', 'name', 'portions', 'role']);
    expect(finish(empty, imported, settledAll, { ...form, made: 'a pot' })).toMatchObject({ problems: { made: { id: 'view.recipes.needsYield' } } });
    expect(finish(empty, imported, settledAll.map((one) => ({ ...one, settled: 'leaveOut' as const })), form)).toMatchObject({ problems: { lines: { id: 'view.recipes.needsLines' } } });
  });

  it('takes the weight of what goes in where nobody wrote the yield', () => {
    expect(weighed([])).toBeNull();
    expect(weighed(settledAll)).toMatchObject({ amount: weightOfLines(keptLines(settledAll)), without: [] });
    const result = finish(empty, imported, settledAll, form);
    if (!('recipe' in result)) throw new Error('expected a recipe');
    expect(result.recipe.yield.amount).toMatchObject(weightOfLines(keptLines(settledAll)) ?? {});
    expect(result.recipe.ingredients).toHaveLength(5);
    expect(parseEvent(serialiseEvent(done(putOnMenu(empty, result.recipe)))).ok).toBe(true);
  });

  it('starts the yield from what can be weighed, names what cannot, and asks only when nothing can', () => {
    const some = [own('2 kg', 'onion'), own('3', 'moon-roots'), own('80 ml', 'special-stuff')];
    expect(weighed(some)).toEqual({ amount: { amount: '2080', unit: 'g' }, without: ['moon roots'] });
    expect(finish(empty, { ...imported, lines: [] }, some, { ...form, made: '' })).toMatchObject({ recipe: { yield: { amount: { amount: '2080', unit: 'g' } } } });
    expect(finish(empty, { ...imported, lines: [] }, [own('3', 'moon-roots')], { ...form, made: '' })).toMatchObject({ problems: { made: { id: 'view.recipes.needsYield' } } });
  });

  it('takes the minutes of the steps as she confirmed them', () => {
    const plain = only(pastedRecipes('Dal\nServes 6\n500 g potatoes\nMethod\nToast the cumin in the oil for 2 minutes\nChill for 30 minutes\nServe'));
    const lines = plain.lines.map(firstAnswer);
    const minutesOf = (steps?: Parameters<typeof finish>[4]) => {
      const result = finish(empty, plain, lines, { ...firstForm(plain, entry), role: 'soup' }, steps);
      if (!('recipe' in result)) throw new Error(JSON.stringify(result.problems));
      return result.recipe.steps.map((step) => [step.active.fixed, step.passive.fixed]);
    };
    expect(minutesOf()).toEqual([[2, 0], [0, 30], [0, 0]]);
    expect(minutesOf([{ active: 3, passive: 0, does: 'other' }, { active: 1, passive: 45, does: 'chill' }, { active: 2, passive: 0, does: 'other' }])).toEqual([[3, 0], [1, 45], [2, 0]]);
  });

  it('keeps the yield as written', () => {
    const result = finish(empty, imported, settledAll, { ...form, made: '1.4 l', portions: '7½' });
    expect('recipe' in result && result.recipe.yield).toMatchObject({ amount: { amount: '1.4', unit: 'L' }, portions: 7.5 });
  });

  it('every saved example shows all its lines, settled or not', () => {
    for (const file of readdirSync('tests/sources/jsonld')) {
      for (const one of readRecipes(readFileSync(`tests/sources/jsonld/${file}`, 'utf8')).recipes) {
        const shown = one.lines.map(firstAnswer);
        expect(shown.map(({ proposal }) => proposal.line.text)).toEqual(one.lines.map((line) => line.text));
        expect(openLines(shown) + keptLines(shown).length).toBe(one.lines.length);
      }
    }
  });
});

describe('the order of a list', () => {
  it('moves one place and loses nothing', () => {
    expect(moved(['a', 'b', 'c'], 0, 1)).toEqual(['b', 'a', 'c']);
    expect(moved(['a', 'b', 'c'], 2, -1)).toEqual(['a', 'c', 'b']);
    expect(moved(['a', 'b'], 1, 1)).toEqual(['a', 'b']);
    assert(property(array(integer(), { maxLength: 8 }), integer({ min: -1, max: 9 }), constantFrom(-1 as const, 1 as const), (list, at, by) => {
      expect(moved(list, at, by).toSorted((a, b) => a - b)).toEqual(list.toSorted((a, b) => a - b));
    }));
  });

  it('taking a step out, what followed it follows what was before it', () => {
    const steps = ['a', 'b', 'c'].map((id, at) => stepSchema.parse({ id, name: id, after: at === 0 ? [] : [['a', 'b'][at - 1]] }));
    expect(withoutStep(steps, 'b').map((step) => [step.id, step.after])).toEqual([['a', []], ['c', ['a']]]);
    expect(withoutStep(steps, 'a').map((step) => step.after)).toEqual([[], ['b']]);
  });
});
