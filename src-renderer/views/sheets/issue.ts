import type { Event } from '../../../shared/event';
import { keptRows, type Sheet } from '../../../shared/sheets';

/** Rows are kept of the print a new one replaces, and of the new one; older ones only keep their letter. */
function lastTwoRows(event: Event, fresh: readonly Sheet[]): Event['issuedSheets'] {
  const replaced = new Map(fresh.map((s) => [`${s.kind} ${s.id}`, s.replaces]));
  return event.issuedSheets.map((print) => {
    const key = `${print.sheet} ${print.id ?? ''}`;
    if (print.rows === undefined || !replaced.has(key) || print.version === replaced.get(key)) return print;
    const { rows: _rows, ...letter } = print;
    return letter;
  });
}

/** The event with a note of which versions went to paper, so that a stale paper can be told. The same event when these versions are on record already. */
export function issued(event: Event, sheets: readonly Sheet[], at: string): Event {
  const fresh = sheets.filter((s) => !s.issued);
  if (fresh.length === 0) return event;
  const rows = fresh.map((s) => ({ sheet: s.kind, id: s.id, version: s.version, at, fingerprint: s.fingerprint, ...(s.rows.length > 0 ? { rows: keptRows(s.rows) } : {}) }));
  return { ...event, issuedSheets: [...lastTwoRows(event, fresh), ...rows] };
}
