import { readFileSync } from 'node:fs';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { eventSchema, formatsFor } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { checklistsOf } from '../../../shared/sheets/checklists/points';
import { sheetsOf } from '../../../shared/sheets';
import { sayMessage } from '../../../shared/words';

const demo = (name: string) => plan(eventSchema.parse(JSON.parse(readFileSync(`assets/app/demo/${name}.brimful`, 'utf8'))));
const formatsOf = (p: ReturnType<typeof demo>) => formatsFor(p.event.preferences, p.event.day);

describe.each(['lantern-evening', 'school-fair-stall'])('the checklists of %s', (name) => {
  const p = demo(name);
  test('are four, with at most seven points each, read in under a minute', () => {
    const lists = checklistsOf(p);
    expect(lists.map((l) => l.id)).toEqual(['day-before', 'oil', 'doors', 'leftovers']);
    for (const list of lists) {
      expect(list.points.length).toBeGreaterThanOrEqual(5);
      expect(list.points.length).toBeLessThanOrEqual(7);
      // 130 words a minute, from memory as a slow reading pace.
      const words = list.points.map((point) => sayMessage(formatsOf(p), point.words)).join(' ').split(/\s+/).length;
      expect(words).toBeLessThanOrEqual(130);
      expect(list.at).not.toBeNull();
    }
  });
  test('say this event\u2019s own oil, times and people', () => {
    const oil = checklistsOf(p)[1]!.points.map((point) => sayMessage(formatsOf(p), point.words)).join('\n');
    for (const o of p.frying.oil) expect(oil).toContain(p.event.kitchen.pans.find((x) => x.id === o.pan)!.name);
    const watch = p.day.tasks.find((t) => t.kind === 'watchOil')!;
    expect(oil).toContain(`${p.event.people.find((x) => x.id === watch.who[0])!.name} stays at the oil until ${formatsOf(p).clock(watch.end)}`);
  });
});

describe('the cooling sheet', () => {
  const p = demo('lantern-evening');
  const sheets = sheetsOf(p, formatsOf(p), { paper: 'a4', printedAt: 'now', only: ['cooling', 'checklists'] });
  test('has each dish that may be left, with the time it must be in the fridge: two hours after it was last served', () => {
    const html = renderToStaticMarkup(sheets.find((s) => s.kind === 'cooling')!.body);
    const rice = p.menu.dishes.find((d) => d.id === 'rice')!;
    expect(html).toContain(rice.name);
    expect(html).toContain(formatsOf(p).clock((rice.lastServed ?? 0) + 120));
    expect(html).toContain('Heat through to 74');
  });
  test('and the checklists are sheets of their own; a day without guests has neither', () => {
    expect(sheets.map((s) => s.id)).toEqual(['checklists', 'cooling']);
    const freezer = demo('freezer-sunday');
    expect(sheetsOf(freezer, formatsOf(freezer), { paper: 'a4', printedAt: 'now', only: ['cooling', 'checklists'] })).toEqual([]);
  });
});
