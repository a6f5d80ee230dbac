import { describe, expect, it } from 'vitest';
import { eventSchema } from '../../../shared/event';
import { minutes } from '../../../shared/measure';
import { cupCelsius, standMinutes } from '../../../shared/safety/rules/cup';
import { dish, fig, flask, found, judge, recipe, stands } from './subject';

const brew = (rest: Readonly<Record<string, unknown>> = {}) => ({ role: 'hotDrink', brewing: { method: 'infuse', hot: true, cupMl: 150, ...rest } });
const tea = dish(recipe('tea', ['tea-leaf'], brew()));
const milkTea = dish(recipe('tea', ['tea-leaf', 'milk-whole'], brew({ method: 'boilWithMilk', milkShare: 0.5 })));
const event = eventSchema.parse({ format: 'brimful-event/1', id: 'e', title: 'T', day: '2026-12-12', opensAt: 0, closesAt: 1440, kitchen: { roomC: 20 } });

describe('a drink in the cup', () => {
  it('loses heat by pouring and standing', () => {
    expect(cupCelsius(event, 85)).toBeLessThan(85 - 6);
    expect(cupCelsius(event, 85)).toBeCloseTo(20 + 59 * Math.exp((-1.3 * 2) / 60), 9);
  });
  it('agrees with a mug that started at 76 °C and was still above 65 °C after ten minutes', () => {
    // Jamnadas-Khoda et al., Burns 36:356, 2010 (abstract): the mug already poured, so pouring is taken out.
    const poured = { ...event, houseFigures: [{ figure: 'pour.drop', value: 0, unit: 'K', why: 'test' }, { figure: 'cup.minutes', value: 10, unit: 'min', why: 'test' }] };
    expect(cupCelsius(poured, 76)).toBeGreaterThan(64.9);
    expect(cupCelsius(poured, 76)).toBeLessThan(66);
  });
  it('says how long to let it stand', () => {
    const minutesToStand = standMinutes(event, 90, 71);
    const after = { ...event, houseFigures: [{ figure: 'cup.minutes', value: minutesToStand, unit: 'min', why: 'test' }] };
    expect(cupCelsius(after, 90)).toBeCloseTo(71, 9);
    expect(standMinutes(event, 70, 71)).toBe(0);
  });
});

describe('SC-03: hot cups', () => {
  it('objects above 71 °C in the cup, once for the hottest minute of a flask', () => {
    const [f, ...rest] = found(judge({ dishes: [tea], dispensers: [flask('tea', [92, 88, 84])] }), 'SC-03');
    expect(rest).toEqual([]);
    expect(f).toMatchObject({ level: 'warn', limit: { value: 71, unit: 'degC' }, about: ['tea-flask', 'tea'] });
    expect(f?.measured.value).toBeLessThan(86);
  });
  it('is in order when the cup is 71 °C or less though the flask is hotter', () => expect(stands(judge({ dishes: [tea], dispensers: [flask('tea', [76])] }), 'SC-03')).toBe('in order'));
  it('is in order for cold drinks and empty flasks', () => {
    const cold = dish(recipe('tea', ['water'], brew({ method: 'cold', hot: false })));
    expect(stands(judge({ dishes: [cold], dispensers: [flask('tea', [92])] }), 'SC-03')).toBe('in order');
    expect(stands(judge({ dishes: [tea], dispensers: [{ ...flask('tea', [92]), litres: [0] }] }), 'SC-03')).toBe('in order');
  });
});

describe('CD-10: children’s cups', () => {
  const forChildren = { ...tea, perBand: { ...tea.perBand, age7to9: 0.5 } };
  it('objects above 43 °C where children have a share', () => expect(found(judge({ dishes: [forChildren], dispensers: [flask('tea', [60])], counts: { age7to9: 3 } }), 'CD-10')).toMatchObject([{ level: 'warn', limit: { value: 43 } }]));
  it('is in order when no child drinks it or none comes', () => {
    expect(stands(judge({ dishes: [tea], dispensers: [flask('tea', [60])], counts: { age7to9: 3 } }), 'CD-10')).toBe('in order');
    expect(stands(judge({ dishes: [forChildren], dispensers: [flask('tea', [60])], counts: { adult: 3 } }), 'CD-10')).toBe('in order');
  });
  it('does not judge the cups of those of thirteen and more', () =>
    expect(stands(judge({ dishes: [{ ...tea, perBand: { ...tea.perBand, age13to17: 0.4 } }], dispensers: [flask('tea', [60])], counts: { age13to17: 3 } }), 'CD-10')).toBe('in order'));
  it('is in order lukewarm', () => expect(stands(judge({ dishes: [forChildren], dispensers: [flask('tea', [48])], counts: { age7to9: 3 } }), 'CD-10')).toBe('in order'));
});

const cooledTo = (temperatures: readonly number[], d = milkTea) => judge({ dishes: [d], dispensers: [flask('tea', temperatures)] });
describe('ED-03: milk in the flask', () => {
  it('warns under 60 °C', () => {
    const plan = cooledTo([66, 62, 59]);
    expect(found(plan, 'ED-03a')).toMatchObject([{ level: 'warn', measured: { value: 59 }, limit: { value: 60 } }]);
    expect(stands(plan, 'ED-03b')).toBe('in order');
  });
  it('stops after two hours under 57 °C, and does not warn as well', () => {
    const plan = cooledTo(Array.from({ length: 121 }, () => 55));
    expect([stands(plan, 'ED-03a'), stands(plan, 'ED-03b')]).toEqual(['in order', 'found']);
    expect(found(plan, 'ED-03b')[0]?.level).toBe('stop');
  });
  it('does not stop at exactly two hours', () => expect(stands(cooledTo(Array.from({ length: 120 }, () => 55)), 'ED-03b')).toBe('in order'));
  it('is in order at 60 °C and for black tea', () => {
    expect(stands(cooledTo([66, 60]), 'ED-03a')).toBe('in order');
    expect(stands(cooledTo([40], tea), 'ED-03a')).toBe('in order');
  });
});

const potOf = (number: number, water: number) => ({ number, drink: 'tea', pot: 'big', burner: null, inUrn: false, startAt: minutes(600), boilAt: minutes(640), readyAt: minutes(650), startHands: 5, finishHands: 5, madeAhead: false, note: null, litres: water - 0.5, waterLitres: fig(water, 'L'), heatMinutes: fig(40), ingredients: [], apart: [] });
describe('LF-06: lifting a pot', () => {
  it('objects over nine litres, once for a pot', () => expect(found(judge({ rounds: [potOf(1, 9.5), potOf(2, 11)] }), 'LF-06')).toMatchObject([{ level: 'warn', measured: { value: 11, unit: 'L' }, limit: { value: 9 }, about: ['big', 'tea'] }]));
  it('is in order at nine', () => expect(stands(judge({ rounds: [potOf(1, 9)] }), 'LF-06')).toBe('in order'));
});
