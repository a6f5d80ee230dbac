import { describe, expect, it } from 'vitest';
import { recompute } from '../../../shared/figure';
import { dish, fig, found, judge, recipe, stands, task, type Given } from './subject';

const step = (id: string, does: string, fixed: number, rest: Readonly<Record<string, unknown>> = {}) => ({ id, name: id, does, passive: { fixed }, ...rest });
const cold = { keeps: { place: 'cold', minutes: 1440 } };
const made = (steps: readonly unknown[], ingredients: readonly string[] = ['potato'], rest = {}) => dish(recipe('d', ingredients, { steps, ...rest }));
const precautions = (p: Readonly<Record<string, unknown>>, more: Readonly<Record<string, unknown>> = {}) => ({ event: { precautions: p, ...more } });

const eggs = (p: Readonly<Record<string, unknown>>, kitchen = {}, ingredients = ['egg']): Given => ({ dishes: [made([], ingredients)], ...precautions(p, { kitchen }) });
describe('CH-04: shell eggs', () => {
  it('warns where they stand in a warm room, with the temperature of the room', () => expect(found(judge(eggs({ eggsChilled: false }, { roomC: 22 })), 'CH-04')).toMatchObject([{ level: 'warn', measured: { value: 22, unit: 'degC' }, limit: { value: 7, unit: 'degC' } }]));
  it('warns where the fridge itself is too warm', () => expect(found(judge(eggs({ eggsChilled: true }, { fridgeC: 7.5 })), 'CH-04')).toMatchObject([{ measured: { value: 7.5 } }]));
  it('is in order at 7 °C, in a cool larder, and without eggs', () => {
    expect(stands(judge(eggs({ eggsChilled: true }, { fridgeC: 7 })), 'CH-04')).toBe('in order');
    expect(stands(judge(eggs({ eggsChilled: false }, { roomC: 6 })), 'CH-04')).toBe('in order');
    expect(stands(judge(eggs({ eggsChilled: false }, { roomC: 22 }, ['potato'])), 'CH-04')).toBe('in order');
  });
  it('asks where they stand, and then for the fridge', () => {
    expect(judge(eggs({})).notChecked.find((n) => n.rule === 'CH-04')?.needs).toEqual({ id: 'safety.needs.fact', params: { field: 'eggsChilled' } });
    expect(judge(eggs({ eggsChilled: true }, { fridgeC: null })).notChecked.find((n) => n.rule === 'CH-04')?.needs.id).toBe('safety.needs.fridge');
  });
});

const hot = (cookedC: number | undefined, ingredients: readonly string[], place = 'hot'): Given => ({ dishes: [made([], ingredients)], holding: { d: { place, temperatureC: 65 } }, ...precautions(cookedC === undefined ? {} : { cookedC }) });
describe('ED-01 and ED-02: off the heat, to wait hot', () => {
  it.each([[67.9, ['stop']], [68, []]] as const)('ED-01: an egg dish at %f °C', (c, levels) => expect(found(judge(hot(c, ['egg', 'potato'])), 'ED-01').map((f) => f.level)).toEqual(levels));
  it.each([[56.9, ['stop']], [57, []]] as const)('ED-02: vegetables at %f °C', (c, levels) => expect(found(judge(hot(c, ['potato'])), 'ED-02').map((f) => f.level)).toEqual(levels));
  it('names what was measured and the limit of each', () => {
    expect(found(judge(hot(50, ['egg'])), 'ED-01')).toMatchObject([{ measured: { value: 50 }, limit: { value: 68 }, about: ['d'] }]);
    expect(found(judge(hot(50, ['potato'])), 'ED-02')).toMatchObject([{ measured: { value: 50 }, limit: { value: 57 } }]);
  });
  it('judge each its own dishes, and only those that wait hot', () => {
    expect(stands(judge(hot(50, ['egg'])), 'ED-02')).toBe('in order');
    expect(stands(judge(hot(50, ['potato'])), 'ED-01')).toBe('in order');
    expect(stands(judge(hot(50, ['egg'], 'counter')), 'ED-01')).toBe('in order');
  });
  it('ask how hot it leaves the heat', () => expect([stands(judge(hot(undefined, ['egg'])), 'ED-01'), stands(judge(hot(undefined, ['potato'])), 'ED-02')]).toEqual(['needs', 'needs']));
});

