import { describe, expect, it } from 'vitest';
import { amountOf } from '../../../shared/measure';
import { limitsOf } from '../../../shared/safety/profile';
import { newEvent } from '../../../shared/event';
import { dish, flask, found, judge, recipe, stands } from './subject';

const profiles = ['household', 'us', 'uk', 'eu'] as const;
type Profile = (typeof profiles)[number];
const stew = dish(recipe('stew', ['potato']), { lastServed: 780 });
const long = { ...stew, lastServed: 1000 };
const set = (safetyProfile: Profile, higherRisk: boolean | null = false) => ({ preferences: { safetyProfile }, guests: { higherRisk } });
const at = (profile: Profile, place: 'hot' | 'cold', temperatureC: number, d = stew, higherRisk = false) =>
  judge({ dishes: [d], holding: { stew: { place, temperatureC } }, event: set(profile, higherRisk) });

const labels = (p: Profile, allergen: string) => stands(judge({ event: { ...set(p), guests: { allergies: [{ allergen, people: 1 }] } } }), 'AL-02');
const plug = (p: Profile, ratedW: number, kind = 'induction') => stands(judge({ event: { ...set(p), kitchen: { burners: [{ id: 'b', name: 'Plate', kind, ratedW }] } } }), 'EL-04');
const drink = (ingredient: string) => dish(recipe('tea', [ingredient], { role: 'hotDrink', brewing: { method: 'infuse', hot: true, cupMl: 150 } }), { servedAs: 'cup' });
const milkIn = (ingredient: string, flaskOf: Readonly<Record<string, unknown>>) => stands(judge({ dishes: [drink(ingredient)], event: { kitchen: { dispensers: [{ id: 'f', name: 'Flask', litres: 5, insulation: 'foam', dish: 'tea', ...flaskOf }] } } }), 'ED-08');
const verdicts = (rule: string, place: 'hot' | 'cold', celsius: number, d = stew) => profiles.map((p) => stands(at(p, place, celsius, d), rule) === 'found');

// Limits as printed in the sources named beside each rule of the table.
describe('limits of the sets of rules', () => {
  it.each([['household', 57, 60, 5, 4.4], ['us', 57, 57, 5, 5], ['uk', 57, 63, 8, 5], ['eu', 57, 60, 5, 5]] as const)('%s', (safetyProfile, hotStop, hotTarget, coldStop, coldTarget) => {
    const event = newEvent({ id: 'e', title: 'E', day: '2026-12-12', preferences: { safetyProfile } });
    expect(limitsOf(event)).toEqual({ hotStop, hotTarget, coldStop, coldTarget });
    expect(limitsOf({ ...event, guests: { ...event.guests, higherRisk: true } })).toEqual({ hotStop: 57, hotTarget: 63, coldStop: 5, coldTarget: 4.4 });
  });
});

describe('what the sets of rules find', () => {
  it('warns of hot food at 61 °C only in the United Kingdom, at 58 °C everywhere but under the American code', () => {
    expect(verdicts('HH-02', 'hot', 61)).toEqual([false, false, true, false]);
    expect(verdicts('HH-02', 'hot', 58)).toEqual([true, false, true, true]);
    expect(found(at('uk', 'hot', 61), 'HH-02')).toMatchObject([{ limit: { value: 63 }, message: { params: { limit: 63 } } }]);
  });
  it('stops cold food at 7 °C but in the United Kingdom, which cautions', () => {
    expect(verdicts('CH-01', 'cold', 7)).toEqual([true, true, false, true]);
    expect(verdicts('CH-02', 'cold', 7)).toEqual([false, false, true, false]);
    expect(found(at('uk', 'cold', 9), 'CH-01')).toMatchObject([{ level: 'stop', limit: { value: 8 } }]);
  });
  it('ends the one time outside the limit in the United Kingdom: two hours hot, four hours cold', () => {
    expect(verdicts('HH-03', 'hot', 61, long)).toEqual([false, false, true, false]);
    expect(verdicts('CH-03', 'cold', 9, long)).toEqual([false, false, true, false]);
    expect(stands(at('uk', 'hot', 61), 'HH-03')).toBe('in order');
    expect(stands(at('uk', 'hot', 63, long), 'HH-03')).toBe('in order');
    expect(stands(at('uk', 'cold', 9, { ...stew, lastServed: 720 + 239 }), 'CH-03')).toBe('in order');
  });
  it('keeps hot rice hotter than the code does', () => {
    const rice = dish(recipe('stew', ['basmati-rice']));
    expect(verdicts('PR-07', 'hot', 59, rice)).toEqual([true, true, true, true]);
    expect(verdicts('PR-07', 'hot', 62, rice)).toEqual([false, false, true, false]);
    expect(verdicts('PR-07', 'hot', 50)).toEqual([false, false, false, false]);
  });
  it('wants milk tea at 63 °C in the United Kingdom', () => {
    const milkTea = dish(recipe('tea', ['milk-whole'], { role: 'hotDrink', brewing: { method: 'boilWithMilk', hot: true, milkShare: 0.5, cupMl: 150 } }), { servedAs: 'cup' });
    expect(profiles.map((p) => stands(judge({ dishes: [milkTea], dispensers: [flask('tea', [62, 61])], event: set(p) }), 'ED-03a'))).toEqual(['in order', 'in order', 'found', 'in order']);
  });
  it('names allergens that American labels leave out', () => {
    expect(profiles.map((p) => labels(p, 'mustard'))).toEqual(['in order', 'found', 'in order', 'in order']);
    expect(['milk', 'eggs', 'fish', 'crustaceans', 'nuts', 'peanuts', 'gluten', 'soya', 'sesame'].map((a) => labels('us', a))).toEqual(Array.from({ length: 9 }, () => 'in order'));
  });
  it('knows the plug of the United Kingdom: 13 A at 230 V', () => {
    expect(profiles.map((p) => plug(p, 3500))).toEqual(['in order', 'in order', 'found', 'in order']);
    expect([plug('uk', 2990), plug('uk', 2991), plug('uk', 9000, 'gas')]).toEqual(['in order', 'found', 'in order']);
  });
});

