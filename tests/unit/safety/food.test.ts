import { describe, expect, it } from 'vitest';
import { batch, dish, found, judge, recipe, stands, task } from './subject';

const stew = dish(recipe('stew', ['potato']));
const rice = dish(recipe('rice', ['basmati-rice']));
const hot = (temperatureC?: number) => ({ stew: { place: 'hot', ...(temperatureC === undefined ? {} : { temperatureC }) } });

describe('HH-01: hot food', () => {
  it('objects below 57 °C and names value, limit and what to do', () => {
    const [f] = found(judge({ dishes: [stew], holding: hot(55) }), 'HH-01');
    expect(f).toMatchObject({ level: 'stop', measured: { value: 55, unit: 'degC' }, limit: { value: 57, unit: 'degC' }, about: ['stew'], message: { id: 'safety.say.HH-01' } });
    expect(f?.source).toContain('Food Code');
  });
  it('is in order at 57 °C', () => expect(stands(judge({ dishes: [stew], holding: hot(57) }), 'HH-01')).toBe('in order'));
  it('takes the kitchen’s hot holding when the dish has none', () =>
    expect(stands(judge({ dishes: [stew], holding: hot(), event: { kitchen: { hotHoldC: 50 } } }), 'HH-01')).toBe('found'));
  it('needs a temperature', () => expect(stands(judge({ dishes: [stew], holding: hot() }), 'HH-01')).toBe('needs'));
  it('does not judge fried pieces, which live by their batch', () => {
    const fried = dish(recipe('stew', ['chickpea-flour'], { frying: { pieceBatterG: 25, fryMinutes: 4 } }));
    expect(stands(judge({ dishes: [fried], holding: hot(40) }), 'HH-01')).toBe('in order');
  });
});

const coldAt = (temperatureC?: number) => ({ stew: { place: 'cold', ...(temperatureC === undefined ? {} : { temperatureC }) } });
describe('CH-01: cold food', () => {
  it('objects above 5 °C', () => expect(found(judge({ dishes: [stew], holding: coldAt(7) }), 'CH-01')).toMatchObject([{ level: 'stop', measured: { value: 7 }, limit: { value: 5 } }]));
  it('is in order at 5 °C', () => expect(stands(judge({ dishes: [stew], holding: coldAt(5) }), 'CH-01')).toBe('in order'));
  it('needs the fridge', () => expect(stands(judge({ dishes: [stew], holding: coldAt() }), 'CH-01')).toBe('needs'));
});

const outUntil = (lastServed: number) => [{ ...stew, lastServed }];
const heldAt = (place: string, temperatureC: number) => judge({ dishes: [stew], holding: { stew: { place, temperatureC } } });
describe('HH-02 and CH-02: no margin', () => {
  it('warns from 57 to under 60 °C, and only warns', () => {
    expect(found(heldAt('hot', 58), 'HH-02')).toMatchObject([{ level: 'warn', measured: { value: 58 }, limit: { value: 60 } }]);
    expect(stands(heldAt('hot', 58), 'HH-01')).toBe('in order');
    expect([stands(heldAt('hot', 60), 'HH-02'), stands(heldAt('hot', 50), 'HH-02')]).toEqual(['in order', 'in order']);
  });
  it('cautions over 4.4 up to 5 °C', () => {
    expect(found(heldAt('cold', 5), 'CH-02')).toMatchObject([{ level: 'caution', limit: { value: 4.4 } }]);
    expect([stands(heldAt('cold', 4.4), 'CH-02'), stands(heldAt('cold', 7), 'CH-02')]).toEqual(['in order', 'in order']);
  });
  it('needs the temperature', () => expect(stands(judge({ dishes: [stew], holding: { stew: { place: 'cold' } } }), 'CH-02')).toBe('needs'));
});

const soakedFor = (minutes: number, roomC: number) => judge({ dishes: [dish(recipe('c', ['chickpeas-dry'], { steps: [{ id: 's', name: 'Soak', does: 'soak', passive: { fixed: minutes } }] }))], event: { kitchen: { roomC } } });
describe('PR-03: soaking in a warm kitchen', () => {
  it('cautions over four hours above 21 °C', () => expect(found(soakedFor(241, 24), 'PR-03')).toMatchObject([{ level: 'caution', measured: { value: 241, unit: 'min' }, limit: { value: 240 } }]));
  it('is in order in a cool room or for four hours', () => expect([stands(soakedFor(600, 21), 'PR-03'), stands(soakedFor(240, 30), 'PR-03')]).toEqual(['in order', 'in order']));
});

describe('TC-01 and TC-02: time out', () => {
  const out = { stew: { place: 'counter' } };
  it('objects after two hours', () => expect(found(judge({ dishes: outUntil(841), holding: out }), 'TC-01')).toMatchObject([{ level: 'stop', limit: { value: 2, unit: 'h' } }]));
  it('counts from the end of the last step', () => {
    const plan = judge({ dishes: outUntil(780), holding: out, tasks: [task('cook', 'step', 560, 600, { dish: 'stew' })] });
    expect(found(plan, 'TC-01')[0]?.measured.value).toBe(3);
  });
  it('is in order at two hours', () => expect(stands(judge({ dishes: outUntil(840), holding: out }), 'TC-01')).toBe('in order'));
  it('needs to know how it waits', () => expect(stands(judge({ dishes: [stew] }), 'TC-01')).toBe('needs'));
  it('halves the time above 32 °C', () => {
    const plan = judge({ dishes: outUntil(800), holding: out, event: { kitchen: { roomC: 34 } } });
    expect([stands(plan, 'TC-01'), stands(plan, 'TC-02')]).toEqual(['in order', 'found']);
  });
  it('leaves dry food alone', () => {
    const bread = dish(recipe('stew', ['wheat-flour-whole'], { needsTemperatureControl: false }), { lastServed: 1100 });
    expect(stands(judge({ dishes: [bread], holding: out }), 'TC-01')).toBe('in order');
  });
});

