import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { solve, type FryProblem } from '../../../shared/frying';
import { leadsOf } from '../../../shared/frying/leads';
import { shortagesOf } from '../../../shared/frying/shortage';
import { sayMessage } from '../../../shared/words';
import { fry, fryEvent, gasRing, roundPan } from './fry-event';

const speak = formatsFor(fryEvent().preferences, '2026-12-12');

describe('the lead in force', () => {
  it('is as asked for while the pans can keep it, and nothing is said', () => {
    expect(fry(fryEvent({ adults: 40 })).frying.leads).toEqual([{ dish: 'fritters', station: 'fry-1', wanted: 5, minutes: 5, note: null }]);
  });
  it('is cut, and says so, where somebody would go without', () => {
    const { leads, shortages } = fry(fryEvent({ adults: 150 })).frying;
    expect(shortages).not.toEqual([]);
    expect(leads[0]!.minutes).toBeLessThan(5);
    const { note } = leads[0]!;
    if (note === null) throw new Error('nothing is said');
    expect(note.id).toBe('frying.lead.cut');
    expect(sayMessage(speak, note)).toMatch(/^fritters from Fry line are ready .+ before they are wanted instead of /);
  });
  it('by hand: one pan of 2 that takes 4 minutes, four wanted together at 20: lifts at 14 and 18 leave 2 of the 5 minutes', () => {
    const p: FryProblem = { wanted: [20, 20, 20, 20], load: 2, fry: 4, cycle: 4, hold: 6, lead: 5, earliest: -Infinity, pans: 1, free: () => 1 };
    const found = solve(p);
    expect(found.lead).toBe(2);
    expect(found.batches.map((b) => b.dropAt + p.fry)).toEqual([14, 18]);
    const event = fryEvent();
    const [dish] = fry(event).menu.dishes;
    const frying = dish!.recipe.frying!;
    const line = { station: event.kitchen.stations[0]!, pans: [], sharing: 1, taken: new Map<number, number>() };
    const part = { line, rate: 1, load: {} as never };
    const [lead] = leadsOf(event, dish!, frying, [part], [found]);
    expect(lead).toMatchObject({ wanted: 5, minutes: 2, note: { id: 'frying.lead.cut', params: { minutes: 2, wanted: 5 } } });
    expect(sayMessage(speak, lead!.note!)).toMatch(/ready 2\smin before they are wanted instead of 5\smin/);
  });
  it('cannot be longer than a piece may wait', () => {
    const event = { ...fryEvent(), preferences: { ...fryEvent().preferences, fryLeadMinutes: 60 } };
    const [dish] = fry(event).menu.dishes;
    const line = { station: event.kitchen.stations[0]!, pans: [], sharing: 1, taken: new Map<number, number>() };
    const [lead] = leadsOf(event, dish!, { ...dish!.recipe.frying!, holdMinutes: 20 }, [{ line, rate: 1, load: {} as never }], [{ served: [1], unmet: [], batches: [{ dropAt: 0, first: 0, end: 1 }], lead: 20, exact: true }]);
    expect(lead!.note?.id).toBe('frying.lead.hold');
  });
});

describe('what is not proven is said', () => {
  it('one dish in equal pans: the least unmet is proven', () => {
    for (const s of fry(fryEvent({ adults: 200 })).frying.shortages) expect([s.proven, s.note]).toEqual([true, null]);
  });
  it('unequal pans share the dish by a rule', () => {
    const small = { id: 'pan-2', name: 'Small', shape: 'straight', rimMm: 240, depthMm: 150, oilLitres: 2, burner: 'ring-2' };
    const { shortages } = fry(fryEvent({ adults: 400, pans: [roundPan, small], burners: [gasRing, { ...gasRing, id: 'ring-2', ratedW: 2500 }] })).frying;
    expect(shortages.length).toBeGreaterThan(0);
    for (const s of shortages) expect([s.proven, s.note?.id]).toEqual([false, 'frying.shortage.shared']);
  });
  it('a dish that finds the pans taken by another', () => {
    const { shortages } = fry(fryEvent({ adults: 200, second: {} })).frying;
    const of = (dish: string) => shortages.filter((s) => s.dish === dish);
    expect(of('second').length).toBeGreaterThan(0);
    for (const s of of('second')) expect([s.proven, s.note?.id]).toEqual([false, 'frying.shortage.after']);
    for (const s of of('fritters')) expect(s.proven).toBe(true);
  });
  it('a quick rule that answered instead of the search', () => {
    const p: FryProblem = { wanted: Array.from({ length: 40 }, (_, i) => 20 + Math.floor(i / 8)), load: 3, fry: 4, cycle: 5, hold: 8, lead: 0, earliest: -Infinity, pans: 2, free: () => 2 };
    expect(solve(p).exact).toBe(true);
    const quick = solve(p, 1);
    expect(quick.exact).toBe(false);
    expect(quick.unmet.length).toBeGreaterThanOrEqual(solve(p).unmet.length);
    const event = fryEvent();
    const [dish] = fry(event).menu.dishes;
    const [shortage] = shortagesOf(event, dish!, dish!.recipe.frying!, [], p.wanted, quick.unmet, 'quick', () => new Map());
    expect(shortage).toMatchObject({ proven: false, unmet: quick.unmet.length });
    expect(sayMessage(speak, shortage!.note!)).toContain('Perhaps a better plan');
  });
});
