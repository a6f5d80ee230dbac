import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { planDay } from '../../../shared/timeline';
import { dayEvent, inputsOf } from './make-day';
import { figuresIn, wordFaults, workingFaults } from '../frying/fry-event';

const parsed = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
if (!parsed.ok) throw new Error('the demo does not open');
const demo = parsed.event;
const bottled = (burners: readonly string[], gasKg = 11): Event => ({
  ...demo,
  kitchen: { ...demo.kitchen, cylinders: [{ id: 'tank', gasKg, place: 'outdoor' }], burners: demo.kitchen.burners.map((b) => (burners.includes(b.id) ? { ...b, kind: 'lpg' as const, cylinder: 'tank' } : b)) },
});
const firstTwo = demo.kitchen.burners.slice(0, 2).map((b) => b.id);

const step = (id: string, at: number, passive: number) => ({ id, at, steps: [{ id: 'boil', active: 5, passive, needs: [{ thing: 'burner', count: 1 }] }] });
const one = (minutes: number) => (minutes * 60 * 3000) / 46.3e6;

describe('gas of a cylinder', () => {
  it('is told only for cylinders that a burner draws from', () => {
    expect(plan(bottled([])).day.gas).toEqual([]);
    expect(plan(bottled(firstTwo)).day.gas.map((g) => g.burners.map((b) => b.burner))).toEqual([firstTwo]);
  });
  it('equals an independent count, half minute by half minute, of what stands on its burners', () => {
    const event = bottled(firstTwo);
    const { day } = plan(event);
    // The pans of oil stand on both, so that no step of a recipe comes to them: the independent count needs no choice of burner.
    const named = (id: string) => day.tasks.filter((t) => t.needs.some((n) => n.thing === `burner:${id}`));
    let joules = 0;
    for (const id of firstTwo) {
      const { ratedW } = event.kitchen.burners.find((b) => b.id === id)!;
      const lit = new Map<number, boolean>();
      for (const task of named(id)) for (let t = task.start * 2; t < task.end * 2; t += 1) lit.set(t, (lit.get(t) ?? true) && task.kind === 'watchOil');
      for (const oil of lit.values()) joules += 30 * ratedW * (oil ? 0.7 : 1);
    }
    expect(joules).toBeGreaterThan(0);
    // Times of tasks are whole or half minutes or finer: the count by half minutes is near, never far.
    expect(Math.abs(day.gas[0]!.needKg.value / (joules / 46.3e6) - 1)).toBeLessThan(0.02);
  });
  it('counts pots of recipe steps, which name no burner: full flame, each once', () => {
    const used = (dishes: readonly ReturnType<typeof step>[]) => {
      const d = { people: [{ id: 'cook', roles: ['cook'], from: 480, to: 1200 }], burners: 2, dishes };
      const event = dayEvent(d);
      const onGas: Event = { ...event, kitchen: { ...event.kitchen, burners: event.kitchen.burners.map((b) => ({ ...b, kind: 'lpg' as const })) } };
      return planDay(onGas, inputsOf(d, onGas)).gasNeed?.usedKg.value ?? 0;
    };
    expect(used([step('rice', 720, 55)])).toBeCloseTo(one(60), 9);
    expect(used([step('rice', 720, 55), step('beans', 720, 85)])).toBeCloseTo(one(150), 9);
    expect(used([])).toBe(0);
  });
  it('of an electric burner there is none, whatever cylinder it names', () => {
    const event = bottled(firstTwo);
    const electric: Event = { ...event, kitchen: { ...event.kitchen, burners: event.kitchen.burners.map((b) => ({ ...b, kind: 'electric' as const })) } };
    expect([plan(electric).day.gas, plan(electric).day.gasNeed]).toEqual([[], null]);
  });
  it('lasts by its heat and the ratings of its burners', () => {
    const event = bottled([firstTwo[0]!]);
    const watts = event.kitchen.burners.find((b) => b.id === firstTwo[0])!.ratedW;
    expect(plan(event).day.gas[0]!.lasts.value).toBeCloseTo((11 * 0.8 * 46.3e6) / watts / 60, 6);
  });
  it('shows its working', () => {
    const all = figuresIn(plan(bottled(firstTwo)).day.gas);
    expect(all.length).toBeGreaterThan(3);
    expect(all.flatMap(workingFaults)).toEqual([]);
    expect(all.flatMap(wordFaults)).toEqual([]);
  });
});
