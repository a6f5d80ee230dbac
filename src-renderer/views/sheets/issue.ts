import type { Event } from '../../../shared/event';
import type { Sheet } from '../../../shared/sheets';

/** The event with a note of which versions went to paper, so that a stale paper can be told. The same event when these versions are on record already. */
export function issued(event: Event, sheets: readonly Sheet[], at: string): Event {
  const fresh = sheets.filter((s) => !s.issued);
  if (fresh.length === 0) return event;
  const rows = fresh.map((s) => ({ sheet: s.kind, id: s.id, version: s.version, at, fingerprint: s.fingerprint }));
  return { ...event, issuedSheets: [...event.issuedSheets, ...rows] };
}
