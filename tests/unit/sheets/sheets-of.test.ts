import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { sheetDocument, sheetKinds, sheetsOf, type SheetOptions } from '../../../shared/sheets';
import { lanternPlan } from './lantern';

const options: SheetOptions = { paper: 'a4', printedAt: '12 December 9:05' };
const made = (more: Parameters<typeof lanternPlan>[0] = {}, how: Partial<SheetOptions> = {}) => {
  const plan = lanternPlan(more);
  return sheetsOf(plan, formatsFor(plan.event.preferences, plan.event.day), { ...options, ...how });
};
/** Words of a document without tags, so that a sentence split by markup is found. */
const text = (html: string): string => html.replace(/<style>[\s\S]*?<\/style>/, '').replaceAll('&#x27;', "'").replaceAll('\u00a0', ' ').replaceAll(/<[^>]+>/g, '').replaceAll(/\s+/g, ' ');
const all = (more: Parameters<typeof lanternPlan>[0]): string => text(sheetDocument(made(more), { lang: 'en-GB' }));
/** As the cook's units and kitchen rounding write it. */
const amount = (value: string, unit: string): string => formatsFor(lanternPlan().event.preferences, '2026-12-12').amount({ amount: value, unit }).replaceAll(/\s+/g, ' ');
const textOf = (kind: string, more: Parameters<typeof lanternPlan>[0] = {}): string =>
  text(sheetDocument(made(more).filter((s) => s.kind === kind), { lang: 'en-GB' }));

describe('the sheets of a plan', () => {
  it('come in the order of their kinds, one page per helper', () => {
    expect(made().map((s) => s.id)).toEqual(['fry-stove', 'bowls-stove', 'drinks', 'shopping', 'prep', 'day', 'helper-fryer', 'helper-tea-maker', 'labels', 'boxes', 'first-batch-fritters', 'oil', 'checklists', 'emergency']);
  });

  it('can be chosen by kind', () => {
    expect(made({}, { only: ['shopping', 'drinks'] }).map((s) => s.kind)).toEqual(['drinks', 'shopping']);
  });

  it('are not made when they have nothing to say', () => {
    const plan = lanternPlan({ batches: 0 });
    const bare = { ...plan, drinks: { ...plan.drinks, rounds: [] }, day: { ...plan.day, tasks: [] }, menu: { ...plan.menu, dishes: [] }, buying: { ...plan.buying, lines: [] } };
    expect(sheetsOf(bare, formatsFor(plan.event.preferences, plan.event.day), options)).toEqual([]);
    expect(made({ batches: 0 }).some((s) => s.kind === 'fry')).toBe(false);
  });

  it('are the same for the same plan, byte for byte', () => {
    expect(sheetDocument(made(), { lang: 'en-GB' })).toBe(sheetDocument(made(), { lang: 'en-GB' }));
  });

  it('propose file names of plain letters, digits and dashes that differ', () => {
    const names = made({ event: { title: 'Café “Noël” / 2 <b>' } }).map((s) => s.fileName);
    for (const name of names) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(new Set(names).size).toBe(names.length);
  });

  it('offer every kind somewhere', () => {
    // What may be left over has a sheet where something is: the one fried dish of this plan does not keep.
    expect([...new Set(made().map((s) => s.kind))]).toEqual(sheetKinds.filter((kind) => kind !== 'cooling'));
  });
});

