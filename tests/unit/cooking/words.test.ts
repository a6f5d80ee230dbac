import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { sayMessage } from '../../../shared/words';
import { mealEvent } from './meal-event';

const { preferences, day } = mealEvent();
const say = (of?: { turn: number; turns: number; go: number; goes: number; amount: { amount: string; unit: string }; pot?: string }): string =>
  sayMessage(formatsFor(preferences, day), { id: 'timeline.task.step', params: { step: 'Boil', dish: 'Rice', ...(of === undefined ? {} : { of }) } }).replaceAll(/[\u00a0\u202f]/g, ' ');
const amount = { amount: '1600', unit: 'g' };

describe('a job of a part of a dish', () => {
  it('says which cooking, which go, how much, in which pot', () => {
    expect(say()).toBe('Rice: Boil');
    expect(say({ turn: 2, turns: 7, go: 1, goes: 1, amount })).toBe('Rice: Boil (cooking 2 of 7, 1.6 kg)');
    expect(say({ turn: 1, turns: 1, go: 2, goes: 3, amount, pot: 'Large pot' })).toBe('Rice: Boil (go 2 of 3, 1.6 kg, in Large pot)');
    expect(say({ turn: 1, turns: 1, go: 1, goes: 1, amount, pot: 'Large pot' })).toBe('Rice: Boil (in Large pot)');
    expect(say({ turn: 1, turns: 1, go: 1, goes: 1, amount })).toBe('Rice: Boil');
  });
});
