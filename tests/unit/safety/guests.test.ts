import { describe, expect, it } from 'vitest';
import { dish, found, judge, recipe, stands } from './subject';

const panCalled = (id: string) => ({ id, name: `Pan ${id}`, shape: 'straight', rimMm: 300, depthMm: 150, oilLitres: 3, burner: 'r' });
const stationOf = (id: string, pans: readonly string[], dishes: readonly string[]) => ({ id, name: id, pans, dishes });

describe('CD-04: honey', () => {
  const cake = dish(recipe('cake', ['honey']));
  it('objects when a baby comes', () => expect(found(judge({ dishes: [cake], counts: { under1: 2 } }), 'CD-04')).toMatchObject([{ level: 'stop', measured: { value: 2, unit: 'people' }, limit: { value: 0 }, about: ['cake'] }]));
  it('is in order without babies, or without honey', () => {
    expect(stands(judge({ dishes: [cake], counts: { age1to3: 2 } }), 'CD-04')).toBe('in order');
    expect(stands(judge({ dishes: [dish(recipe('cake', ['sugar']))], counts: { under1: 2 } }), 'CD-04')).toBe('in order');
  });
});

describe('AL-01: a listed allergen', () => {
  const beans = dish(recipe('beans', ['sesame-seed']), { allergens: ['sesame'] });
  const rice = dish(recipe('rice', ['basmati-rice']));
  const cover = (open: readonly string[]) => judge({ dishes: [beans, rice], allergies: [{ allergen: 'sesame', people: 1, containing: ['beans'], open }] });
  it('warns and says what else there is', () => {
    const plan = cover(['rice']);
    expect(found(plan, 'AL-01a')).toMatchObject([{ level: 'warn', about: ['beans'], message: { params: { dishes: ['Dish beans'], open: ['Dish rice'] } } }]);
    expect(stands(plan, 'AL-01b')).toBe('in order');
  });
  it('stops when nothing is left', () => {
    const plan = cover([]);
    expect([stands(plan, 'AL-01a'), stands(plan, 'AL-01b')]).toEqual(['in order', 'found']);
    expect(found(plan, 'AL-01b')[0]?.level).toBe('stop');
  });
  it('is in order when no dish has it', () => {
    const plan = judge({ dishes: [rice], allergies: [{ allergen: 'sesame', people: 1, containing: [], open: ['rice'] }] });
    expect([stands(plan, 'AL-01a'), stands(plan, 'AL-01b')]).toEqual(['in order', 'in order']);
  });
});

const peanuts = (open: readonly string[]) => [{ allergen: 'peanuts', people: 2, containing: [], open }] as const;
describe('AL-01, AL-07: contents nobody can know', () => {
  const fry = { frying: { pieceBatterG: 25, fryMinutes: 4 } };
  const mystery = dish(recipe('mystery', ['grandmothers-mix'], fry));
  const rice = dish(recipe('rice', ['basmati-rice']));
  const kitchen = { pans: [panCalled('p')], stations: [stationOf('s', ['p'], ['mystery'])] };
  const rules = ['AL-01a', 'AL-01b', 'AL-07'];

  it('says of each rule what it needs, and which guests it leaves open', () => {
    const plan = judge({ dishes: [mystery, rice], allergies: [...peanuts(['rice']), { allergen: 'milk', people: 1, containing: [], open: ['rice'] }], event: { kitchen } });
    expect(rules.map((r) => stands(plan, r))).toEqual(['needs', 'needs', 'needs']);
    for (const n of plan.notChecked.filter((x) => rules.includes(x.rule))) {
      expect(n).toMatchObject({ notYet: false, needs: { id: 'safety.needs.contents', params: { allergens: ['peanuts', 'milk'], dish: 'Dish mystery', ingredient: 'grandmothers-mix', others: 0 } } });
    }
  });
  it('stops when no dish is known to be without it, though none is known to have it', () => {
    const plan = judge({ dishes: [mystery], allergies: peanuts([]), event: { kitchen } });
    expect(found(plan, 'AL-01b')).toMatchObject([{ level: 'stop', message: { id: 'safety.say.AL-01b.unknown', params: { allergen: 'peanuts', people: 2 } } }]);
    expect(plan.notChecked.map((n) => n.rule)).toEqual(expect.arrayContaining(rules));
    expect(plan.inOrder.filter((r) => rules.includes(r))).toEqual([]);
  });
  it('stops when there is nothing to eat at all', () => expect(stands(judge({ allergies: peanuts([]) }), 'AL-01b')).toBe('found'));
  it('needs nothing when nobody listed an allergy', () => expect(rules.map((r) => stands(judge({ dishes: [mystery], event: { kitchen } }), r))).toEqual(['in order', 'in order', 'in order']));
  it('judges shared oil by what is fried in it', () => expect(stands(judge({ dishes: [mystery, rice], allergies: peanuts(['rice']), event: { kitchen: { pans: [panCalled('p')] } } }), 'AL-07')).toBe('in order'));
});

