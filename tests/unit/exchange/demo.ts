import { readFileSync } from 'node:fs';
import { parseEvent, type Event } from '../../../shared/event';

/** Names of the demo events. */
export const demos = ['lantern-evening', 'school-fair-stall', 'freezer-sunday'] as const;

/** A demo event. */
export function demo(name: (typeof demos)[number]): Event {
  const read = parseEvent(readFileSync(new URL(`../../../assets/app/demo/${name}.brimful`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.event;
}
