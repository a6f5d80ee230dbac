import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { figuresIn, wordFaults, workingFaults } from '../frying/fry-event';

const parsed = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
if (!parsed.ok) throw new Error('the demo does not open');
const demo = parsed.event;
const bottled = (burners: readonly string[], gasKg = 11): Event => ({
  ...demo,
  kitchen: { ...demo.kitchen, cylinders: [{ id: 'tank', gasKg, place: 'outdoor' }], burners: demo.kitchen.burners.map((b) => (burners.includes(b.id) ? { ...b, kind: 'lpg' as const, cylinder: 'tank' } : b)) },
});
const firstTwo = demo.kitchen.burners.slice(0, 2).map((b) => b.id);

describe('gas of a cylinder', () => {
  it('is told only for cylinders that a burner draws from', () => {
    expect(plan(bottled([])).day.gas).toEqual([]);
    expect(plan(bottled(firstTwo)).day.gas.map((g) => g.burners.map((b) => b.burner))).toEqual([firstTwo]);
  });
  it('equals an independent count, minute by minute, of burners held by the plan', () => {
    const event = bottled(firstTwo);
    const { day } = plan(event);
    let joules = 0;
    for (const id of firstTwo) {
      const burner = event.kitchen.burners.find((b) => b.id === id)!;
      const minutes = new Set<number>();
      for (const task of day.tasks) if (task.needs.some((n) => n.thing === `burner:${id}`)) for (let t = task.start * 2; t < task.end * 2; t += 1) minutes.add(t);
      joules += minutes.size * 30 * burner.ratedW;
    }
    expect(joules).toBeGreaterThan(0);
    // Times of tasks are whole or half minutes or finer: the count by half minutes is near, never far.
    expect(Math.abs(day.gas[0]!.needKg.value / (joules / 46.3e6) - 1)).toBeLessThan(0.02);
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
