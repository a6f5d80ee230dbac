import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setHeadcount } from '../../../shared/edit';
import { formatsFor, parseEvent, type Event } from '../../../shared/event';
import { isRice } from '../../../shared/menu';
import { plan } from '../../../shared/plan';
import { sheetDocument, sheetsOf } from '../../../shared/sheets';

const parsed = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
if (!parsed.ok) throw new Error('the demo does not open');
const demo: Event = parsed.event;
const sized = (adults: number): Event => {
  const answer = setHeadcount(demo, adults, 20);
  if ('problem' in answer) throw new Error('refused');
  return answer.event;
};

/** Minutes from the last portion of each rice dish until it is in the fridge; null when nobody puts it there. */
const untilStored = (event: Event): (number | null)[] => {
  const { menu, day } = plan(event);
  return menu.dishes.filter((d) => isRice(d) && d.lastServed !== null).map((d) => {
    const stored = day.tasks.find((t) => t.kind === 'cool' && t.dish === d.id);
    return stored === undefined || stored.who.length === 0 ? null : stored.end - (d.lastServed ?? 0);
  });
};

// Cooked rice is chilled within one hour: UK council pages following FSA advice, rule PR-05.
describe('cooked rice that is left over', () => {
  it('is put away within the hour of being served, whoever comes', () => {
    fc.assert(fc.property(fc.integer({ min: 20, max: 110 }), (adults) => {
      const all = untilStored(sized(adults));
      expect(all).toHaveLength(2);
      expect(all.filter((minutes) => minutes !== null && minutes > 60)).toEqual([]);
    }), { numRuns: 25 });
    expect(untilStored(demo).filter((m) => m === null)).toEqual([]);
  });

  it('says its own hour on the cooling sheet, other food two', () => {
    const made = plan(demo);
    const f = formatsFor(demo.preferences, demo.day);
    const page = sheetDocument(sheetsOf(made, f, { paper: 'a4', printedAt: '9:05', only: ['cooling'] }), { lang: 'en-GB' });
    const row = (id: string): string => page.split('<tr').find((part) => part.includes(`<strong>${made.menu.dishes.find((d) => d.id === id)?.name}</strong>`)) ?? '';
    const last = (id: string): number => made.menu.dishes.find((d) => d.id === id)?.lastServed ?? 0;
    expect(row('rice')).toContain(`>${f.clock(last('rice') + 60)}<`);
    expect(row('pulses')).toContain(`>${f.clock(last('pulses') + 120)}<`);
  });
});
