import { describe, expect, test } from 'vitest';
import { lengthOf } from '../../../shared/timeline/job';
import { latestEnds } from '../../../shared/timeline/order';
import { dishKg, stepJobs } from '../../../shared/timeline/step-jobs';
import { dayEvent, inputsOf, type TestStep } from './make-day';

const dishOf = (steps: readonly TestStep[], kg = 2, fried = false) => {
  const day = { people: [], dishes: [{ id: 'dish', at: 780, kg, steps, fried }] };
  return inputsOf(day, dayEvent(day)).menu.dishes[0]!;
};

describe('jobs of a recipe', () => {
  test('minutes are fixed, per kilogram and per batch, rounded up to whole minutes', () => {
    const dish = dishOf([{ id: 'cut', active: 10 }], 2.5);
    const recipe = { ...dish.recipe, steps: dish.recipe.steps.map((s) => ({ ...s, active: { fixed: 10, perKg: 3, perBatch: 2 } })) };
    expect(dishKg(dish)).toBe(2.5);
    expect(lengthOf(stepJobs({ ...dish, recipe }, 780, 4, 0.8)[0]!)).toBe(10 + 8 + 8);
  });
  test('hands first, then by itself, in one piece', () => {
    const [job] = stepJobs(dishOf([{ id: 'boil', active: 5, passive: 20, passiveAttention: 0.1 }]), 780, 1, 0.8);
    expect(job!.stretches.map((s) => [s.id, s.minutes, s.attention])).toEqual([['step/boil/dish', 5, 0.8], ['step/boil/dish/by-itself', 20, 0.1]]);
  });
  test('the window counts back from serving', () => {
    const [job] = stepJobs(dishOf([{ id: 'cut', active: 5, endsBefore: { earliest: 90, latest: 15 } }]), 780, 1, 0.8);
    expect([job!.notDoneBefore, job!.latest]).toEqual([690, 765]);
  });
  test('long work is cut; what runs by itself waits for all parts', () => {
    const jobs = stepJobs(dishOf([{ id: 'knead', active: 130, passive: 30 }, { id: 'bake', active: 20, after: ['knead'] }]), 780, 1, 0.8);
    expect(jobs.map((j) => [j.id, lengthOf(j)])).toEqual([
      ['step/knead/dish/part1', 44], ['step/knead/dish/part2', 43], ['step/knead/dish/part3', 43], ['step/knead/dish/by-itself', 30], ['step/bake/dish', 20],
    ]);
    expect(jobs[3]!.after).toEqual(['step/knead/dish/part1', 'step/knead/dish/part2', 'step/knead/dish/part3']);
    expect(jobs[4]!.after).toEqual(['step/knead/dish/by-itself']);
  });
  test('a step whose minutes nobody wrote is a job of one minute, and missing from no sheet', () => {
    const jobs = stepJobs(dishOf([{ id: 'a', active: 5 }, { id: 'nothing', after: ['a'] }, { id: 'b', active: 5, after: ['nothing'] }]), 780, 1, 0.8);
    expect(jobs.map((j) => [j.id, lengthOf(j)])).toEqual([['step/a/dish', 5], ['step/nothing/dish', 1], ['step/b/dish', 5]]);
    expect(jobs.map((j) => j.after)).toEqual([[], ['step/a/dish'], ['step/nothing/dish']]);
    expect(jobs[1]!.stretches[0]!.attention).toBeGreaterThan(0);
  });
  test('frying itself is left to the frying plan', () => {
    const dish = dishOf([{ id: 'mix', active: 5 }, { id: 'fry', active: 30 }], 2, true);
    const recipe = { ...dish.recipe, steps: dish.recipe.steps.map((s) => ({ ...s, does: s.id === 'fry' ? 'fry' as const : s.does })) };
    expect(stepJobs({ ...dish, recipe }, 780, 1, 0.8).map((j) => j.id)).toEqual(['step/mix/dish']);
  });
  test('latest ends go back along the order; a circle does not hang', () => {
    const jobs = stepJobs(dishOf([{ id: 'a', active: 10 }, { id: 'b', active: 20, after: ['a'] }]), 780, 1, 0.8);
    expect([...latestEnds(jobs)]).toEqual([['step/b/dish', 780], ['step/a/dish', 760]]);
    const circle = stepJobs(dishOf([{ id: 'a', active: 10, after: ['b'] }, { id: 'b', active: 20, after: ['a'] }]), 780, 1, 0.8);
    expect(latestEnds(circle).size).toBe(2);
  });
});
