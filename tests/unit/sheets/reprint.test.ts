import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setHeadcount } from '../../../shared/edit';
import { formatsFor, parseEvent, serialiseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { sheetDocument, sheetsOf, type Sheet } from '../../../shared/sheets';
import { issued } from '../../../src-renderer/views/sheets/issue';

const opened = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
if (!opened.ok) throw new Error('the demo does not open');
const first = opened.event;
const f = formatsFor(first.preferences, first.day);
const sheets = (event: Event): readonly Sheet[] => sheetsOf(plan(event), f, { paper: 'a4', printedAt: '9:05' });
const adults = (event: Event, n: number): Event => {
  const answer = setHeadcount(event, n, 20);
  if ('problem' in answer) throw new Error(JSON.stringify(answer.problem));
  return answer.event;
};
const printed = issued(first, sheets(first), '2026-12-10T09:05');
const more = adults(printed, 84);
const drinks = (event: Event): Sheet => sheets(event).find((s) => s.kind === 'drinks')!;
const html = (sheet: Sheet): string => sheetDocument(sheet, { lang: 'en-GB' }).replace(/<style>[\s\S]*?<\/style>/, '');

describe('a reprint', () => {
  it('has no bar and no box on a first print, nor when nothing changed', () => {
    for (const event of [first, printed]) {
      expect(html(drinks(event))).not.toContain('changed');
      expect(html(drinks(event))).not.toContain('class="since"');
    }
  });

  it('bars the rows that read otherwise, and only those, with the old text in brackets', () => {
    const before = new Map(drinks(printed).rows.map((r) => [r.key, r.cells]));
    const sheet = drinks(more);
    const other = sheet.rows.filter((r) => JSON.stringify(before.get(r.key)) !== JSON.stringify(r.cells));
    expect(other.length).toBeGreaterThan(2);
    const page = html(sheet);
    expect(page.match(/<tr class="[^"]*\bchanged\b/g)).toHaveLength(other.length);
    const cells = other.flatMap((row) => Object.entries(before.get(row.key) ?? {}).filter(([cell, was]) => was !== row.cells[cell]).map(([cell, was]) => `${row.cells[cell]}<span class="before"> (${was})</span>`));
    expect(cells.length).toBeGreaterThan(2);
    expect(cells.filter((cell) => !page.includes(cell))).toEqual([]);
  });

  it.each(['fry', 'shopping'] as const)('bars the changed rows of the %s sheet too, each with what it was', (kind) => {
    const [was, now] = [printed, more].map((event) => sheets(event).find((s) => s.kind === kind)!);
    const before = new Map(was!.rows.map((r) => [r.key, r.cells]));
    const other = now!.rows.filter((r) => JSON.stringify(before.get(r.key)) !== JSON.stringify(r.cells));
    expect(other.length).toBeGreaterThan(2);
    const page = html(now!);
    expect(page.match(/<tr class="[^"]*\bchanged\b/g)).toHaveLength(other.length);
    expect((page.match(/class="before"/g) ?? []).length).toBeGreaterThan(2);
    expect(page).toContain('Changed since version A');
  });

  it('says what changed in at most seven lines', () => {
    const box = /<div class="since">([\s\S]*?)<\/div>/.exec(html(drinks(more)))?.[1] ?? '';
    expect(box).toContain('Changed since version A');
    const lines = box.match(/<li>/g) ?? [];
    expect(lines.length).toBeGreaterThan(0);
    expect(lines.length).toBeLessThanOrEqual(7);
  });

  it('keeps its fingerprint whatever hung there before: printed again it is the same version with the same bars', () => {
    const again = issued(more, sheets(more), '2026-12-11T09:05');
    expect(drinks(again)).toMatchObject({ version: 'B', issued: true, fingerprint: drinks(more).fingerprint });
    expect(html(drinks(again)).match(/\bchanged\b/g)?.length).toBe(html(drinks(more)).match(/\bchanged\b/g)?.length);
    expect(drinks({ ...more, issuedSheets: [] }).fingerprint).toBe(drinks(more).fingerprint);
  });

  it('leaves rows on record of the last two papers of a sheet, and all letters; the file opens again with them', () => {
    let event = more;
    for (const n of [90, 60, 75]) event = adults(issued(event, sheets(event), '2026-12-11T09:05'), n);
    const prints = event.issuedSheets.filter((s) => s.sheet === 'drinks');
    expect(prints.map((s) => s.version)).toEqual(['A', 'B', 'C', 'D']);
    expect(prints.filter((s) => s.rows !== undefined).map((s) => s.version)).toEqual(['C', 'D']);
    const read = parseEvent(serialiseEvent(event));
    expect(read.ok && read.event.issuedSheets).toEqual(event.issuedSheets);
  });

  it('of an event printed by an older version, without rows, shows no bars', () => {
    const bare = { ...more, issuedSheets: more.issuedSheets.map(({ rows: _rows, ...letter }) => letter) };
    expect(drinks(bare)).toMatchObject({ version: 'B' });
    expect(html(drinks(bare))).not.toContain('changed');
  });
});
