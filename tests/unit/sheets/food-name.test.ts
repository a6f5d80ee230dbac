import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodName } from '../../../shared/sheets';
import { foodTitle, midSentence } from '../../../shared/sheets/food-name';
import { ingredients } from '../../../shared/reference';

describe('the name of a food beside an amount', () => {
  it.each([
    ['Salt, fine', 'fine salt'], ['Sugar, white', 'white sugar'], ['Chickpea flour', 'chickpea flour'],
    ['Lemons, for juice', 'lemon juice'], ['Limes, for juice', 'lime juice'], ['Berries, for juice', 'berry juice'],
    ['Lemons, used whole', 'whole lemons'], ['Beans, canned, drained', 'drained canned beans'], ['Red chillies, dried, whole', 'whole dried red chillies'],
    ['Cardamom, pods', 'cardamom pods'], ['Cinnamon, sticks', 'cinnamon sticks'], ['White fish, fillet', 'white fish fillet'],
    ['UHT milk, whole', 'whole UHT milk'],
  ])('%s is said %s', (name, said) => {
    expect(foodName(name)).toBe(said);
  });

  it('leaves alone what a cook wrote at length', () => {
    expect(foodName('Flour, the good one from the mill')).toBe('flour, the good one from the mill');
    expect(foodName('A, b, c, d, e')).toBe('a, b, c, d, e');
  });

  it('begins a line with a capital', () => {
    expect(foodTitle('Salt, fine')).toBe('Fine salt');
    expect(foodTitle('Lemons, for juice')).toBe('Lemon juice');
  });

  it('leaves no comma in any name of the table, and no two foods sound the same', () => {
    const said = ingredients.map((i) => foodName(i.name));
    expect(said.filter((name) => name.includes(','))).toEqual([]);
    const twice = said.filter((name, at) => said.indexOf(name) !== at);
    expect(twice).toEqual([]);
  });

  it('never loses a letter of a name without a comma', () => {
    fc.assert(fc.property(fc.string({ maxLength: 20 }).filter((s) => !s.includes(', ')), (name) => {
      expect(foodName(name)).toBe(midSentence(name));
      expect(foodName(name).toLowerCase()).toBe(name.toLowerCase());
    }));
  });
});
