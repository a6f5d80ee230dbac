import { describe, expect, it } from 'vitest';
import type { Bowl } from '../../../shared/frying';
import { minutes } from '../../../shared/measure';
import { batch, dish, fig, found, judge, recipe, stands, type Given } from './subject';

const step = (id: string, does: string, fixed: number, keeps?: Readonly<Record<string, unknown>>) => ({ id, name: id, does, passive: { fixed }, ...(keeps === undefined ? {} : { keeps }) });
const cooked = (id: string, steps: readonly unknown[], ingredients: readonly string[] = ['red-lentils'], rest = {}) => dish(recipe(id, ingredients, { steps, ...rest }));
const level = (rule: string, g: Given) => found(judge(g), rule).map((f) => f.level);
const cold = { place: 'cold', minutes: 1440 };
/** Simmered, then cooled or warmed for ten minutes and so many for each kilogram. */
const slow = (does: string, perKg: number, kg: number) => ({ ...cooked('d', [step('a', 'simmer', 30), { ...step('b', does, 10, cold), passive: { fixed: 10, perKg } }]), totalFigure: fig(kg, 'kg') });

describe('made ahead', () => {
  it.each([[360, []], [361, ['stop']]] as const)('CO-01: %d minutes of cooling', (m, levels) => expect(level('CO-01', { dishes: [cooked('d', [step('a', 'simmer', 30), step('b', 'cool', m, cold)])] })).toEqual(levels));
  it('CO-01 and RH-01 count what a step takes for each kilogram', () => {
    expect(level('CO-01', { dishes: [slow('cool', 50, 7)] })).toEqual([]);
    expect(level('CO-01', { dishes: [slow('cool', 50, 7.1)] })).toEqual(['stop']);
    expect(level('RH-01', { dishes: [slow('reheat', 20, 5.5)] })).toEqual([]);
    expect(level('RH-01', { dishes: [slow('reheat', 20, 5.6)] })).toEqual(['stop']);
  });
  it('CO-05 asks for a cooling step', () => {
    expect(level('CO-05', { dishes: [cooked('d', [step('a', 'simmer', 30, cold)])] })).toEqual(['caution']);
    expect(level('CO-05', { dishes: [cooked('d', [step('a', 'simmer', 30), step('b', 'chill', 60, cold)])] })).toEqual([]);
    expect(level('CO-05', { dishes: [cooked('d', [step('a', 'simmer', 30)])] })).toEqual([]);
    expect(level('CO-05', { dishes: [cooked('d', [step('chop', 'prepare', 10, cold), step('a', 'simmer', 30)])] })).toEqual([]);
  });
  it.each([[4, []], [4.1, ['caution']]] as const)('CO-06: %f kg cooked ahead', (kg, levels) => expect(level('CO-06', { dishes: [{ ...cooked('d', [step('a', 'simmer', 30), step('b', 'cool', 60, cold)]), totalFigure: fig(kg, 'kg') }] })).toEqual(levels));
  it.each([[1, []], [2, ['stop']]] as const)('RH-04: reheated %d times', (n, levels) => expect(level('RH-04', { dishes: [cooked('d', Array.from({ length: n }, (_, i) => step(`r${i}`, 'reheat', 20)))] })).toEqual(levels));
  it.each([[120, []], [121, ['stop']]] as const)('RH-01: reheated in %d minutes', (m, levels) => expect(level('RH-01', { dishes: [cooked('d', [step('r', 'reheat', m)])] })).toEqual(levels));
  it.each([[7, []], [7.1, ['stop']]] as const)('LO-02: keeps %f days in the cold', (d, levels) => expect(level('LO-02', { dishes: [cooked('d', [step('a', 'simmer', 5, { place: 'cold', minutes: d * 1440 })])] })).toEqual(levels));
  it('LO-02 leaves preserves and the freezer alone', () => {
    expect(level('LO-02', { dishes: [cooked('d', [step('a', 'simmer', 5, { place: 'cold', minutes: 20000 })], ['sugar'], { role: 'preserve' })] })).toEqual([]);
    expect(level('LO-02', { dishes: [cooked('d', [step('a', 'simmer', 5, { place: 'freezer', minutes: 20000 })])] })).toEqual([]);
  });
  it.each([[24, []], [24.1, ['warn']]] as const)('LO-03: rice keeps %f hours', (h, levels) => expect(level('LO-03', { dishes: [cooked('d', [step('a', 'boil', 20, { place: 'cold', minutes: h * 60 })], ['basmati-rice'])] })).toEqual(levels));
  it.each([[60, [], []], [61, ['warn'], []], [90, ['warn'], []], [91, [], ['stop']]] as const)('PR-05: rice cools for %d minutes', (m, a, b) => {
    const g = { dishes: [cooked('d', [step('c', 'cool', m)], ['basmati-rice'])] };
    expect([level('PR-05a', g), level('PR-05b', g)]).toEqual([a, b]);
  });
});

const waiting = (hours: number, place: string, rest = {}) => ({ dishes: [{ ...cooked('d', [], ['potato'], rest), firstServed: 720, lastServed: 720 + hours * 60 }], holding: { d: { place } } });
describe('waiting', () => {
  it.each([[2, []], [2.1, ['caution']]] as const)('HH-05: %f hours kept hot', (h, levels) => expect(level('HH-05', waiting(h, 'hot'))).toEqual(levels));
  it.each([[2, []], [2.1, ['warn']]] as const)('CH-05: %f hours cold on the table', (h, levels) => expect(level('CH-05', waiting(h, 'cold'))).toEqual(levels));
  it('CH-05 trusts a temperature that is entered', () => expect(level('CH-05', { ...waiting(3, 'cold'), holding: { d: { place: 'cold', temperatureC: 4 } } })).toEqual([]));
  it.each([[2, []], [2.1, ['warn']]] as const)('BO-06: %f hours of chutney', (h, levels) => expect(level('BO-06', { ...waiting(h, 'counter', { needsTemperatureControl: false }), dishes: waiting(h, 'counter', { needsTemperatureControl: false }).dishes.map((d) => ({ ...d, role: 'condiment' as const })) })).toEqual(levels));
  it.each([[2, [], []], [2.1, ['warn'], []], [4, ['warn'], []], [4.1, [], ['stop']]] as const)('TC-08: a bowl of %f hours', (h, a, b) => {
    const bowl: Bowl = { number: 1, dish: 'f', station: 'a', mixAt: minutes(720 - h * 60), readyAt: minutes(720 - h * 60), useBy: minutes(900), batterKg: 1, pieces: 20, lines: [] };
    const g: Given = { frying: { bowls: [bowl], batches: [{ ...batch(1, 'f', 5), bowls: [1] }] } };
    expect([level('TC-08a', g), level('TC-08b', g)]).toEqual([a, b]);
  });
});

describe('rules that stand behind others', () => {
  it('say nothing of their own, and lack what the other lacks', () => {
    const g = { dishes: [cooked('d', [step('a', 'boil', 20, { place: 'cold', minutes: 3000 })], ['basmati-rice'])] };
    expect([stands(judge(g), 'LO-03'), stands(judge(g), 'PR-06')]).toEqual(['found', 'in order']);
    const warm = { dishes: [cooked('d', [], ['potato'])], holding: { d: { place: 'hot' } } };
    expect([stands(judge(warm), 'HH-02'), stands(judge(warm), 'HH-04')]).toEqual(['needs', 'needs']);
  });
});
