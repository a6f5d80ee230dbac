import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eventSchema, formatsFor, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { planDay, type TimelinePlan } from '../../../shared/timeline';
import { sayMessage } from '../../../shared/words';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const kitchen: TestDay = { people: ['ana', 'ben', 'cy'].map((id) => ({ id, roles: ['runner'], from: 420, to: 1200 })), burners: 2, dishes: [] };
const kettle = (k: number, from: number, to: number) => ({ id: `kettle-${k}`, name: `Kettle ${k}`, minutes: 20, from, to, needs: [{ thing: `burner:b${k}`, count: 1 }] });

/** Two jobs of twenty minutes on two electric rings of 2,000 W, on one circuit of so many amps, or on none. */
function dayOn(amps: number | null, to: number, kind = 'electric'): { event: Event; day: TimelinePlan } {
  const base = dayEvent(kitchen);
  const event = eventSchema.parse({
    ...base, dayJobs: { ownJobs: [kettle(0, 600, to), kettle(1, 600, to)], changes: [] },
    kitchen: {
      ...base.kitchen, circuits: amps === null ? [] : [{ id: 'c', name: 'Kitchen circuit', volts: 230, amps, otherWatts: 100 }],
      burners: base.kitchen.burners.map((b) => ({ ...b, kind, ratedW: 2000, ...(amps === null ? {} : { circuit: 'c' }) })),
    },
  });
  return { event, day: planDay(event, inputsOf(kitchen, event)) };
}
const starts = (day: TimelinePlan) => day.tasks.filter((t) => t.kind === 'own').map((t) => Number(t.start));

describe('watts of a circuit', () => {
  test('two kettles that are too much for it run one after the other', () => {
    expect(starts(dayOn(16, 660).day)).toEqual([600, 620]);
  });
  test('run together where it carries both, where none is named, and where they burn gas', () => {
    expect(starts(dayOn(20, 660).day)).toEqual([600, 600]);
    expect(starts(dayOn(null, 660).day)).toEqual([600, 600]);
    expect(starts(dayOn(16, 660, 'gas').day)).toEqual([600, 600]);
  });
  test('where there is no time for one after the other, the day names the circuit and what it carries', () => {
    const { event, day } = dayOn(16, 625);
    expect(day.overloads).toHaveLength(1);
    expect(sayMessage(formatsFor(event.preferences, event.day), day.overloads[0]!.message)).toBe('Too much for Kitchen circuit 10:00-10:20: this takes 2,000 W, and the circuit carries 3,580 W for all that runs together. Use a socket of another circuit, or do it at another time.');
    expect(day.overloads[0]?.clash?.tasks.toSorted()).toEqual(['own/kettle-0', 'own/kettle-1']);
  });
});

test('in no demo does more run on a circuit than it carries, minute by minute', () => {
  for (const name of ['lantern-evening', 'school-fair-stall']) {
    const event = eventSchema.parse(JSON.parse(readFileSync(`assets/app/demo/${name}.brimful`, 'utf8')));
    const { tasks } = plan(event).day;
    const watts = (thing: string, circuit: string): number => {
      const burner = event.kitchen.burners.find((b) => thing === `burner:${b.id}` && b.circuit === circuit && (b.kind === 'electric' || b.kind === 'induction'));
      return burner?.ratedW ?? event.kitchen.dispensers.find((d) => thing === `urn:${d.id}` && d.circuit === circuit)?.brewsW ?? 0;
    };
    for (const c of event.kitchen.circuits) for (let at = 0.5; at < 1440; at += 1) {
      const sum = tasks.reduce((n, t) => n + (t.start <= at && t.end > at ? t.needs.reduce((m, x) => m + watts(x.thing, c.id), 0) : 0), c.otherWatts);
      expect(sum, `${name} ${c.name} at ${at}`).toBeLessThanOrEqual(c.volts * c.amps);
    }
  }
});