// Mixed until 10:00 (600), in the cold at `chilled`.
const dip = (chilled: number, rest: Readonly<Record<string, unknown>> = {}): Given => ({
  dishes: [made([{ ...step('m', 'mix', 0), active: { fixed: 10 } }, step('c', 'chill', 60, cold)], ['yoghurt'], rest)], holding: { d: { place: 'cold', temperatureC: 4 } },
  tasks: [task('step/m/d', 'step', 590, 600, { dish: 'd' }), task('step/c/d', 'step', chilled - 60, chilled, { dish: 'd' })],
});
describe('CO-02: mixed cold and chilled', () => {
  it('warns after four hours, and shows the hours worked out', () => {
    const [f] = found(judge(dip(841)), 'CO-02');
    expect(f).toMatchObject({ level: 'warn', limit: { value: 4, unit: 'h' } });
    expect(f?.measured.value).toBeCloseTo(241 / 60, 12);
    expect(f?.figure === undefined ? 0 : recompute(f.figure.working())).toBeCloseTo(241 / 60, 12);
  });
  it('is in order at four hours', () => expect(stands(judge(dip(840)), 'CO-02')).toBe('in order'));
  it('counts to the first portion where no step chills', () => {
    const g: Given = { dishes: [{ ...made([{ ...step('m', 'mix', 0), active: { fixed: 10 } }], ['yoghurt']), firstServed: 850 }], holding: { d: { place: 'cold', temperatureC: 4 } }, tasks: [task('step/m/d', 'step', 590, 600, { dish: 'd' })] };
    expect(found(judge(g), 'CO-02')).toHaveLength(1);
  });
  it('leaves alone what goes into the cold at once, what is cooked, and batter', () => {
    const atOnce: Given = { ...dip(2000), dishes: [made([{ ...step('m', 'mix', 0), active: { fixed: 10 }, ...cold }], ['yoghurt'])] };
    const cooked: Given = { ...dip(2000), dishes: [made([step('b', 'boil', 20), step('m', 'mix', 10), step('c', 'chill', 60, cold)], ['potato'])] };
    const batter = dip(2000, { frying: { pieceBatterG: 25, fryMinutes: 4 } });
    for (const g of [atOnce, cooked, batter]) expect(stands(judge(g), 'CO-02')).toBe('in order');
  });
});

const soup = (kg: number): Pick<Given, 'dishes'> => ({ dishes: [{ ...made([step('b', 'simmer', 30), step('c', 'cool', 60, cold)]), totalFigure: fig(kg, 'kg') }] });
const trays = (kg: number, p: Readonly<Record<string, unknown>>): Given => ({ ...soup(kg), ...precautions(p) });
const asks = (p: Readonly<Record<string, unknown>>) => judge(trays(7.2, p)).notChecked.find((n) => n.rule === 'CO-03')?.needs;
describe('CO-03: how deep it lies', () => {
  const two = { coolTrays: 2, coolTrayLongCm: 30, coolTrayWideCm: 20 };
  it('warns above 5 cm, says how many trays are wanted, and shows the depth worked out', () => {
    const [f] = found(judge(trays(7.2, two)), 'CO-03');
    // 7.2 L = 7,200 cubic centimetres over 2 x 30 x 20 cm = 1,200: 6 cm. 7,200 / (5 x 600) = 2.4: three trays.
    expect(f).toMatchObject({ level: 'warn', measured: { value: 6, unit: 'cm' }, limit: { value: 5, unit: 'cm' }, message: { params: { cm: 6, need: 3 } } });
    expect(f?.figure === undefined ? 0 : recompute(f.figure.working())).toBe(6);
  });
  it('works the same in grams', () => {
    const g: Given = { ...trays(7.2, two), dishes: [{ ...made([step('b', 'simmer', 30), step('c', 'cool', 60, cold)]), totalFigure: fig(7200, 'g') }] };
    const [f] = found(judge(g), 'CO-03');
    expect(f?.figure === undefined ? 0 : recompute(f.figure.working())).toBeCloseTo(6, 12);
  });
  it('is in order at 5 cm, and for what is not kept cold', () => {
    expect(stands(judge(trays(6, two)), 'CO-03')).toBe('in order');
    expect(stands(judge({ dishes: [{ ...made([step('b', 'simmer', 30)]), totalFigure: fig(90, 'kg') }], ...precautions(two) }), 'CO-03')).toBe('in order');
  });
  it('asks for trays, then for their floor', () => {
    expect([asks({}), asks({ coolTrays: 2 }), asks({ coolTrays: 2, coolTrayLongCm: 30 })].map((n) => (n?.id === 'safety.needs.fact' ? n.params.field : ''))).toEqual(['coolTrays', 'coolTrayLongCm', 'coolTrayWideCm']);
  });
});
describe('CO-04: whole in its pot', () => {
  it('stops above 4 litres', () => expect(found(judge(trays(4.1, { coolTrays: 0 })), 'CO-04')).toMatchObject([{ level: 'stop', measured: { value: 4.1 }, limit: { value: 4 } }]));
  it('is in order at 4 litres, and in trays', () => expect([stands(judge(trays(4, { coolTrays: 0 })), 'CO-04'), stands(judge(trays(9, { coolTrays: 1 })), 'CO-04')]).toEqual(['in order', 'in order']));
  it('asks how it cools, and the general caution is silent once it is said', () => {
    expect(stands(judge(trays(9, {})), 'CO-04')).toBe('needs');
    expect([stands(judge(trays(9, {})), 'CO-06'), stands(judge(trays(9, { coolTrays: 0 })), 'CO-06')]).toEqual(['found', 'in order']);
  });
});

