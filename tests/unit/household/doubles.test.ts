import { assert, array, constantFrom, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeSchema, type Recipe } from '../../../shared/event';
import { checkShelf, doublesOf, freeName, joinDoubles, nameKey, parseShelf, serialiseShelf, shelfFormat, type Shelf } from '../../../shared/household';
import { shelvedWith, onShelf } from '../../../src-renderer/views/menu/recipes/shelf-store';

const recipe = (id: string, name: string, grams = 100): Recipe =>
  recipeSchema.parse({ id, name, role: 'soup', yield: { amount: { amount: '1', unit: 'kg' }, portions: 4 }, ingredients: [{ ingredient: 'onion', amount: { amount: String(grams), unit: 'g' } }] });
const shelfOf = (...recipes: Recipe[]): Shelf => ({ format: shelfFormat, recipes });
const leek = recipe('leek', 'Leek soup');
const other = recipe('leek-2', 'leek  Soup', 300);
const names = (shelf: Shelf) => shelf.recipes.map((one) => [one.id, one.name]);

describe('two recipes of one name', () => {
  it('are found whatever the capitals, marks and spaces', () => {
    expect(doublesOf(shelfOf(leek, recipe('pea', 'Pea soup'), other)).map(({ first, second, isSame }) => [first.id, second.id, isSame])).toEqual([['leek', 'leek-2', false]]);
    expect(doublesOf(shelfOf(recipe('a', 'Crème'), recipe('b', 'creme'))).map(({ isSame }) => isSame)).toEqual([true]);
    expect(doublesOf(shelfOf(leek, recipe('pea', 'Pea soup')))).toEqual([]);
  });

  it('are each told with the first of the name', () => {
    expect(doublesOf(shelfOf(leek, other, recipe('leek-3', 'LEEK SOUP'))).map(({ first, second }) => [first.id, second.id])).toEqual([['leek', 'leek-2'], ['leek', 'leek-3']]);
  });

  it('are joined as the cook chooses', () => {
    const shelf = shelfOf(leek, recipe('pea', 'Pea soup'), other);
    expect(names(joinDoubles(shelf, 'leek', 'leek-2', 'ours'))).toEqual([['leek', 'Leek soup'], ['pea', 'Pea soup']]);
    const theirs = joinDoubles(shelf, 'leek', 'leek-2', 'theirs');
    expect(names(theirs)).toEqual([['leek', 'leek  Soup'], ['pea', 'Pea soup']]);
    expect(theirs.recipes[0]?.ingredients[0]?.amount.amount).toBe('300');
    expect(names(joinDoubles(shelf, 'leek', 'leek-2', 'both'))).toEqual([['leek', 'Leek soup'], ['pea', 'Pea soup'], ['leek-2', 'leek  Soup (2)']]);
  });

  it('stay as they are when a short name is not there, or is the same', () => {
    const shelf = shelfOf(leek, other);
    expect(joinDoubles(shelf, 'leek', 'nothing', 'ours')).toBe(shelf);
    expect(joinDoubles(shelf, 'leek', 'leek', 'theirs')).toBe(shelf);
  });

  it('end when each was joined, and the shelf still reads', () => {
    assert(property(array(constantFrom('Leek soup', 'Pea soup', 'pea soup', 'Léek soup', 'Bean pot'), { maxLength: 9 }), constantFrom('ours' as const, 'theirs' as const, 'both' as const), (list, choice) => {
      let shelf = shelfOf(...list.map((name, at) => recipe(`r${at}`, name, 10 + at)));
      const before = new Set(shelf.recipes.map((one) => nameKey(one.name)));
      for (let round = 0; round < 20; round++) {
        const [double] = doublesOf(shelf);
        if (double === undefined) break;
        shelf = joinDoubles(shelf, double.first.id, double.second.id, choice);
      }
      expect(doublesOf(shelf)).toEqual([]);
      expect(checkShelf(shelf)).toEqual([]);
      expect(shelf.recipes.length).toBe(choice === 'both' ? list.length : before.size);
      const again = parseShelf(serialiseShelf(shelf));
      expect(again.ok && again.shelf).toEqual(shelf);
    }), { numRuns: 300 });
  });

  it('get names that nobody has, within the length of a name', () => {
    expect(freeName(shelfOf(leek, recipe('l2', 'Leek soup (2)')), 'Leek soup')).toBe('Leek soup (3)');
    expect(freeName(shelfOf(leek), 'x'.repeat(120)).length).toBeLessThanOrEqual(120);
  });
});

describe('keeping a recipe on a shelf that has its name', () => {
  const mine = recipe('soup-of-leeks', 'Leek soup', 500);
  const kept = (choice: 'theirs' | 'both') => {
    const merged = shelvedWith(shelfOf(leek), mine, choice);
    if (!merged.ok) throw new Error('expected a shelf');
    return merged.shelf;
  };
  it('is seen before it happens', () => {
    expect([onShelf(shelfOf(leek), mine), onShelf(shelfOf(mine), mine), onShelf(shelfOf({ ...mine, name: 'Another' }), mine), onShelf(shelfOf(), mine)]).toEqual(['named', 'same', 'other', 'no']);
  });
  it('replaces it, or stands beside it under a name of its own', () => {
    expect(names(kept('theirs'))).toEqual([['leek', 'Leek soup']]);
    expect(kept('theirs').recipes[0]?.ingredients[0]?.amount.amount).toBe('500');
    expect(names(kept('both'))).toEqual([['leek', 'Leek soup'], ['soup-of-leeks', 'Leek soup (2)']]);
    expect(doublesOf(kept('both'))).toEqual([]);
  });
});
