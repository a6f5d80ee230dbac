import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eventSchema, formatsFor, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { mustNotSlip, sheetDocument, sheetsOf } from '../../../shared/sheets';
import { dayRows } from '../../../shared/sheets/day/rows';

const demos = ['lantern-evening', 'school-fair-stall', 'freezer-sunday'] as const;
const demo = (name: string): Event => eventSchema.parse(JSON.parse(readFileSync(new URL(`../../../assets/app/demo/${name}.brimful`, import.meta.url), 'utf8')));
const wordsOf = (event: Event): { readonly kinds: readonly string[]; readonly text: string } => {
  const sheets = sheetsOf(plan(event), formatsFor(event.preferences, event.day), { paper: 'letter', printedAt: '9:05' });
  const html = sheetDocument(sheets, { lang: 'en-GB' });
  return { kinds: [...new Set(sheets.map((s) => s.kind))], text: html.replace(/<style>[\s\S]*?<\/style>/, '').replaceAll(/<[^>]+>/g, ' ') };
};
/** What a page must never say: gaps of the program, words of the trade that are not the cook's, ids. */
const never = /undefined|NaN|Infinity|\[object|\bnull\b|\blots?\b|\bP10\b|kelvin|\bsheets\.|\bview\.|\brule\.|(?:pot|pan|burner):\S/g;
/** Each fault with the words around it. */
const faults = (text: string): string[] => [...text.matchAll(never)].map((m) => text.slice(Math.max(0, m.index - 40), m.index + 40));

describe('sheets of the demo events', () => {
  it.each(demos)('%s says nothing a cook cannot read', (name) => {
    expect(faults(wordsOf(demo(name)).text)).toEqual([]);
  });

  it('the household day has no fry and no drinks sheet, and says whom it is for', () => {
    expect(wordsOf(demo('freezer-sunday')).kinds).toEqual(['shopping', 'prep', 'day', 'helpers', 'boxes', 'emergency']);
  });

  it.each(demos)('%s never says who is allergic to what unless asked', (name) => {
    expect(wordsOf(demo(name)).text).not.toContain('Allergies to remember');
  });

  it.each(demos)('%s marks at most a third of the rows of the wall plan as what must not slip', (name) => {
    const made = plan(demo(name));
    const rows = dayRows(made.day.tasks, made.frying, 'wall');
    expect(rows.filter((r) => r.tasks.some(mustNotSlip)).length).toBeLessThanOrEqual(rows.length / 3);
  });

  it('lantern-evening has less than half as many rows on the wall as there are jobs', () => {
    const made = plan(demo('lantern-evening'));
    expect(dayRows(made.day.tasks, made.frying, 'wall').length).toBeLessThan(made.day.tasks.length / 2);
  });

  it('stay readable for any headcount, clock and units', () => {
    const base = demo('lantern-evening');
    fc.assert(fc.property(fc.integer({ min: 0, max: 160 }), fc.integer({ min: 0, max: 60 }), fc.constantFrom('12' as const, '24' as const), fc.constantFrom('metric' as const, 'us' as const), (adults, children, clock, units) => {
      const { text } = wordsOf({ ...base, guests: { ...base.guests, headcount: { adults, children } }, preferences: { ...base.preferences, clock, units } });
      expect(faults(text)).toEqual([]);
    }), { numRuns: 8 });
  });
});