describe('TC-06: fried pieces', () => {
  it('names only the worst batch of a dish', () => {
    const plan = judge({ frying: { batches: [batch(1, 'f', 130), batch(2, 'f', 150), batch(3, 'f', 10)] } });
    expect(found(plan, 'TC-06')).toMatchObject([{ level: 'stop', measured: { value: 2.5, unit: 'h' }, message: { params: { batch: 2, by: 844 } } }]);
  });
  it('is in order within two hours', () => expect(stands(judge({ frying: { batches: [batch(1, 'f', 120)] } }), 'TC-06')).toBe('in order'));
  it('is in order when the pieces are kept hot', () => {
    const fried = dish(recipe('f', ['chickpea-flour'], { frying: { pieceBatterG: 25, fryMinutes: 4 } }));
    expect(stands(judge({ dishes: [fried], holding: { f: { place: 'hot', temperatureC: 65 } }, frying: { batches: [batch(1, 'f', 150)] } }), 'TC-06')).toBe('in order');
  });
});

const beanSteps = (soak: number, boil: number) => [
  { id: 's', name: 'Soak', does: 'soak', passive: { fixed: soak } }, { id: 'b', name: 'Boil', does: 'boil', passive: { fixed: boil } },
];
const beansWith = (list: readonly unknown[]) => judge({ dishes: [dish(recipe('beans', ['kidney-beans-dry'], { steps: list }))] });
describe('PR-01 and PR-02: kidney beans', () => {
  it('objects to a short soak', () => expect(found(beansWith(beanSteps(240, 30)), 'PR-01')).toMatchObject([{ level: 'stop', measured: { value: 240 }, limit: { value: 300, unit: 'min' } }]));
  it('objects to a short boil', () => expect(found(beansWith(beanSteps(600, 10)), 'PR-01')).toMatchObject([{ measured: { value: 10 }, limit: { value: 30, unit: 'min' } }]));
  it('is in order at five hours and thirty minutes', () => expect(stands(beansWith(beanSteps(300, 30)), 'PR-01')).toBe('in order'));
  it('needs the steps', () => expect([stands(beansWith([]), 'PR-01'), stands(beansWith([]), 'PR-02')]).toEqual(['needs', 'needs']));
  it('objects to beans that only simmer, once', () => {
    const plan = beansWith([{ id: 's', name: 'Soak', does: 'soak', passive: { fixed: 600 } }, { id: 'x', name: 'Simmer', does: 'simmer', passive: { fixed: 200 } }]);
    expect([stands(plan, 'PR-01'), stands(plan, 'PR-02')]).toEqual(['in order', 'found']);
  });
  it('leaves lentils alone', () => expect(stands(judge({ dishes: [dish(recipe('l', ['red-lentils']))] }), 'PR-01')).toBe('in order'));
});

const riceAt = (place: string, temperatureC: number | undefined, lastServed: number) =>
  judge({ dishes: [{ ...rice, lastServed }], holding: { rice: { place, ...(temperatureC === undefined ? {} : { temperatureC }) } } });
describe('PR-04: rice', () => {
  it('objects to warm rice for more than two hours', () => expect(found(riceAt('hot', 50, 850), 'PR-04')).toMatchObject([{ level: 'stop', limit: { value: 2, unit: 'h' }, about: ['rice'] }]));
  it('objects to rice on the counter once, not under TC-01 as well', () => {
    const plan = riceAt('counter', undefined, 900);
    expect([stands(plan, 'PR-04'), stands(plan, 'TC-01')]).toEqual(['found', 'in order']);
  });
  it('is in order above 60 °C, or within two hours', () => {
    expect(stands(riceAt('hot', 65, 1000), 'PR-04')).toBe('in order');
    expect(stands(riceAt('counter', undefined, 840), 'PR-04')).toBe('in order');
  });
  it('needs to know how it waits', () => expect(stands(judge({ dishes: [rice] }), 'PR-04')).toBe('needs'));
});

const keptFor = (place: string, minutes: number) => ({ steps: [{ id: 'm', name: 'Mix', does: 'mix', keeps: { place, minutes } }] });
const jarOf = (rest: Readonly<Record<string, unknown>>, ingredients = ['garlic 200', 'olive-oil 500']) => judge({ dishes: [dish(recipe('oil', ingredients, rest))] });
describe('BO-01: plants in oil', () => {
  it('objects to a jar on the counter', () => expect(found(jarOf(keptFor('counter', 1440)), 'BO-01')).toMatchObject([{ level: 'stop', message: { id: 'safety.say.BO-01.warm' } }]));
  it('objects to more than four days in the fridge', () => expect(found(jarOf(keptFor('cold', 7200)), 'BO-01')).toMatchObject([{ measured: { value: 5, unit: 'd' }, limit: { value: 4 } }]));
  it('is in order for four days in the fridge', () => expect(stands(jarOf(keptFor('cold', 5760)), 'BO-01')).toBe('in order'));
  it('needs how it keeps', () => expect(stands(jarOf({}), 'BO-01')).toBe('needs'));
  it('leaves a dish with little oil, or with vinegar, alone', () => {
    expect(stands(jarOf(keptFor('counter', 9000), ['garlic 20', 'olive-oil 30', 'tomato 900']), 'BO-01')).toBe('in order');
    expect(stands(jarOf(keptFor('counter', 9000), ['garlic 200', 'olive-oil 500', 'vinegar 100']), 'BO-01')).toBe('in order');
  });
});
