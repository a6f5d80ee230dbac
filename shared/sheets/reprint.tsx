import type { ReactElement } from 'react';
import type { Event } from '../event';
import { say, type Formats } from '../words';
import type { PrintedRow, Reprint, Sheet } from './types';
import { printsOf } from './version';

/** Column under which a row's own name is kept in the event file. */
const nameCell = 'name';

/** Rows as the event file keeps them. */
export type KeptRows = NonNullable<Event['issuedSheets'][number]['rows']>;

/** Rows for the event file, so that a later print can show what has changed since. */
export const keptRows = (rows: readonly PrintedRow[]): KeptRows => Object.fromEntries(rows.map((r) => [r.key, { ...r.cells, [nameCell]: r.name }]));

/** The paper that hangs there, from its letter and its rows on record. */
export const reprintFrom = (since: string, kept: KeptRows): Reprint => ({
  since,
  rows: new Map(Object.entries(kept).map(([key, cells]): [string, PrintedRow] => [key, { key, name: cells[nameCell] ?? key, cells: Object.fromEntries(Object.entries(cells).filter(([cell]) => cell !== nameCell)) }])),
});

/** The print a sheet replaces, if its rows are on record. */
export function reprintOf(event: Event, sheet: Pick<Sheet, 'kind' | 'id'>, replaces: string | null): Reprint | null {
  if (replaces === null) return null;
  const kept = printsOf(event, sheet).find((p) => p.version === replaces && p.id === sheet.id)?.rows;
  return kept === undefined ? null : reprintFrom(replaces, kept);
}

/** Text of a cell on the paper before; null when there was none, or the same. */
export function oldText(reprint: Reprint | null, row: PrintedRow, cell: string): string | null {
  const before = reprint?.rows.get(row.key)?.cells[cell];
  return before === undefined || before === row.cells[cell] ? null : before;
}

/** True when a row is new or reads otherwise than on the paper before. */
export const isChanged = (reprint: Reprint | null, row: PrintedRow): boolean =>
  reprint !== null && (!reprint.rows.has(row.key) || Object.keys(row.cells).some((cell) => oldText(reprint, row, cell) !== null));

/** The old text in brackets, after the new one; nothing where nothing changed. */
export function Was({ reprint, row, cell }: { readonly reprint: Reprint | null; readonly row: PrintedRow; readonly cell: string }): ReactElement | null {
  const before = oldText(reprint, row, cell);
  return before === null || before === '' ? null : <span className="before"> ({before})</span>;
}

/** Most lines of the box. */
const mostLines = 7;

/** Sentences on what is new, gone or other than on the paper before, in the order of the sheet; those that are gone last. */
export function changesSince(formats: Formats, reprint: Reprint, rows: readonly PrintedRow[]): readonly string[] {
  const keys = new Set(rows.map((r) => r.key));
  const changed = rows.filter((row) => isChanged(reprint, row)).map((row) => {
    if (!reprint.rows.has(row.key)) return say(formats, 'sheets.since.new', { name: row.name });
    const texts = Object.keys(row.cells).filter((cell) => oldText(reprint, row, cell) !== null).map((cell) => say(formats, 'sheets.since.cell', { now: row.cells[cell] ?? '', was: oldText(reprint, row, cell) ?? '' }));
    return say(formats, 'sheets.since.row', { name: row.name, changes: formats.list(texts) });
  });
  const gone = [...reprint.rows.values()].filter((r) => !keys.has(r.key)).map((r) => say(formats, 'sheets.since.gone', { name: r.name }));
  // Two that are gone may have one name.
  return [...new Set([...changed, ...gone])];
}

/** Box above the table of a reprint: what changed since the paper before, in at most seven lines. */
export function Since({ reprint, rows, formats }: { readonly reprint: Reprint | null; readonly rows: readonly PrintedRow[]; readonly formats: Formats }): ReactElement | null {
  if (reprint === null) return null;
  const all = changesSince(formats, reprint, rows);
  if (all.length === 0) return null;
  const shown = all.length > mostLines ? all.slice(0, mostLines - 1) : all;
  return (
    <div className="since">
      <p className="strong">{say(formats, 'sheets.since', { version: reprint.since })}</p>
      <ul>
        {shown.map((line) => <li key={line}>{line}</li>)}
        {all.length > shown.length && <li>{say(formats, 'sheets.since.more', { n: all.length - shown.length })}</li>}
      </ul>
    </div>
  );
}
