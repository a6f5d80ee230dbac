import { describe, expect, it } from 'vitest';
import * as edit from '../../../shared/edit';
import { formatsFor, newEvent, type Event } from '../../../shared/event';
import { sayMessage } from '../../../shared/words';

const empty = newEvent({ id: 'a', title: 'x', day: '2026-12-12' });
const formats = formatsFor(empty.preferences, empty.day);
const said = (result: edit.EditResult): string => ('problem' in result ? 'refused' : sayMessage(formats, result.name));
const done = (result: edit.EditResult): Event => {
  if ('problem' in result) throw new Error(sayMessage(formats, result.problem));
  return result.event;
};
const made = { amount: { amount: '1', unit: 'L' as const }, portions: 4 };
const ingredients = [{ ingredient: 'salt', amount: { amount: '1', unit: 'tsp' as const } }];
const tea = { id: 'ginger-tea', name: 'Ginger tea', role: 'hotDrink' as const, yield: made, ingredients, brewing: { method: 'infuse' as const, cupMl: 200, hot: true } };
const withTea = (e: Event, recipe: object = tea): Event => done(edit.addRecipe(e, recipe as Parameters<typeof edit.addRecipe>[1]));
const flask = (n: number) => ({ id: `flask-${n}`, name: `Flask ${n}`, litres: 5, insulation: 'foam' as const });

describe('one hot drink and one flask', () => {
  it('belong together, whichever came last, and the step says so', () => {
    const dishLast = edit.addDish(done(edit.addDispenser(withTea(empty), flask(1))), { id: 'tea', recipe: 'ginger-tea' });
    expect(done(dishLast).kitchen.dispensers[0]?.dish).toBe('tea');
    expect(said(dishLast)).toBe('dish Ginger tea added; Flask 1 is for Ginger tea');
    const flaskLast = edit.addDispenser(done(edit.addDish(withTea(empty), { id: 'tea', recipe: 'ginger-tea' })), flask(1));
    expect(done(flaskLast).kitchen.dispensers[0]?.dish).toBe('tea');
    expect(said(flaskLast)).toBe('flask or urn Flask 1 added; Flask 1 is for Ginger tea');
  });

  it('stay as they are where there are two of either, or the flask holds something', () => {
    const one = done(edit.addDispenser(done(edit.addDish(withTea(empty), { id: 'tea', recipe: 'ginger-tea' })), flask(1)));
    const two = edit.addDispenser(one, flask(2));
    expect(done(two).kitchen.dispensers.map((d) => d.dish)).toEqual(['tea', undefined]);
    expect(said(two)).toBe('flask or urn Flask 2 added');
  });

  it('are named by their own names when the cook chooses', () => {
    const one = done(edit.addDispenser(done(edit.addDish(withTea(empty), { id: 'tea', recipe: 'ginger-tea' })), flask(1)));
    const freed = edit.changeDispenser(one, 'flask-1', { dish: undefined });
    expect(said(freed)).toBe('Flask 1: for any drink');
    expect(said(edit.changeDispenser(done(freed), 'flask-1', { dish: 'tea' }))).toBe('Flask 1: for Ginger tea');
  });
});

describe('names of steps', () => {
  it('never hold empty brackets', () => {
    expect(said(edit.changeWave(empty, 'wave-1', { counts: { adult: 7 } }))).toBe('wave All guests changed (how many come)');
  });
});
