import { readFileSync } from 'node:fs';
import { eventSchema, type Event } from '../../../shared/event';

/** Names of the demo events shipped with the product. */
export const demoNames = ['lantern-evening', 'school-fair-stall', 'freezer-sunday'] as const;

/** The text of a demo event's file. */
export const demoText = (name: (typeof demoNames)[number]): string =>
  readFileSync(new URL(`../../../assets/app/demo/${name}.brimful`, import.meta.url), 'utf8');

/** A demo event as the product reads it. */
export const demo = (name: (typeof demoNames)[number]): Event => eventSchema.parse(JSON.parse(demoText(name)));