describe('CX-05: guests at higher risk', () => {
  it('is asked for', () => expect([stands(judge({}), 'CX-05'), stands(judge({ event: set('eu', true) }), 'CX-05'), stands(judge({ event: set('eu', false) }), 'CX-05')]).toEqual(['needs', 'in order', 'in order']));
  it('brings the strictest limits of all sets', () => {
    for (const p of profiles) {
      expect([p, stands(at(p, 'hot', 61, stew, true), 'HH-02'), stands(at(p, 'cold', 6, stew, true), 'CH-01'), stands(at(p, 'cold', 4.6, stew, true), 'CH-02')]).toEqual([p, 'found', 'found', 'found']);
    }
  });
});

describe('CH-06: room in the cold', () => {
  const pot = dish(recipe('pot', ['potato']), { total: amountOf(30, 'kg') });
  const pieces = dish(recipe('pie', ['potato'], { yield: { amount: { amount: '10', unit: 'piece' }, portions: 10 } }), {
    total: amountOf(100, 'piece'), lines: [{ ingredient: 'potato', amount: amountOf(12, 'kg'), perBowl: false, toTaste: false }, { ingredient: 'water', amount: amountOf(9, 'L'), perBowl: false, toTaste: false }],
  });
  const cold = { pot: { place: 'cold', temperatureC: 4 }, pie: { place: 'cold', temperatureC: 4 } } as const;
  const verdict = (coldLitres: number | null, dishes = [pot]) => judge({ dishes, holding: cold, event: { kitchen: { coldLitres } } });
  it('keeps a quarter free for the air', () => {
    expect(stands(verdict(40), 'CH-06')).toBe('in order');
    expect(found(verdict(39), 'CH-06')).toMatchObject([{ level: 'warn', measured: { value: 30, unit: 'L' }, limit: { value: 29.25, unit: 'L' }, about: ['pot'] }]);
  });
  it('weighs what is counted by what goes into it, and adds up', () => expect(found(verdict(50, [pot, pieces]), 'CH-06')[0]?.measured.value).toBeCloseTo(42, 9));
  it('counts what a step puts into the cold', () => {
    const ahead = dish(recipe('ahead', ['potato'], { steps: [{ id: 'a', name: 'Cook', does: 'boil', keeps: { place: 'cold', minutes: 2000 } }] }), { total: amountOf(30, 'L') });
    expect(stands(judge({ dishes: [ahead], event: { kitchen: { coldLitres: 20 } } }), 'CH-06')).toBe('found');
  });
  it('needs the litres only when something is kept cold', () => {
    expect(stands(verdict(null), 'CH-06')).toBe('needs');
    expect(stands(judge({ dishes: [pot], event: { kitchen: { coldLitres: null } } }), 'CH-06')).toBe('in order');
  });
});

describe('ED-08: flasks fit for milk', () => {
  it('cautions of milk in plastic insulation that is not marked for it', () => {
    expect(milkIn('milk-whole', {})).toBe('found');
    expect([milkIn('milk-whole', { fitForMilk: true }), milkIn('milk-whole', { insulation: 'vacuum' }), milkIn('black-tea', {})]).toEqual(['in order', 'in order', 'in order']);
  });
});

describe('PR-01: beans that take the same steps as a precaution', () => {
  it.each(['black-beans-dry', 'borlotti-beans-dry', 'black-eyed-beans-dry'])('%s', (bean) => {
    const soup = (minutes: number) => dish(recipe('soup', [bean], { steps: [{ id: 's', name: 'Soak', does: 'soak', passive: { fixed: 400 } }, { id: 'b', name: 'Boil', does: 'boil', active: { fixed: minutes } }] }));
    expect([stands(judge({ dishes: [soup(10)] }), 'PR-01'), stands(judge({ dishes: [soup(30)] }), 'PR-01')]).toEqual(['found', 'in order']);
  });
});
