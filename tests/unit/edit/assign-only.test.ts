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

describe('several drinks and flasks', () => {
  const coffee = { ...tea, id: 'coffee', name: 'Coffee' };
  const milky = { ...tea, id: 'milk-tea', name: 'Milk tea', brewing: { ...tea.brewing, method: 'boilWithMilk' as const, milkShare: 0.5 } };
  const both = [tea, coffee].reduce((e, r) => done(edit.addDish(withTea(e, r), { id: r.id, recipe: r.id })), empty);

  it('each flask added is for the first hot drink that stands nowhere yet', () => {
    const two = done(edit.addDispenser(done(edit.addDispenser(both, flask(1))), flask(2)));
    expect(two.kitchen.dispensers.map((d) => d.dish)).toEqual(['ginger-tea', 'coffee']);
  });
  it('no jug without insulation, and milk only where it is fit for milk', () => {
    expect(done(edit.addDispenser(both, { ...flask(1), insulation: 'none' })).kitchen.dispensers[0]?.dish).toBeUndefined();
    const milk = done(edit.addDish(withTea(empty, milky), { id: 'milk-tea', recipe: 'milk-tea' }));
    expect(done(edit.addDispenser(milk, flask(1))).kitchen.dispensers[0]?.dish).toBeUndefined();
    expect(done(edit.addDispenser(milk, { ...flask(1), fitForMilk: true })).kitchen.dispensers[0]?.dish).toBe('milk-tea');
  });
});

describe('fried dishes and the only fry station', () => {
  const frying = { pieceBatterG: 15, fryMinutes: 4 };
  const fried = (id: string, name: string) => ({ id, name, role: 'friedSnack' as const, yield: { amount: { amount: '1', unit: 'kg' as const }, portions: 10 }, ingredients, frying });
  const pan = { id: 'pan', name: 'Deep pan', shape: 'straight' as const, rimMm: 300, depthMm: 140, oilLitres: 2.5, burner: 'burner-1' };
  const onMenu = (e: Event, id: string, name: string): edit.EditResult => edit.addDish(withTea(e, fried(id, name)), { id, recipe: id });

  it('the first pan is a fry station for all of them, in one step that one undo takes back', () => {
    const menu = done(onMenu(done(onMenu(empty, 'rings', 'Rings')), 'puffs', 'Puffs'));
    const added = edit.addPan(menu, pan);
    expect(done(added).kitchen.stations).toEqual([{ id: 'station-1', name: 'Deep pan', pans: ['pan'], dishes: ['rings', 'puffs'] }]);
    expect(said(added)).toBe('pan Deep pan added; Deep pan is a fry station too; Deep pan is for Rings and Puffs');
  });
  it('a fried dish added later goes there too; one that was taken out of it stays out', () => {
    const one = done(edit.addPan(done(onMenu(empty, 'rings', 'Rings')), pan));
    const two = done(onMenu(one, 'puffs', 'Puffs'));
    expect(two.kitchen.stations[0]?.dishes).toEqual(['rings', 'puffs']);
    const less = done(edit.changeStation(two, 'station-1', { dishes: ['puffs'] }));
    expect(done(onMenu(less, 'bites', 'Bites')).kitchen.stations[0]?.dishes).toEqual(['puffs', 'bites']);
  });
  it('a second pan makes no second station, and with two stations nothing is guessed', () => {
    const one = done(edit.addPan(empty, pan));
    const two = done(edit.addPan(one, { ...pan, id: 'pan-2', name: 'Wok' }));
    expect(two.kitchen.stations.map((s) => s.pans)).toEqual([['pan']]);
    const stations = done(edit.addStation(two, { id: 'other', name: 'Other', pans: ['pan-2'] }));
    expect(done(onMenu(stations, 'rings', 'Rings')).kitchen.stations.map((s) => s.dishes)).toEqual([[], []]);
  });
});

describe('names of steps', () => {
  it('never hold empty brackets', () => {
    expect(said(edit.changeWave(empty, 'wave-1', { counts: { adult: 7 } }))).toBe('wave All guests changed (how many come)');
  });
});
