import type { Event } from '../../../shared/event';
import type { TimelinePlan } from '../../../shared/timeline';

/**
 * Reads a day plan as a careful stranger would, minute by minute, without the planner's own code: nobody over-booked or outside their
 * hours, no thing used more often than the kitchen has it, order kept. Returns what is wrong, in words.
 */
export function faultsOf(event: Event, plan: TimelinePlan): string[] {
  const faults: string[] = [];
  const attention = new Map<string, number>();
  const things = new Map<string, number>();
  const has = new Map<string, number>([
    ['burner', event.kitchen.burners.length], ['pot', event.kitchen.pots.length], ['pan', event.kitchen.pans.length],
    ['oven', event.kitchen.ovens], ['counter', event.kitchen.counterPlaces],
  ]);
  const byId = new Map(plan.tasks.map((t) => [t.id, t]));
  if (byId.size !== plan.tasks.length) faults.push('two tasks share an id');
  for (const t of plan.tasks) {
    if (!(t.end >= t.start)) faults.push(`${t.id} ends before it starts`);
    for (const id of t.after) {
      const before = byId.get(id);
      if (before !== undefined && before.end > t.start + 1e-6) faults.push(`${t.id} starts before ${id} ends`);
    }
    for (const who of t.who) {
      const person = event.people.find((p) => p.id === who);
      if (person === undefined) faults.push(`${t.id} names ${who}, who is not in the list`);
      else if (t.attention > 0 && !atHome(t) && (t.start < person.from - 1e-6 || t.end > person.to + 1e-6)) faults.push(`${t.id} is outside the hours of ${who}`);
    }
    // Half-minute samples between whole and half minutes.
    for (let at = Math.ceil(t.start * 2) / 2 + 0.25; at < t.end; at += 0.5) {
      for (const who of t.who) add(attention, `${who}@${at}`, t.attention);
      for (const n of t.needs) {
        add(things, `${n.thing}@${at}`, n.count);
        if (n.thing.includes(':')) add(things, `${n.thing.split(':')[0]}@${at}`, n.count);
      }
    }
  }
  for (const [key, sum] of attention) if (sum > 1 + 1e-9) faults.push(`${key}: attention ${sum}`);
  for (const [key, count] of things) {
    const thing = key.split('@')[0]!;
    if (count > (thing.includes(':') ? 1 : has.get(thing) ?? 0)) faults.push(`${key}: used ${count} times`);
  }
  return faults;
}

/** Shopping, putting the oil away, storing what is left when everybody has gone, and what is done on a day before are the household's; hours are for the day of the event. */
export const atHome = (t: { readonly kind: string; readonly start: number }): boolean => t.kind === 'shop' || t.kind === 'oilAway' || t.kind === 'store' || ((t.kind === 'step' || t.kind === 'check' || t.kind === 'own') && t.start < 0);

const add = (map: Map<string, number>, key: string, n: number): void => { map.set(key, (map.get(key) ?? 0) + n); };
