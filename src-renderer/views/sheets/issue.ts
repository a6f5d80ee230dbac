import type { Event } from '../../../shared/event';
import type { EditResult } from '../../../shared/edit';
import type { Sheet } from '../../../shared/sheets';

/** Notes in the event which versions went to paper, so that a stale paper can be told. Nothing changes when these versions are on record already. */
export function issued(event: Event, sheets: readonly Sheet[], title: string, at: string): EditResult {
  const fresh = sheets.filter((s) => !s.issued);
  const first = fresh[0];
  if (first === undefined) return { event, name: { id: 'view.sheets' } };
  const rows = fresh.map((s) => ({ sheet: s.kind, id: s.id, version: s.version, at, fingerprint: s.fingerprint }));
  return { event: { ...event, issuedSheets: [...event.issuedSheets, ...rows] }, name: { id: 'view.sheets.stepPrinted', params: { title, version: first.version } } };
}
