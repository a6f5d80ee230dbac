import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { countHelpersIn } from '../../../shared/edit';
import { newEvent, parseEvent, serialiseEvent, type Event } from '../../../shared/event';
import { planGuests } from '../../../shared/guests';
import { planMenu } from '../../../shared/menu';

const demo = ((): Event => {
  const read = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
  if (!read.ok) throw new Error('expected the demo');
  return read.event;
})();

const fail = (): never => { throw new Error('a new event has a cook'); };
const portions = (event: Event): number[] => planMenu(event, planGuests(event)).dishes.map((d) => d.portions.value);

describe('helpers who eat and drink too', () => {
  it('come as a wave of adults of their own, for their hours, on top of everybody else', () => {
    const done = countHelpersIn(demo, 'Helpers');
    if (!('event' in done)) throw new Error('refused');
    const wave = done.event.guests.waves.at(-1);
    expect(wave?.counts.adult).toBe(demo.people.length);
    expect(wave?.from).toBe(Math.min(...demo.people.map((p) => p.from)));
    expect((wave?.stay.shortest ?? 0) <= (wave?.stay.usual ?? 0) && (wave?.stay.usual ?? 0) <= (wave?.stay.longest ?? 0)).toBe(true);
    const [before, after] = [planGuests(demo), planGuests(done.event)];
    expect(after.adults.value).toBe(before.adults.value + demo.people.length);
    const [few, more] = [portions(demo), portions(done.event)];
    few.forEach((n, i) => expect(more[i]).toBeGreaterThanOrEqual(n));
    expect(more.some((n, i) => n > (few[i] ?? 0))).toBe(true);
    expect(parseEvent(serialiseEvent(done.event)).ok).toBe(true);
  });

  it.each([
    [[[600, 660], [600, 661]], { shortest: 60, usual: 61, longest: 61 }, { from: 600, to: 600 }],
    [[[600, 660], [630, 690], [615, 676]], { shortest: 60, usual: 60, longest: 61 }, { from: 600, to: 630 }],
    [[[600, 600], [610, 611]], { shortest: 1, usual: 1, longest: 1 }, { from: 600, to: 610 }],
  ])('stay for the mean of their hours, to the nearest minute: %j', (hours, stay, coming) => {
    const empty = newEvent({ id: 'a', title: 'x', day: '2026-12-12' });
    const people = hours.map(([from = 0, to = 0], n) => ({ id: `p${n}`, name: `Helper ${n}`, from, to, roles: [] }));
    const done = countHelpersIn({ ...empty, people: people.map((p) => ({ ...(empty.people[0] ?? fail()), ...p })) }, 'Helpers');
    const wave = 'event' in done ? done.event.guests.waves.at(-1) : undefined;
    expect(wave).toMatchObject({ stay, ...coming, counts: { adult: hours.length } });
  });

  it('without helpers nothing changes', () => {
    const empty = newEvent({ id: 'a', title: 'x', day: '2026-12-12' });
    const done = countHelpersIn({ ...empty, people: [] }, 'Helpers');
    expect('event' in done ? done.event.guests : null).toEqual(empty.guests);
  });
});
