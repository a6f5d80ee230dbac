import { catalogue } from '../words';
import { eventFormat, eventSchema, type Event, type Preferences } from './schema/event';

/** What a new event starts from. */
export interface NewEvent {
  /** Name of the event among files; made by the host, for the core has no randomness. */
  readonly id: string;
  readonly title: string;
  /** `YYYY-MM-DD` */
  readonly day: string;
  readonly timeZone?: string;
  /** Minutes from midnight; 11:00 to 19:00 when absent. */
  readonly opensAt?: number;
  readonly closesAt?: number;
  readonly preferences?: Partial<Preferences>;
}

/**
 * An empty but sound event: one wave of nobody over the first half of the opening time, one burner, one cook, no dishes.
 * The stay of 1 to 3 hours, usually 2, and the 2.5 kW gas burner are starting points (common practice, no source).
 * @throws ZodError when the id, day or times are not sound.
 */
export function newEvent({ id, title, day, timeZone = 'UTC', opensAt = 660, closesAt = 1140, preferences = {} }: NewEvent): Event {
  return eventSchema.parse({
    format: eventFormat, id, title, day, timeZone, opensAt, closesAt, preferences,
    guests: {
      waves: [{
        id: 'wave-1', name: catalogue['event.new.wave'], from: opensAt, to: Math.round((opensAt + closesAt) / 2),
        counts: {}, stay: { shortest: 60, usual: 120, longest: 180 },
      }],
    },
    kitchen: { burners: [{ id: 'burner-1', name: catalogue['event.new.burner'], kind: 'gas', ratedW: 2500 }] },
    people: [{ id: 'cook', name: catalogue['event.new.cook'], roles: ['cook'], from: opensAt - 240, to: closesAt + 120 }],
  });
}
