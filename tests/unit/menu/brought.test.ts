import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { changeDish } from '../../../shared/edit';
import { formatsFor, parseEvent, type Event } from '../../../shared/event';
import { plan, type Plan } from '../../../shared/plan';
import { sheetDocument, sheetsOf } from '../../../shared/sheets';

const parsed = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
if (!parsed.ok) throw new Error('the demo does not open');
const demo: Event = parsed.event;
const home = plan(demo);
const idOf = (test: (d: Plan['menu']['dishes'][number]) => boolean): string => home.menu.dishes.find(test)!.id;
const brought = (id: string): Plan => {
  const answer = changeDish(demo, id, { broughtBy: 'Aunt' });
  if ('problem' in answer) throw new Error('refused');
  return plan(answer.event);
};
const pulses = idOf((d) => d.role === 'pulse');
const fritters = idOf((d) => d.recipe.frying !== undefined && d.role === 'friedSnack');
const tea = idOf((d) => d.recipe.brewing?.hot === true);

describe('a dish that a guest brings', () => {
  it('counts on the table as before', () => {
    const dish = brought(pulses).menu.dishes.find((d) => d.id === pulses)!;
    expect(dish.broughtBy).toBe('Aunt');
    expect(dish.portions.value).toBe(home.menu.dishes.find((d) => d.id === pulses)!.portions.value);
    // The other dishes share the table with it just as they did.
    expect(brought(pulses).menu.dishes.map((d) => d.portions.value)).toEqual(home.menu.dishes.map((d) => d.portions.value));
  });
  it('is neither bought for nor cooked', () => {
    const p = brought(pulses);
    expect(home.buying.lines.some((l) => l.origins.some((o) => o.dish === pulses))).toBe(true);
    expect(p.buying.lines.filter((l) => l.origins.some((o) => o.dish === pulses))).toEqual([]);
    expect(home.day.tasks.some((t) => t.kind === 'step' && t.dish === pulses)).toBe(true);
    expect(p.day.tasks.filter((t) => t.kind === 'step' && t.dish === pulses)).toEqual([]);
  });
  it('is not fried here, nor brewed', () => {
    expect(home.frying.batches.some((b) => b.dish === fritters)).toBe(true);
    expect(brought(fritters).frying.batches.filter((b) => b.dish === fritters)).toEqual([]);
    expect(home.drinks.rounds.some((r) => r.drink === tea)).toBe(true);
    expect(brought(tea).drinks.rounds.filter((r) => r.drink === tea)).toEqual([]);
  });
  it('has a card that says whom to ask, and never that nothing is in it', () => {
    const p = brought(fritters);
    const labels = sheetsOf(p, formatsFor(p.event.preferences, p.event.day), { paper: 'a4', printedAt: '9:05', only: ['labels'] });
    const card = sheetDocument(labels, { lang: 'en-GB' }).split('data-card="').find((part) => part.startsWith(`${fritters}"`)) ?? '';
    expect(card).toContain('Brought by Aunt: ask what is in it.');
    expect(card).not.toContain('None of the');
  });
});
