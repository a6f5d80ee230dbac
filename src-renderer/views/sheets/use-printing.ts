import { useState } from 'react';
import { sheetDocument, sheetsOf, type Sheet } from '../../../shared/sheets';
import { call } from '../../bridge';
import { sessionStore } from '../../app/session';
import { documentStore } from '../../app/store';
import { fontCss } from './fonts';
import { issued } from './issue';
import { printedNow } from './printed-now';

/** What the printing buttons need: what goes on, and the two ways out. */
export interface Printing {
  readonly busy: boolean;
  /** Last PDF written. */
  readonly written: { readonly path: string; readonly pages: number } | null;
  /** The button last pressed: the sheet's id, or the ids of all in a row. */
  readonly pressed: string;
  /** Sheets being printed from this page. */
  readonly onPage: readonly Sheet[] | null;
  readonly done: () => void;
  readonly pdf: (ids: readonly string[], title: string) => Promise<void>;
  readonly paper: (ids: readonly string[], title: string) => Promise<void>;
}

/** The chosen sheets with the time of this very moment on them, as one document. */
async function ready(ids: readonly string[]): Promise<{ readonly sheets: readonly Sheet[]; readonly html: string; readonly at: string } | null> {
  const css = await fontCss();
  const open = documentStore.get();
  if (open === null) return null;
  const now = printedNow(open.formats);
  const sheets = sheetsOf(open.plan, open.formats, { paper: open.event.preferences.paper, printedAt: now.words }).filter((s) => ids.includes(s.id));
  return { sheets, html: sheetDocument(sheets, { css, lang: open.event.preferences.locale }), at: now.at };
}

const record = (sheets: readonly Sheet[], at: string): void => documentStore.note((event) => issued(event, sheets, at));

/** Prints and writes sheets, and notes in the event which versions went out. */
export function usePrinting(): Printing {
  const [busy, setBusy] = useState(false);
  const [written, setWritten] = useState<Printing['written']>(null);
  const [onPage, setOnPage] = useState<readonly Sheet[] | null>(null);
  const [pressed, setPressed] = useState('');
  const guarded = async (ids: readonly string[], work: () => Promise<void>): Promise<void> => {
    setPressed(ids.join(' '));
    setBusy(true);
    setWritten(null);
    try {
      await work();
    } finally {
      setBusy(false);
    }
  };
  return {
    busy, written, pressed, onPage,
    done: () => setOnPage(null),
    pdf: (ids, title) => guarded(ids, async () => {
      const doc = await ready(ids);
      const place = doc === null ? null : await call('events.chooseSave', { name: doc.sheets.length === 1 ? (doc.sheets[0]?.fileName ?? title) : title, extension: 'pdf' });
      if (doc === null || place === null) return;
      if (!place.ok) { sessionStore.set({ problem: place.problem }); return; }
      if (place.value.path === null) return;
      const answer = await call('print.pdf', { html: doc.html, name: title, path: place.value.path });
      if (!answer.ok) { sessionStore.set({ problem: answer.problem }); return; }
      setWritten(answer.value);
      record(doc.sheets, doc.at);
    }),
    paper: (ids, title) => guarded(ids, async () => {
      const doc = await ready(ids);
      if (doc === null) return;
      const answer = await call('print.paper', { html: doc.html, name: title });
      if (!answer.ok) { sessionStore.set({ problem: answer.problem }); return; }
      if (!answer.value.handled) setOnPage(doc.sheets);
      record(doc.sheets, doc.at);
    }),
  };
}