describe('the fry sheet', () => {
  it('has a row for each batch with its times, pieces, wave and eat-by', () => {
    const words = textOf('fry');
    expect(words).toContain('1 11:08'.replace(' ', ''));
    expect((words.match(/Early/g) ?? []).length).toBe(24);
  });

  it('puts each bowl before the first batch that uses it, with what goes in', () => {
    const words = textOf('fry');
    const at = (s: string): number => words.indexOf(s);
    expect(words).toContain('Bowl 1: add the raising agent and mix at 10:55, use by 11:35');
    expect(at('Bowl 1:')).toBeLessThan(at('11:08'));
    expect(at('11:28')).toBeLessThan(at('Bowl 2:'));
    expect(at('Bowl 2:')).toBeLessThan(at('11:33'));
    expect(words).toMatch(/add now: 3⁄8 tsp baking soda \(2 g\)/i);
    expect((words.match(/Bowl \d+:/g) ?? []).length).toBe(5);
  });

  it('puts the cautions before the table, so that no page holds them alone', () => {
    const words = textOf('fry');
    expect(words.indexOf('children and sleeves away')).toBeLessThan(words.indexOf('Bowl 1:'));
    expect(words.indexOf('children and sleeves away')).toBeGreaterThan(0);
    expect(words.lastIndexOf('local food, fire')).toBeLessThan(words.indexOf('Bowl 1:'));
  });

  it('says oil, fire, load and when to turn off, and tops up after the right batch', () => {
    const words = textOf('fry');
    expect(words).toContain('Oil 3 L');
    expect(words).toContain('Light at 10:52, load at 177 °C');
    expect(words).toContain('Heat off at 14:00');
    expect(words).toContain('19 pieces at once, 4 min');
    expect(words.indexOf('After batch 10: top up')).toBeGreaterThan(words.indexOf('11:53'));
    expect(words.indexOf('After batch 10: top up')).toBeLessThan(words.indexOf('11:58'));
  });

  it('gives the oil cautions and defers to local rules', () => {
    expect(textOf('fry')).toContain('never water');
    expect(textOf('fry')).toContain('Guidance only: your local food, fire and electrical rules come first.');
  });

  it('says what stays unserved', () => {
    const plan = lanternPlan();
    const short = { ...plan, frying: { ...plan.frying, shortages: [{ dish: 'fritters', from: plan.guests.peakAt, to: plan.guests.peakAt, wanted: 60, unmet: 24, remedies: [], proven: true, note: null }] } };
    const html = sheetDocument(sheetsOf(short, formatsFor(plan.event.preferences, plan.event.day), { ...options, only: ['fry'] }), { lang: 'en-GB' });
    expect(text(html)).toContain('leaves 24 pieces unserved');
  });

  it('says minutes in the clock the cook asked for', () => {
    expect(textOf('fry', { event: { preferences: { clock: '12' } } })).toMatch(/11:08\s?am/);
  });
});

describe('the other sheets', () => {
  it('drinks: water and leaf of each round, the fill with its trips, the coolest moment and when it is empty', () => {
    const words = textOf('drinks');
    expect(words).toContain(`water ${amount('6.3', 'L')}; ${amount('72', 'g')} black tea`);
    expect(words).toContain('Fill Tea flask with 6 L at 10:52, in 2 trips');
    expect(words).toContain('coolest 90 °C, at 10:54');
    expect(words).toContain('10:55');
  });

  it('shopping: what to buy, in which packs, when at the earliest, and nothing that need not be bought', () => {
    const words = textOf('shopping');
    expect(words).toContain('2 × 2 kg');
    expect(words).toContain('from Thursday 10 December');
    expect(words).toContain(`${amount('0.5', 'kg')} in the house`);
    expect(words).not.toContain('Water');
    expect(words).toContain('Known prices come to €7.40; 1 thing has no price yet, so it will be more.');
  });

  it('make ahead: by day, with amounts, what is measured per bowl, and where it keeps', () => {
    const words = textOf('prep');
    expect(words).toContain('Friday 11 December');
    expect(words).toContain('in the fridge, up to');
    expect(words).toContain('Put aside, measured for 5 bowls');
  });

  it('day plan: everybody; helper page: own jobs only, hours and what they may carry', () => {
    expect(textOf('day')).toContain('Gas ring, 2 × place at the counter');
    const pages = made().filter((s) => s.kind === 'helpers').map((s) => text(sheetDocument(s, { lang: 'en-GB' })));
    expect(pages[0]).toContain('10:52');
    expect(pages[0]).toContain('carries at most 12 kg alone');
    expect(pages[1]).toContain('10:20');
    expect(pages[1]).not.toContain('10:52');
  });

  it('never print who is allergic to what, unless asked for', () => {
    // The cards speak of the food's allergens, the emergency card of what to do, never of a guest.
    expect(all({})).not.toMatch(/2 guests|nuts|Allergies to remember/i);
    expect(text(sheetDocument(made().filter((s) => s.kind !== 'labels' && s.kind !== 'boxes' && s.kind !== 'emergency'), { lang: 'en-GB' }))).not.toMatch(/allerg/i);
    expect(all({ event: { preferences: { printAllergies: true } } })).toContain('Allergies to remember');
  });
});
