import { describe, expect, it } from 'vitest';
import { adultBands, checkEvent, childBands, parseEvent, serialiseEvent, type Event } from '../../../shared/event';
import { ingredient } from '../../../shared/reference';
import { demo, demoNames, demoText } from './demo';

const ids = (list: readonly { readonly id: string }[]) => list.map((x) => x.id);
const missing = (wanted: readonly string[], known: readonly string[]) => wanted.filter((w) => !known.includes(w));
const people = (e: Event, bands: readonly (keyof Event['guests']['waves'][number]['counts'])[]) =>
  e.guests.waves.reduce((sum, w) => sum + bands.reduce((s, b) => s + Number(w.counts[b]), 0), 0);

describe.each(demoNames)('the demo event %s', (name) => {
  const e = demo(name);

  it('opens without a problem and is written back byte for byte', () => {
    const text = demoText(name);
    const read = parseEvent(text);
    expect(read.ok).toBe(true);
    expect(checkEvent(e)).toEqual([]);
    expect(serialiseEvent(e)).toBe(text);
  });

  it('has unique ids in every list', () => {
    for (const list of [e.guests.waves, e.menu.dishes, e.recipes, e.kitchen.pans, e.kitchen.burners, e.kitchen.pots, e.kitchen.dispensers, e.kitchen.stations, e.people]) {
      expect(new Set(ids(list)).size).toBe(list.length);
    }
  });

  it('refers only to what it has', () => {
    expect(missing(e.menu.dishes.map((d) => d.recipe), ids(e.recipes))).toEqual([]);
    expect(missing(e.kitchen.pans.map((p) => p.burner), ids(e.kitchen.burners))).toEqual([]);
    expect(missing(e.kitchen.stations.flatMap((s) => s.pans), ids(e.kitchen.pans))).toEqual([]);
    expect(missing(e.kitchen.stations.flatMap((s) => s.dishes), ids(e.menu.dishes))).toEqual([]);
    expect(missing(e.kitchen.dispensers.flatMap((d) => (d.dish === undefined ? [] : [d.dish])), ids(e.menu.dishes))).toEqual([]);
    expect(missing(e.kitchen.burners.flatMap((b) => (b.circuit === undefined ? [] : [b.circuit])), ids(e.kitchen.circuits))).toEqual([]);
    for (const r of e.recipes) expect(missing(r.steps.flatMap((s) => s.after), ids(r.steps))).toEqual([]);
  });

  it('uses each recipe, and only ingredients of the table', () => {
    expect(missing(ids(e.recipes), e.menu.dishes.map((d) => d.recipe))).toEqual([]);
    const used = e.recipes.flatMap((r) => r.ingredients.map((l) => l.ingredient));
    expect([...used, ...e.larder.map((l) => l.ingredient), ...e.prices.map((p) => p.ingredient)].filter((i) => ingredient(i) === undefined)).toEqual([]);
  });

  it('says of every recipe where it comes from', () => {
    for (const r of e.recipes) expect(r.source.length).toBeGreaterThan(10);
  });

  it('has somebody for every step, and burners and pots enough for each', () => {
    const roles = e.people.flatMap((p) => p.roles);
    const steps = e.recipes.flatMap((r) => r.steps);
    expect(missing(steps.flatMap((s) => (s.by === undefined ? [] : [s.by])), roles)).toEqual([]);
    for (const s of steps) for (const n of s.needs) expect(n.count).toBeLessThanOrEqual({ burner: e.kitchen.burners.length, pot: e.kitchen.pots.length, pan: e.kitchen.pans.length, oven: e.kitchen.ovens, counter: e.kitchen.counterPlaces }[n.thing]);
  });

  it('gives every step a window in the order of the steps before it', () => {
    for (const r of e.recipes) {
      for (const s of r.steps) {
        if (s.endsBefore === undefined) throw new Error(`${r.id}/${s.id} has no window`);
        expect(s.endsBefore.earliest).toBeGreaterThanOrEqual(s.endsBefore.latest);
        for (const before of r.steps.filter((x) => s.after.includes(x.id))) {
          expect(before.endsBefore?.latest ?? 0).toBeGreaterThanOrEqual(s.endsBefore.latest + s.active.fixed + s.passive.fixed);
        }
      }
    }
  });
});

describe('the three demo events', () => {
  it('is a Lantern Evening of 68 adults and 21 children in four waves on a Saturday', () => {
    const e = demo('lantern-evening');
    expect([people(e, adultBands), people(e, childBands), e.guests.waves.length]).toEqual([68, 21, 4]);
    expect(new Date(`${e.day}T12:00:00Z`).getUTCDay()).toBe(6);
    expect([e.opensAt, e.closesAt]).toEqual([660, 1140]);
    expect(e.people.map((p) => p.name)).toEqual(['Cook', 'Fryer', 'Tea', 'Runner']);
    expect(e.guests.allergies.map((a) => a.allergen)).toContain('sesame');
  });

  it('is a fair of 320 guests with two fry stations', () => {
    const e = demo('school-fair-stall');
    expect(people(e, [...adultBands, ...childBands])).toBe(320);
    expect(e.kitchen.stations.length).toBe(2);
  });

  it('is a Sunday without guests or frying, where storage matters', () => {
    const e = demo('freezer-sunday');
    expect([e.guests.waves.length, e.kitchen.pans.length]).toEqual([0, 0]);
    expect(e.recipes.filter((r) => r.frying !== undefined)).toEqual([]);
    for (const r of e.recipes) expect(r.steps.at(-1)?.keeps?.minutes).toBeGreaterThanOrEqual(30 * 1440);
    for (const d of e.menu.dishes) expect(d.served.kind).toBe('fixed');
  });

  it('boils kidney beans as they must be', () => {
    const steps = demo('freezer-sunday').recipes.find((r) => r.id === 'bean-soup')?.steps ?? [];
    expect(steps.find((s) => s.does === 'soak')?.passive.fixed).toBeGreaterThanOrEqual(300);
    expect(steps.find((s) => s.does === 'boil')?.passive.fixed).toBeGreaterThanOrEqual(30);
  });
});
