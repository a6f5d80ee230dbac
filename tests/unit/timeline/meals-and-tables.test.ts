import { describe, expect, test } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { sayMessage } from '../../../shared/words';
import { demo } from '../demo/demo';
import { faultsOf } from './check-day';

const lantern = demo('lantern-evening');
const withAdults = (adults: number) => ({ ...lantern, guests: { ...lantern.guests, headcount: { ...lantern.guests.headcount, adults } } });
const formats = formatsFor(lantern.preferences, lantern.day);

describe('setting up', () => {
  test.each([68, 75, 90, 105])('at %i adults everything is set up by somebody, each station shortly before its own oil is lit', (adults) => {
    const { day, frying } = plan(withAdults(adults));
    expect(faultsOf(withAdults(adults), day)).toEqual([]);
    const setUps = day.tasks.filter((t) => t.kind === 'setUp');
    expect(setUps.map((t) => t.id).toSorted()).toEqual(['set-up/drinks', 'set-up/station/fritter-station', 'set-up/station/pepper-station', 'set-up/tables']);
    for (const t of setUps) expect(t.who).toHaveLength(1);
    for (const t of setUps.filter((x) => x.station !== undefined)) {
      const heatOn = Math.min(...frying.sessions.filter((s) => s.station === t.station).map((s) => s.heatOnAt));
      expect(t.end).toBeLessThanOrEqual(heatOn);
      expect(heatOn - t.end).toBeLessThanOrEqual(60);
    }
  });
  test('over the headcounts from 68 to 110 few days have a job without anybody, and none is called late', () => {
    const overloads = Array.from({ length: 22 }, (_, i) => plan(withAdults(68 + 2 * i)).day.overloads).flat();
    expect(overloads.filter((o) => o.task.startsWith('set-up/') || o.task.startsWith('serve/'))).toEqual([]);
    expect(overloads.length).toBeLessThanOrEqual(6);
    expect(overloads.filter((o) => o.message.id === 'timeline.overload.nobody' && o.lateMinutes > 0)).toEqual([]);
  });
});

describe('the noon meal', () => {
  test('is put on the table just before its time, once for all its dishes, by one person', () => {
    const { day, menu } = plan(lantern);
    const meals = day.tasks.filter((t) => t.id.startsWith('serve/meal/'));
    expect(meals).toHaveLength(1);
    const [meal] = meals;
    if (meal === undefined) throw new Error('the demo has a noon meal');
    expect(meal.end - meal.start).toBe(10);
    expect(meal.end).toBeLessThanOrEqual(750);
    expect(meal.end).toBeGreaterThanOrEqual(735);
    expect(meal.who).toHaveLength(1);
    const words = sayMessage(formats, meal.name);
    for (const id of ['rice', 'pulses', 'beans-sesame', 'flatbread', 'plain-rice-carrot']) expect(words).toContain(menu.dishes.find((d) => d.id === id)?.name ?? 'missing');
    expect(words).not.toContain('coffee');
  });
  test('two meals are put out twice; nothing served throughout makes one', () => {
    const later = { ...lantern, menu: { dishes: lantern.menu.dishes.map((d) => (d.id === 'rice' ? { ...d, served: { kind: 'between' as const, from: 960, to: 1000 } } : d)) } };
    expect(plan(later).day.tasks.filter((t) => t.id.startsWith('serve/meal/')).map((t) => t.id)).toEqual(['serve/meal/pulses', 'serve/meal/rice']);
    const throughout = { ...lantern, menu: { dishes: lantern.menu.dishes.map((d) => ({ ...d, served: { kind: 'throughout' as const } })) } };
    expect(plan(throughout).day.tasks.filter((t) => t.id.startsWith('serve/meal/'))).toEqual([]);
  });
});
