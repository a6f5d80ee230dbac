import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readStepTime } from '../../../shared/exchange';

describe('minutes in the words of a step', () => {
  it.each([
    ['Toast the cumin in the oil for 2 minutes', 2, 0],
    ['Chill for 30 minutes.', 0, 30],
    ['Simmer gently for 25-30 mins, stirring every 10 minutes', 0, 30],
    ['Bake for 1 hour 15 minutes', 0, 75],
    ['Bake for 1 1/2 hours until golden', 0, 90],
    ['Marinate the chicken for 2 to 4 hours', 0, 240],
    ['Soak the beans for eight hours', 0, 480],
    ['Let it stand for half an hour', 0, 30],
    ['Knead for 10 minutes, then let it rest for an hour', 10, 60],
    ['Fry the onions for five to seven minutes; add the spices and cook 1 min more', 8, 0],
    ['Fry for 2 minutes on each side', 4, 0],
    ['Boil 10 minutes, or 12 minutes for a firmer egg', 12, 0],
    ['Leave to cool for 20 min. Slice.', 0, 20],
    ['Cook over a low heat for 3–4 minutes', 4, 0],
    ['Cook for 45min', 45, 0],
  ])('%s: %d busy, %d by itself', (text, active, passive) => {
    expect(readStepTime(text)).toMatchObject({ active, passive });
  });

  it.each(['Chop the onions finely', 'Heat the oven to 180 C', 'Divide into 12 pieces', 'Stir every 5 minutes', 'After 10 minutes, turn it over', 'Add 2 tins of tomatoes and 30 g sugar', 'Mince 3 cloves'])('states none: %s', (text) => {
    expect(readStepTime(text)).toBeNull();
  });

  it('tells what runs by itself', () => {
    expect(readStepTime('Soak overnight or for 8 hours')?.does).toBe('soak');
    expect(readStepTime('Refrigerate for 30 minutes')?.does).toBe('chill');
    expect(readStepTime('Roast for 40 minutes')?.does).toBe('bake');
    expect(readStepTime('Toast for 2 minutes')?.does).toBe('other');
  });

  it('reads any whole number of minutes, and of a range the longer end', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 600 }), fc.integer({ min: 1, max: 200 }), (low, more) => {
      expect(readStepTime(`Simmer for ${low} minutes`)).toEqual({ active: 0, passive: low, does: 'simmer' });
      expect(readStepTime(`Stir for ${low} to ${low + more} minutes`)).toEqual({ active: low + more, passive: 0, does: 'other' });
    }));
  });

  it('stays within what the file holds, whatever the text', () => {
    fc.assert(fc.property(fc.string({ maxLength: 300 }), (text) => {
      const read = readStepTime(text);
      for (const value of read === null ? [] : [read.active, read.passive]) expect(value >= 0 && value <= 2880).toBe(true);
    }));
    expect(readStepTime(`Soak for ${'9'.repeat(30)} hours`)?.passive ?? 0).toBeLessThanOrEqual(2880);
  });
});
