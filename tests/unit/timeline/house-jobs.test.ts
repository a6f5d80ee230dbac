import { Big } from 'big.js';
import { describe, expect, test } from 'vitest';
import type { BuyingPlan, ShoppingLine } from '../../../shared/buying';
import { figure } from '../../../shared/figure';
import type { UnitId } from '../../../shared/measure';
import { dayValues } from '../../../shared/timeline/day-values';
import { afterJobs, coolJobs, oilAwayJobs, serveJobs, setUpJobs, shopJobs } from '../../../shared/timeline/house-jobs';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const amount = (n: number, unit: UnitId = 'kg') => ({ amount: new Big(n), unit });
const one = figure(1, 'kg', () => ({ rule: 'timeline.busy', terms: [], sum: { op: 'number', value: 1 } }));
const line = (ingredient: string, keepsDays: number | null, dish: string, buy = 1): ShoppingLine => ({
  key: ingredient, kind: 'food', bought: amount(0), buyFigure: one, state: 'open', note: null, price: { price: null, per: amount(1) }, when: null, shopper: null,
  ingredient, name: ingredient, section: 'dry', need: amount(1), needFigure: one,
  origins: [{ dish, amount: amount(1) }], larder: amount(0), buy: amount(buy), packs: [], keepsDays, optional: false,
});
const buying = (lines: ShoppingLine[]): BuyingPlan => ({ lines, sections: [], cost: null, costFigure: null, unpriced: 0, shoppers: [], ownThings: [], borrowed: [], unknown: [], notCounted: [] });
const work = (dishes: ReadonlySet<string>) => (dishes.has('a') ? -1440 + 480 : Number.POSITIVE_INFINITY);
const values = dayValues(dayEvent({ people: [] }));
const never = () => Number.POSITIVE_INFINITY;

describe('shopping trips', () => {
  test('what keeps early, what is best fresh the day before, nothing that is in the larder', () => {
    const jobs = shopJobs(values, buying([line('flour', null, 'a'), line('rice', 90, 'a'), line('spinach', 2, 'a'), line('salt', null, 'a', 0)]), never, event.day);
    expect(jobs.map((j) => [j.id, j.earliest, j.stretches[0]!.name])).toEqual([
      ['shop/early', -3 * 1440 + 540, { id: 'timeline.task.shopEarly', params: { items: 2 } }],
      ['shop/fresh', -1440 + 540, { id: 'timeline.task.shopFresh', params: { items: 1 } }],
    ]);
  });
  test('a trip is moved before the work that needs it', () => {
    const [moved] = shopJobs(values, buying([line('spinach', 2, 'a')]), work, event.day);
    expect(moved!.earliest).toBe(-2 * 1440 + 540);
    expect(moved!.latest).toBeLessThanOrEqual(-1440 + 480);
    const [other] = shopJobs(values, buying([line('spinach', 2, 'b')]), work, event.day);
    expect(other!.earliest).toBe(-1440 + 540);
  });
  test('nothing to buy, no trip', () => {
    expect(shopJobs(values, buying([]), never, event.day)).toEqual([]);
  });
});

const day: TestDay = {
  people: [], dishes: [{ id: 'puffs', at: 760, steps: [], fried: true }, { id: 'rice', at: 780, steps: [] }],
  stations: [{ on: 700, ready: 715, off: 800, drops: [720], cycle: 5 }],
};
const event = dayEvent(day);
const inputs = inputsOf(day, event);

describe('jobs of the house', () => {
  test('a fry station is set up before its heat goes on, the tables before the doors open', () => {
    const jobs = setUpJobs(values, event, inputs.frying, true);
    expect(jobs.map((j) => [j.id, j.latest, j.towards])).toEqual([['set-up/station/s0', 700, 'late'], ['set-up/drinks', 720, 'late'], ['set-up/tables', 720, 'late']]);
    expect(setUpJobs(values, event, { ...inputs.frying, sessions: [] }, false).map((j) => j.id)).toEqual(['set-up/tables']);
  });
  test('rounds of clearing while the doors are open', () => {
    const jobs = serveJobs(values, event);
    expect(jobs).toHaveLength(8);
    for (const j of jobs) expect(j.earliest >= event.opensAt && j.latest <= event.closesAt + 10).toBe(true);
  });
  test('what is left of cooked dishes is cooled, fried ones are not; more guests, more to clean', () => {
    const few = afterJobs(values, event, 10);
    const many = afterJobs(values, event, 200);
    expect(coolJobs(values, event, inputs.menu).map((j) => j.id)).toEqual(['cool/rice']);
    const kitchen = (jobs: typeof few) => jobs.find((j) => j.id === 'clean/kitchen')!.stretches[0]!.minutes;
    expect(kitchen(many)).toBeGreaterThan(kitchen(few));
    expect(afterJobs(values, event, 0).map((j) => j.id)).not.toContain('clean/room');
  });
  test('oil is moved only after its rest', () => {
    expect(oilAwayJobs(values, event, inputs.frying).map((j) => [j.id, j.earliest, j.anyTime])).toEqual([['oil-away/pan0', 800 + 720, true]]);
  });
});

const own = (figure: string, value: number) => dayValues({ ...event, houseFigures: [{ figure, value, unit: 'min', why: 'We know our room.' }] });
const first = (jobs: ReturnType<typeof serveJobs>) => jobs.at(-1)!.stretches[0]!.minutes;

describe('the household\u2019s own minutes', () => {
  test('set the length of setting up, rounds, cleaning and the oil', () => {
    expect(first(setUpJobs(own('day.tables', 75), event, inputs.frying, false))).toBe(75);
    expect(first(serveJobs(own('day.round', 4), event))).toBe(4);
    expect(serveJobs(own('day.between', 120), event)).toHaveLength(3);
    expect(first(afterJobs(own('day.guestMost', 5), event, 400))).toBe(30 + 5);
    expect(first(oilAwayJobs(own('day.oil', 33), event, inputs.frying))).toBe(33);
  });
  test('set when the shops are open and how long a trip takes', () => {
    const [trip] = shopJobs({ ...values, shopsOpen: 600, shop: 30, perLine: 1 }, buying([line('flour', null, 'b')]), never, event.day);
    expect([trip!.earliest, trip!.stretches[0]!.minutes]).toEqual([-3 * 1440 + 600, 31]);
  });
  test('are never less than a minute, and shares never more than one person', () => {
    expect(own('day.tables', -10).tables).toBe(1);
    expect(own('day.handsOn', 5).handsOn).toBe(1);
  });
});
