import { describe, expect, test } from 'vitest';
import { eventSchema, formatsFor } from '../../../shared/event';
import { sayMessage, type Message } from '../../../shared/words';

const event = eventSchema.parse({ format: 'brimful-event/1', id: 'w', title: 'Words', day: '2026-12-12', opensAt: 600, closesAt: 700 });
const words = (m: Message): string => sayMessage(formatsFor(event.preferences, event.day), m);

describe('what the day says when it does not fit', () => {
  test('nobody free: who is where, and what to do', () => {
    expect(words({ id: 'timeline.overload.nobody', params: { from: 720, to: 735, atOil: 2, busy: 1, away: 0 } }))
      .toBe('Nobody yet 12:00-12:15: 2 at the oil and 1 busy with other jobs. Ask one more helper for this time, or move another job.');
  });
  test('one job or several outside the hours', () => {
    expect(words({ id: 'timeline.overload.outside', params: { jobs: 1, from: 300, to: 360 } })).toContain('1 job lies outside the hours of all helpers');
    expect(words({ id: 'timeline.overload.outside', params: { jobs: 3, from: 300, to: 360 } })).toContain('3 jobs lie outside the hours of all helpers');
  });
  test('a thing the kitchen has none of, and one that is taken', () => {
    expect(words({ id: 'timeline.overload.thing', params: { thing: 'oven', wanted: 1, has: 0, from: 720, to: 735 } })).toContain('This needs 1 oven and the kitchen lists 0');
    expect(words({ id: 'timeline.overload.thing', params: { thing: 'burner', wanted: 1, has: 3, from: 720, to: 735 } })).toContain('All burners it could use are taken 12:00-12:15');
  });
});
