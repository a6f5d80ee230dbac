import { describe, expect, it } from 'vitest';
import { formatsFor, type Event } from '../../../shared/event';
import { planText } from '../../../shared/exchange';
import { plan } from '../../../shared/plan';
import { sayMessage } from '../../../shared/words';
import { demo } from './demo';

/** Lines of one part of the page, without the two spaces before them. */
function partOf(text: string, heading: string): string[] {
  const lines = text.split('\n');
  const from = lines.indexOf(heading);
  return from < 0 ? [] : lines.slice(from + 1).slice(0, lines.slice(from + 1).indexOf('')).map((l) => l.slice(2));
}
const read = (event: Event) => {
  const made = plan(event);
  const formats = formatsFor(event.preferences, event.day);
  const text = planText(made, formats);
  return { made, formats, text, top: partOf(text, 'What needs attention') };
};
const lantern = demo('lantern-evening');

describe('what needs attention, at the top of the page', () => {
  it('names the jobs that nobody can do, once, and not again at the day', () => {
    const { made, formats, text, top } = read({ ...lantern, people: lantern.people.filter((p) => p.id !== 'runner') });
    expect(made.day.overloads.length).toBeGreaterThan(0);
    for (const o of made.day.overloads) {
      expect(top.filter((l) => l.endsWith(sayMessage(formats, o.message))).length).toBeGreaterThan(0);
    }
    const first = sayMessage(formats, made.day.overloads[0]?.message ?? { id: 'report.inOrder' });
    expect(text.split(first).length - 1).toBe(top.filter((l) => l.endsWith(first)).length);
    expect(top).not.toContain('nothing');
  });
  it('names a drink that comes short or has no flask, once', () => {
    const { made, formats, text, top } = read({ ...lantern, kitchen: { ...lantern.kitchen, dispensers: lantern.kitchen.dispensers.filter((d) => d.dish !== 'ginger-tea') } });
    expect(made.drinks.problems.length).toBeGreaterThan(0);
    for (const p of made.drinks.problems) {
      expect(top).toContain(sayMessage(formats, p));
      expect(text.split(sayMessage(formats, p)).length).toBe(2);
    }
  });
  it('names fried food that comes short', () => {
    const { made, top } = read({ ...lantern, guests: { ...lantern.guests, headcount: { ...lantern.guests.headcount, adults: 260 } } });
    expect(made.frying.shortages.length).toBeGreaterThan(0);
    expect(top.filter((l) => l.includes('too few from')).length).toBe(made.frying.shortages.length);
  });
  it('tells who has no break, with a time to take over', () => {
    expect(read(lantern).top.some((l) => /^Fryer works .+ without a break\. Let somebody take over for a while about 1\d:\d\d\.$/.test(l))).toBe(true);
  });
  it('puts what must stop before all else', () => {
    const { top } = read({ ...lantern, people: [] });
    const levels = top.map((l) => l.startsWith('Stop: '));
    expect(levels.lastIndexOf(true)).toBeLessThan(Math.max(1, levels.indexOf(false) === -1 ? 1 : levels.indexOf(false)));
  });
});
