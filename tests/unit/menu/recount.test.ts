/** Demand counted again guest by guest, with none of the core's closed forms. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adults, dish, drinkOf, menuEvent, menuOf, piecesOf, recipeOf, sum } from './make-menu';

const guests = 400;

interface Party { readonly from: number; readonly length: number; readonly stay: number; readonly adult: number }

/** Share of one guest's snack eaten `t` minutes after arriving: 60 % evenly over the first 30 minutes, the rest evenly over what is left of the stay. */
function eaten(t: number, stay: number): number {
  if (t <= 0) return 0;
  if (t >= stay) return 1;
  if (stay - 30 < 1) return t / stay;
  return t <= 30 ? (0.6 * t) / 30 : 0.6 + (0.4 * (t - 30)) / (stay - 30);
}

/** Share of a wave's demand come by minute `t`, by adding up guests who arrive one after the other. */
function come(party: Party, t: number, share: (since: number, arrival: number) => number): number {
  const width = Math.max(1, party.length);
  let total = 0;
  for (let g = 0; g < guests; g += 1) {
    const arrival = party.from + (width * (g + 0.5)) / guests;
    total += share(t - arrival, arrival) / guests;
  }
  return total;
}

const party = fc.record({ from: fc.integer({ min: 660, max: 900 }), length: fc.integer({ min: 0, max: 180 }), stay: fc.integer({ min: 10, max: 240 }), adult: fc.integer({ min: 1, max: 80 }) });
const waveOf = (p: Party) => adults(p.adult, { from: p.from, to: p.from + p.length, stay: { shortest: p.stay, usual: p.stay, longest: p.stay } });

/** Largest difference, in portions, between the core's running total and the recount. */
function worst(plan: ReturnType<typeof dish>, parties: readonly Party[], share: (p: Party) => (since: number, arrival: number) => number, weight: (p: Party) => number): number {
  const all = sum(parties.map(weight));
  let running = 0;
  let most = 0;
  plan.demand.values.forEach((value, i) => {
    running += value;
    if (i % 7 !== 0) return;
    const t = plan.demand.fromMinute + i + 1;
    const expected = (plan.portions.value * sum(parties.map((p) => weight(p) * come(p, t, share(p))))) / all;
    most = Math.max(most, Math.abs(running - expected));
  });
  return most;
}

const stayFactor = (stay: number): number => Math.min(1.6, stay <= 60 ? (0.7 * stay) / 60 : stay <= 90 ? 0.7 + (0.3 * (stay - 60)) / 30 : 1 + (0.2 * (stay - 90)) / 60);
const cups = (stay: number): number => (stay <= 60 ? stay / 30 : 2 + (stay - 60) / 60);
const pieces = (p: Party): number => p.adult * 5 * stayFactor(p.stay);
const poured = (p: Party): number => p.adult * cups(p.stay);

describe('demand counted guest by guest', () => {
  it('a snack: total and every minute agree', () => {
    fc.assert(fc.property(fc.array(party, { minLength: 1, maxLength: 3 }), (parties) => {
      const plan = dish(menuOf(menuEvent([piecesOf('a', 'friedSnack')], parties.map(waveOf))), 'd-a');
      expect(plan.portions.value).toBe(Math.ceil(sum(parties.map(pieces)) - 1e-9));
      // Half a portion of rounding; the recount's steps do the rest.
      expect(worst(plan, parties, (p) => (since) => eaten(since, p.stay), pieces)).toBeLessThan(0.5 + 0.01 * plan.portions.value);
    }), { numRuns: 25 });
  });

  it('a drink: total and every minute agree', () => {
    fc.assert(fc.property(fc.array(party, { minLength: 1, maxLength: 3 }), (parties) => {
      const plan = dish(menuOf(menuEvent([drinkOf('t', true, true)], parties.map(waveOf))), 'd-t');
      expect(plan.portions.value).toBe(Math.ceil(sum(parties.map(poured)) - 1e-9));
      expect(worst(plan, parties, (p) => (since) => Math.min(1, Math.max(0, since / p.stay)), poured)).toBeLessThan(0.5 + 0.01 * plan.portions.value);
    }), { numRuns: 25 });
  });

  it('a meal at a set time: who is there eats, evenly over the time there', () => {
    const window = { from: 780, to: 860 };
    fc.assert(fc.property(party, (p) => {
      const plan = dish(menuOf(menuEvent([recipeOf('r', 'grain')], [waveOf(p)], {}, [{ id: 'd-r', recipe: 'r', served: { kind: 'between', ...window } }])), 'd-r');
      const there = come(p, 0, (_, arrival) => (arrival < window.to && arrival + p.stay > window.from ? 1 : 0));
      const real = p.adult * Math.min(1, stayFactor(p.stay)) * there;
      expect(Math.abs(plan.portions.value - real)).toBeLessThan(1 + 0.01 * p.adult);
      expect(plan.firstServed === null || (plan.firstServed >= window.from && Number(plan.lastServed) < window.to)).toBe(true);
    }), { numRuns: 60 });
  });
});

describe('what one person drinks', () => {
  it('adds up over the drinks to the cups of the age, hot ones by liking, and never more', () => {
    const takeUp = fc.integer({ min: 0, max: 100 }).map((n) => n / 100);
    fc.assert(fc.property(takeUp, takeUp, takeUp, takeUp, fc.integer({ min: 10, max: 400 }), (tea, cocoa, water, juice, stay) => {
      const recipes = [drinkOf('tea', true, true), drinkOf('cocoa', true, false), drinkOf('water', false, false), drinkOf('juice', false, false)];
      const dishes = [tea, cocoa, water, juice].map((t, i) => ({ id: `d${i}`, recipe: recipes[i]?.['id'], takeUp: t }));
      const menu = menuOf(menuEvent(recipes, [adults(10, { stay: { shortest: stay, usual: stay, longest: stay } })], {}, dishes));
      const all = tea + cocoa + water + juice;
      expect(sum(menu.dishes.map((d) => d.perBand.adult))).toBeCloseTo(cups(stay) * Math.min(1, all), 9);
      // Older adults may like tea so much that cold drinks stay at nothing; nobody else exceeds the drinks of the age.
      const most = { age1to3: 0.45, age4to6: 0.62, age7to9: 0.75, age13to17: 0.95 } as const;
      for (const [band, factor] of [['age1to3', most.age1to3], ['age4to6', most.age4to6], ['age7to9', most.age7to9], ['age13to17', most.age13to17]] as const) {
        expect(sum(menu.dishes.map((d) => d.perBand[band]))).toBeLessThanOrEqual(cups(stay) * factor + 1e-9);
      }
    }), { numRuns: 80 });
  });
});
