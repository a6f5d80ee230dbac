import { describe, expect, it } from 'vitest';
import { formatsFor, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { sheetDocument, sheetsOf, type Sheet } from '../../../shared/sheets';
import { demo } from '../demo/demo';

const base = demo('lantern-evening');
const shopping = (more: Partial<NonNullable<Event['shopping']>>): NonNullable<Event['shopping']> => ({ ownLines: [], borrowed: [], marks: [], shoppers: [], ownThings: [], carriesWater: false, ...more });
const sheetsFor = (event: Event): readonly Sheet[] => sheetsOf(plan(event), formatsFor(event.preferences, event.day), { paper: 'a4', printedAt: '9:05', only: ['shopping'] });
const textOf = (sheet: Sheet | undefined): string => (sheet === undefined ? '' : sheetDocument(sheet, { lang: 'en-GB' }).replace(/<style>[\s\S]*?<\/style>/, '').replaceAll(/<[^>]+>/g, ' ').replaceAll(/[\s\u00a0]+/g, ' '));
const withList = (more: Partial<NonNullable<Event['shopping']>>): readonly Sheet[] => sheetsFor({ ...base, shopping: shopping(more) });

describe('the shopping sheet', () => {
  it('counts the cups and plates of the day with the food', () => {
    const text = textOf(sheetsFor(base)[0]);
    for (const words of ['Cups, plates and napkins', 'Paper cups for hot drinks', 'drinks table', 'Bin bags']) expect(text).toContain(words);
  });
  it('has one page for the list, and one for each shopper with their lines only', () => {
    const sheets = withList({ shoppers: [{ section: 'vegetables', who: 'Aunt' }, { line: 'basmati-rice', who: '\u00e9' }, { line: 'spinach', who: '\u2603' }, { line: 'salt-that-is-not-there', who: 'Nobody' }] });
    expect(sheets.map((s) => s.id)).toEqual(['shopping', 'shopping-aunt', 'shopping-2', 'shopping-e']);
    expect(new Set(sheets.map((s) => s.fileName)).size).toBe(4);
    expect(textOf(sheets[1])).toContain('Carrots');
    expect(textOf(sheets[1])).not.toContain('Basmati rice');
    expect(textOf(sheets[0])).toContain('Vegetables, Aunt');
    // A whole section's shopper stands at its head, not at every line; one line's at the line.
    expect(textOf(sheets[0]).match(/Aunt buys it/g)).toBeNull();
    expect(textOf(sheets[0])).toContain('\u2603 buys it');
  });
  it('puts later last, names what is bought and what the house has, and lists what is borrowed', () => {
    const text = textOf(withList({
      marks: [{ line: 'onion', bought: { amount: '1', unit: 'kg' }, later: false }, { line: 'carrot', later: true }, { line: 'basmati-rice', bought: { amount: '1', unit: 'kg' }, later: false }],
      ownThings: ['hot-cups'], borrowed: [{ id: 'a', name: 'Folding chairs', count: 24, from: 'Community hall', here: false, returned: false }, { id: 'b', name: 'Cool box', count: 1, from: '', here: true, returned: true }],
      ownLines: [{ id: 'own-1', name: 'Candles', amount: { amount: '24', unit: 'piece' }, section: 'other', when: '2026-12-09' }],
    })[0]);
    expect(text.indexOf('Later')).toBeGreaterThan(text.indexOf('Cups, plates and napkins'));
    expect(text.indexOf('Carrots')).toBeGreaterThan(text.indexOf('Later'));
    expect(text).toContain('Bought already: Onions.');
    expect(text).toContain('1 kg bought; 2 kg still to buy');
    expect(text).toMatch(/Our own, put them out: Paper cups for hot drinks \d+ pieces\./);
    expect(text).toContain('24 × Folding chairs');
    expect(text).not.toContain('Cool box');
    expect(text).toContain('on Wednesday 9 December');
    expect(text).toMatch(/Known prices come to €[\d.]+; \d+ things have no price yet/);
  });
  it('of a reserve says so in its own words', () => {
    const made = plan(base);
    const [line] = made.buying.lines;
    if (line === undefined) throw new Error('no line');
    const reserve = { ...made, buying: { ...made.buying, lines: [{ ...line, origins: [...line.origins, { dish: 'reserve', amount: line.need }] }] } };
    const [sheet] = sheetsOf(reserve, formatsFor(base.preferences, base.day), { paper: 'a4', printedAt: '9:05', only: ['shopping'] });
    expect(textOf(sheet)).toMatch(/\breserve\b/);
  });
});
