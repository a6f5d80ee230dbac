import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { changeJob, setHeadcount, type EditResult } from '../../../shared/edit';
import { formatsFor, parseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { sheetDocument, sheetsOf, stalePages, type PrintedRow, type Sheet } from '../../../shared/sheets';
import { issued } from '../../../src-renderer/views/sheets/issue';

const opened = parseEvent(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'));
if (!opened.ok) throw new Error('the demo does not open');
const first = opened.event;
const f = formatsFor(first.preferences, first.day);
const sheets = (event: Event): readonly Sheet[] => sheetsOf(plan(event), f, { paper: 'a4', printedAt: '9:05', only: ['day', 'helpers'] });
const prep = (event: Event): Sheet => sheetsOf(plan(event), f, { paper: 'a4', printedAt: '9:05', only: ['prep'] })[0]!;
const done = (answer: EditResult): Event => { if ('problem' in answer) throw new Error(answer.problem.id); return answer.event; };
const html = (sheet: Sheet): string => sheetDocument(sheet, { lang: 'en-GB' }).replace(/<style>[\s\S]*?<\/style>/, '').replaceAll('\u00a0', ' ');
const tables = { key: 'set-up/tables', name: 'Set up tables' };
/** A row of the table: an entry inside it counts for its row. */
const rowOf = (r: PrintedRow): string => r.key.split(': ')[0] ?? r.key;
const texts = (sheet: Sheet): Map<string, string> => new Map(sheet.rows.map((r) => [r.key, JSON.stringify(r.cells)]));
const bars = (sheet: Sheet): number => (html(sheet).match(/<tr class="[^"]*\bchanged\b/g) ?? []).length;

describe('a reprint of the day', () => {
  let before: readonly Sheet[];
  let printed: Event;
  let after: readonly Sheet[];
  let moved: Event;
  beforeAll(() => {
    before = sheets(first);
    printed = issued(first, before, '2026-12-10T09:05');
    const at = plan(first).day.tasks.find((t) => t.id === tables.key)?.start ?? 0;
    moved = done(changeJob(printed, tables, { at: at + 20 }));
    after = sheets(moved);
  });

  it('has rows on record for every line of the wall plan and of each page, each under a name of its own', () => {
    for (const sheet of before) {
      expect(sheet.rows.length).toBeGreaterThan(5);
      expect(new Set(sheet.rows.map((r) => r.key)).size).toBe(sheet.rows.length);
      const lines = (html(sheet).match(/<tr class="/g) ?? []).length;
      expect(new Set(sheet.rows.map(rowOf)).size).toBe(lines);
      expect(bars(sheet)).toBe(0);
    }
  });

  it('bars the rows that read otherwise and no others, with the old minute in brackets and what changed in a box', () => {
    for (const sheet of after) {
      const was = texts(before.find((s) => s.id === sheet.id) ?? sheet);
      const other = new Set(sheet.rows.filter((r) => was.get(r.key) !== JSON.stringify(r.cells)).map(rowOf));
      expect(bars(sheet)).toBe(sheet.issued ? 0 : other.size);
    }
    const wall = after.find((s) => s.kind === 'day')!;
    expect(wall).toMatchObject({ version: 'B', replaces: 'A', issued: false });
    const page = html(wall);
    const old = before.find((s) => s.kind === 'day')!.rows.find((r) => r.key === tables.key)!.cells['start']!;
    const now = wall.rows.find((r) => r.key === tables.key)!.cells['start']!;
    expect(now).not.toBe(old);
    expect(page).toContain(`<span class="nowrap">${now}</span><span class="before"> (${old})</span>`);
    expect(page).toContain('Changed since version A');
  });

  it('leaves the page of a helper whose jobs are as they were', () => {
    const same = after.filter((s) => s.kind === 'helpers' && JSON.stringify(s.rows) === JSON.stringify(before.find((b) => b.id === s.id)?.rows));
    for (const sheet of same) expect([sheet.version, sheet.issued, bars(sheet)]).toEqual(['A', true, 0]);
    expect(after.filter((s) => s.kind === 'helpers' && !s.issued).length).toBeGreaterThan(0);
  });

  it('names the pages out of date, each job with the minute it was printed at and the one it has now', () => {
    expect(stalePages(plan(printed), f)).toEqual([]);
    expect(stalePages(plan(first), f)).toEqual([]);
    const stale = stalePages(plan(moved), f);
    expect(stale.map((p) => `helper-${p.person}`)).toEqual(after.filter((s) => s.kind === 'helpers' && !s.issued).map((s) => s.id));
    const at = (event: Event): string => f.clock(plan(event).day.tasks.find((t) => t.id === tables.key)!.start);
    expect(stale.flatMap((p) => p.moved)).toContainEqual({ job: 'Set up tables, plates and cups', was: at(first), now: at(moved) });
    const bare: Event = { ...moved, issuedSheets: moved.issuedSheets.map(({ rows: _rows, ...letter }) => letter) };
    expect(stalePages(plan(bare), f)).toEqual([]);
  });

  it('marks one time among many inside its row: the old one stands in brackets behind it', () => {
    const serve = plan(first).day.tasks.filter((t) => t.kind === 'serve')[1]!;
    const job = { key: serve.job ?? serve.id, name: 'Bring out' };
    const wall = sheets(done(changeJob(printed, job, { at: serve.start + 15 }))).find((s) => s.kind === 'day')!;
    const was = texts(before.find((s) => s.kind === 'day')!);
    const other = wall.rows.filter((r) => 'entry' in r.cells && was.has(r.key) && was.get(r.key) !== JSON.stringify(r.cells));
    expect(other.length).toBeGreaterThan(0);
    for (const r of other) {
      const old = (JSON.parse(was.get(r.key) ?? '{}') as Record<string, string>)['entry']!;
      expect(html(wall)).toContain(`${r.cells['entry']}<span class="before"> (${old})</span>`.replaceAll('\u00a0', ' '));
    }
  });
});

describe('a reprint of the prep sheet', () => {
  it('bars the jobs and the amounts that read otherwise, the old amount in brackets', () => {
    const was = prep(first);
    expect(new Set(was.rows.map((r) => r.key)).size).toBe(was.rows.length);
    const now = prep(done(setHeadcount(issued(first, [was], '2026-12-10T09:05'), 90, 20)));
    const before = texts(was);
    const other = now.rows.filter((r) => before.get(r.key) !== JSON.stringify(r.cells));
    const [lines, jobs] = [other.filter((r) => r.key.startsWith('weigh/')), other.filter((r) => !r.key.startsWith('weigh/'))];
    expect(Math.min(lines.length, jobs.length)).toBeGreaterThan(3);
    const page = html(now);
    expect(page.match(/<tr class="changed"/g)).toHaveLength(jobs.length);
    expect(page.match(/<li class="changed"/g)).toHaveLength(lines.length);
    for (const r of lines.filter((l) => before.has(l.key))) {
      const old = (JSON.parse(before.get(r.key) ?? '{}') as Record<string, string>)['amount']!;
      expect(page).toContain(`${r.cells['amount']}<span class="before"> (${old})</span>`.replaceAll('\u00a0', ' '));
    }
  });
});
