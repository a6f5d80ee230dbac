import { describe, expect, it } from 'vitest';
import { shoppingCsv, shoppingText } from '../../../shared/exchange';
import { formatsFor, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { demo } from '../demo/demo';

const event: Event = { ...demo('lantern-evening'), shopping: {
  ownLines: [{ id: 'own-1', name: '=HYPERLINK("x")', amount: { amount: '2', unit: 'piece' }, section: 'bread', when: '2026-12-10' }],
  borrowed: [{ id: 'a', name: 'Folding chairs', count: 24, from: '+Hall', here: false, returned: false }, { id: 'b', name: 'Cool box', count: 1, from: '', here: true, returned: true }],
  marks: [{ line: 'onion', bought: { amount: '1', unit: 'kg' }, asked: { amount: '1', unit: 'kg' }, later: false }, { line: 'basmati-rice', later: true }],
  shoppers: [{ section: 'vegetables', who: 'Aunt' }], ownThings: ['plates'], carriesWater: false,
} };
const made = plan(event);
const formats = formatsFor(event.preferences, event.day);
const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');
/** Cells of a table as a spreadsheet reads it (RFC 4180), read by hand. */
function cells(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const c = text[i] ?? '';
    if (quoted) {
      if (c === '"' && text[i + 1] === '"') { cell += '"'; i += 1; } else if (c === '"') quoted = false; else cell += c;
    } else if (c === '"') quoted = true;
    else if (c === ',' || c === '\n') { rows.at(-1)?.push(cell.replace(/\r$/, '')); cell = ''; if (c === '\n') rows.push([]); } else cell += c;
  }
  return rows.filter((r) => r.length > 0);
}

describe('the list as a table', () => {
  const rows = cells(shoppingCsv(made, formats));
  const rowOf = (name: string): string[] => rows.find((r) => r[1] === name) ?? [];
  it('has a row for every line, thing, own line and borrowed thing, all of one length', () => {
    expect(rows.length).toBe(1 + made.buying.lines.length + 2);
    expect(new Set(rows.map((r) => r.length))).toEqual(new Set([14]));
  });
  it('runs nothing: what looks like a formula is made harmless', () => {
    expect(rowOf(`'=HYPERLINK("x")`)[11]).toBe('2026-12-10');
    expect(rows.flat().filter((c) => /^[=+\-@]/.test(c))).toEqual([]);
  });
  it('says what is bought, left for later, and who buys it', () => {
    expect([rowOf('Onions')[4], rowOf('Onions')[9], rowOf('Onions')[10], rowOf('Onions')[12]]).toEqual(['0', '1', 'bought', 'Aunt']);
    expect(rowOf('Basmati rice')[10]).toBe('later');
    expect([rowOf('Folding chairs')[0], rowOf('Folding chairs')[2], rowOf('Folding chairs')[10], rowOf('Cool box')[10]]).toEqual(['To borrow', '24', 'to ask for', 'returned']);
  });
});

describe('the list as text', () => {
  const text = plainSpaces(shoppingText(made, formats));
  const lines = text.split('\n');
  it('has a box for each thing to buy, under its section, and says the cost with what it leaves out', () => {
    const boxes = lines.filter((l) => l.startsWith('[ ] '));
    expect(boxes.length).toBe(made.buying.lines.filter((l) => l.buy.amount.gt(0)).length + 1);
    expect(lines[0]).toBe('Shopping for Lantern Evening, Saturday 12 December');
    expect(lines[lines.indexOf('Vegetables') + 1]).toMatch(/^\[ \] Carrots: /);
    expect(text).not.toContain('Onions:');
    expect(text).toContain('[ ] 24 × Folding chairs, from +Hall');
    expect(text).not.toContain('Cool box');
    expect(lines.at(-1)).toMatch(new RegExp(`; ${made.buying.unpriced} things have no price yet, so it will be more\\.$`));
    expect(text).not.toMatch(/undefined|NaN|\[object|null/);
  });
  it('puts what waits under Later', () => {
    expect(lines.slice(lines.indexOf('Later')).some((l) => l.startsWith('[ ] Basmati rice:'))).toBe(true);
    expect(lines.slice(0, lines.indexOf('Later')).some((l) => l.startsWith('[ ] Basmati rice:'))).toBe(false);
  });
  it('of one shopper has their lines only', () => {
    const own = plainSpaces(shoppingText(made, formats, 'Aunt'));
    expect(own.split('\n')[0]).toBe('Shopping for Lantern Evening, Saturday 12 December: Aunt');
    expect(own.split('\n').filter((l) => l.startsWith('[ ]')).length).toBe(made.buying.lines.filter((l) => l.section === 'vegetables' && l.buy.amount.gt(0)).length);
    expect(own).not.toContain('chairs');
  });
});
