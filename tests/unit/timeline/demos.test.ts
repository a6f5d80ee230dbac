import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eventSchema, formatsFor } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { sayMessage } from '../../../shared/words';
import { faultsOf } from './check-day';

const demos = ['lantern-evening', 'school-fair-stall', 'freezer-sunday'];
const demo = (name: string) => eventSchema.parse(JSON.parse(readFileSync(`assets/app/demo/${name}.brimful`, 'utf8')));

describe.each(demos)('%s', (name) => {
  const event = demo(name);
  const { day, frying, drinks, menu } = plan(event);
  const formats = formatsFor(event.preferences, event.day);

  test('an independent reader finds nobody and nothing over-booked', () => {
    expect(faultsOf(event, day)).toEqual([]);
  });
  test('holds every batch, bowl, round and fill, and each recipe step of its own', () => {
    const count = (kind: string): number => day.tasks.filter((t) => t.kind === kind).length;
    expect(count('fry')).toBe(frying.batches.length);
    expect(count('bowl')).toBe(frying.bowls.length);
    expect(count('fill')).toBe(drinks.fills.length);
    expect(new Set(day.tasks.filter((t) => t.kind === 'brew').map((t) => t.round)).size).toBe(drinks.rounds.length);
    for (const d of menu.dishes.filter((x) => x.recipe.frying === undefined && x.recipe.brewing === undefined && x.firstServed !== null)) {
      expect(d.recipe.steps.filter((s) => !day.tasks.some((t) => t.id.startsWith(`step/${s.id}/${d.id}`))).map((s) => s.id)).toEqual([]);
    }
  });
  test('somebody is at the hot oil from heat-on to heat-off of every pan, alone with it', () => {
    for (const s of frying.sessions) {
      const watches = day.tasks.filter((t) => t.kind === 'watchOil' && t.id.startsWith(`watch/${s.pan}/`) && t.start >= s.heatOnAt && t.end <= s.heatOffAt);
      expect(watches.reduce((n, t) => n + t.end - t.start, 0)).toBeCloseTo(s.heatOffAt - s.heatOnAt, 6);
      for (const w of watches) {
        const other = day.tasks.filter((t) => t.id !== w.id && t.attention > 0 && t.who.some((p) => w.who.includes(p)) && t.start < w.end - 1e-6 && t.end > w.start + 1e-6);
        expect(other.filter((t) => t.kind !== 'fry' && t.kind !== 'watchOil').map((t) => t.id)).toEqual([]);
      }
    }
  });
  test('every task and overload has words', () => {
    for (const t of day.tasks) expect(sayMessage(formats, t.name)).toMatch(/^\S.{3,}/);
    for (const o of day.overloads) expect(sayMessage(formats, o.message)).toMatch(/\.$/);
  });
});