const tin = (temperatureC: number | undefined): Given => ({ dishes: [made([step('r', 'reheat', 10)], ['beans-canned'])], holding: { d: { place: 'hot', ...(temperatureC === undefined ? {} : { temperatureC }) } } });
const warm = (way: string | undefined, stand: number): Given => ({ dishes: [made([step('r', 'reheat', stand, { active: { fixed: 4 } })])], ...precautions(way === undefined ? {} : { reheatIn: way }) });
describe('RH-02 and RH-03: reheating', () => {
  it.each([[1, ['caution']], [2, []]] as const)('RH-02: %d minutes to stand after the microwave', (m, levels) => expect(found(judge(warm('microwave', m)), 'RH-02').map((f) => f.level)).toEqual(levels));
  it('RH-02 is silent for pot and oven, asks when nothing is said, and wants nothing where nothing is reheated', () => {
    expect([stands(judge(warm('pot', 0)), 'RH-02'), stands(judge(warm('oven', 0)), 'RH-02'), stands(judge(warm(undefined, 0)), 'RH-02'), stands(judge({}), 'RH-02')]).toEqual(['in order', 'in order', 'needs', 'in order']);
  });
  it('RH-03: food from a sealed tin is held like any other, and told there', () => {
    expect(found(judge(tin(56)), 'HH-01')).toMatchObject([{ limit: { value: 57 } }]);
    expect([stands(judge(tin(57)), 'HH-01'), stands(judge(tin(57)), 'RH-03'), stands(judge(tin(undefined)), 'RH-03')]).toEqual(['in order', 'in order', 'needs']);
  });
});

const kept = (value: number, rest = {}): Given => ({ dishes: [made([], ['potato'], rest)], event: { houseFigures: [{ figure: 'prep.leftoverDays', value, unit: 'd', why: 'habit' }] } });
describe('LO-01: how long leftovers keep', () => {
  it('warns above three days, with the days in force', () => {
    const [f] = found(judge(kept(4)), 'LO-01');
    expect(f).toMatchObject({ level: 'warn', measured: { value: 4, unit: 'd' }, limit: { value: 3, unit: 'd' } });
    expect(f?.figure === undefined ? 0 : recompute(f.figure.working())).toBe(4);
  });
  it('is in order at three days, and where nothing is left', () => {
    expect(stands(judge(kept(3)), 'LO-01')).toBe('in order');
    expect(stands(judge(kept(4, { role: 'preserve' })), 'LO-01')).toBe('in order');
  });
});

const pot = (steps: readonly unknown[], ingredients = ['red-lentils'], rest = {}): Given => ({ dishes: [made(steps, ingredients, rest)] });
describe('PR-09: beans and lentils of every kind are cooked', () => {
  it('cautions where no step puts them on the heat', () => expect(found(judge(pot([step('s', 'soak', 60), step('m', 'mix', 10)])), 'PR-09')).toMatchObject([{ level: 'caution', measured: { value: 0, unit: 'min' } }]));
  it.each(['boil', 'simmer', 'bake', 'griddle'])('is in order where they %s', (does) => expect(stands(judge(pot([step('b', does, 20)])), 'PR-09')).toBe('in order'));
  it('counts minutes for each kilogram too', () => expect(stands(judge(pot([{ id: 'b', name: 'b', does: 'boil', passive: { perKg: 10 } }])), 'PR-09')).toBe('in order'));
  it('leaves the beans of PR-01, flour, sprouts and what is fried to others', () => {
    for (const g of [pot([step('s', 'soak', 60)], ['kidney-beans-dry']), pot([step('m', 'mix', 5)], ['chickpea-flour']), pot([step('s', 'sprout', 5)], ['mung-beans']), pot([step('s', 'soak', 5)], ['red-lentils'], { frying: { pieceBatterG: 25, fryMinutes: 4 } })]) expect(stands(judge(g), 'PR-09')).toBe('in order');
  });
  it('asks for steps where none are written', () => expect(stands(judge(pot([])), 'PR-09')).toBe('needs'));
});
