import { describe, expect, it } from 'vitest';
import { dish, found, judge, recipe, stands } from './subject';

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

const panCalled = (id: string) => ({ id, name: `Pan ${id}`, shape: 'straight', rimMm: 300, depthMm: 150, oilLitres: 3, burner: 'r' });
const stationOf = (id: string, pans: readonly string[], dishes: readonly string[]) => ({ id, name: id, pans, dishes });
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