describe('frying oil that nobody knows', () => {
  const chick = dish(recipe('chick', ['chickpea-flour'], { frying: { pieceBatterG: 25, fryMinutes: 4 } }));
  const fried = (oilKind: string) => judge({
    dishes: [chick], allergies: [{ allergen: 'peanuts', people: 2, containing: [], open: ['chick'] }],
    event: { kitchen: { pans: [panCalled('p')], stations: [stationOf('s', ['p'], ['chick'])], oilKind } },
  });
  it('is never in order for an allergy, and its smoke point is asked for', () => {
    const plan = fried('groundnut oil');
    expect([stands(plan, 'AL-07'), stands(plan, 'DF-02')]).toEqual(['needs', 'needs']);
    expect(plan.notChecked.find((n) => n.rule === 'AL-07')?.needs).toMatchObject({ id: 'safety.needs.oilContents', params: { allergens: ['peanuts'], oil: 'groundnut oil' } });
    // What is fried in it is not known to be without peanut.
    expect(found(plan, 'AL-01b')[0]?.message.id).toBe('safety.say.AL-01b.unknown');
  });
  it('a blend does not tell either', () => expect(stands(fried('vegetable-blend'), 'AL-07')).toBe('needs'));
  it('names the oil that carries it, in whatever spelling', () => {
    expect(found(fried('Peanut oil'), 'AL-07')).toMatchObject([{ level: 'stop', message: { params: { source: 'Peanut oil, refined', pan: 'Pan p' } } }]);
    expect(found(fried('Peanut oil'), 'AL-01b')).toHaveLength(1);
  });
  it('is in order in oil without it', () => expect(['AL-07', 'AL-01b'].map((r) => stands(fried('sunflower-refined'), r))).toEqual(['in order', 'in order']));
});

describe('AL-07: shared oil', () => {
  const fry = { frying: { pieceBatterG: 25, fryMinutes: 4 } };
  const a = dish(recipe('wheat', ['wheat-flour-white'], fry), { allergens: ['gluten'] });
  const b = dish(recipe('chick', ['chickpea-flour'], fry));
  const fried = (stations: readonly unknown[], allergen: 'gluten' | 'peanuts' = 'gluten', oilKind = 'sunflower-refined') => judge({
    dishes: [a, b], allergies: [{ allergen, people: 2, containing: allergen === 'gluten' ? ['wheat'] : [], open: ['chick'] }],
    event: { kitchen: { pans: [panCalled('p'), panCalled('q')], stations, oilKind } },
  });
  it('stops when both are fried in one pan', () => expect(found(fried([stationOf('s', ['p'], ['wheat', 'chick'])]), 'AL-07')).toMatchObject([{ level: 'stop', about: ['p', 'wheat', 'chick'], message: { params: { dishes: ['Dish chick'], source: 'Dish wheat' } } }]));
  it('sees a pan shared by two stations', () => expect(stands(fried([stationOf('s', ['p'], ['wheat']), stationOf('t', ['p'], ['chick'])]), 'AL-07')).toBe('found'));
  it('is in order with a pan each', () => expect(stands(fried([stationOf('s', ['p'], ['wheat']), stationOf('t', ['q'], ['chick'])]), 'AL-07')).toBe('in order'));
  it('stops when the oil itself is the allergen', () => expect(stands(fried([stationOf('t', ['q'], ['chick'])], 'peanuts', 'peanut-refined'), 'AL-07')).toBe('found'));
  it('is in order when nobody listed it', () => expect(stands(judge({ dishes: [a, b], event: { kitchen: { pans: [panCalled('p')], stations: [stationOf('s', ['p'], ['wheat', 'chick'])] } } }), 'AL-07')).toBe('in order'));
});
