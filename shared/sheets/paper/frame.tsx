import type { ReactElement } from 'react';
import { say, type Formats } from '../../words';
import type { SheetDraft } from '../types';

interface HeadProps {
  readonly draft: SheetDraft;
  readonly event: string;
  readonly day: string;
  readonly version: string;
  readonly replaces: string | null;
  readonly printedAt: string;
  readonly formats: Formats;
}

/** Head of a sheet: its name, event and day at the left; the version letter, large, at the top right, so that an old paper is told apart in a glance. */
export function SheetHead(p: HeadProps): ReactElement {
  const was = p.replaces === null ? say(p.formats, 'sheets.firstPrint') : say(p.formats, 'sheets.replaces', { version: p.replaces });
  return (
    <header className="head">
      <div>
        <h1>{p.draft.title}</h1>
        <p className="occasion">{p.event}, {p.day}</p>
        {p.draft.note !== '' && <p className="note">{p.draft.note}</p>}
      </div>
      <div className="version">
        <div>
          <p className="word">{say(p.formats, 'sheets.version')}</p>
          <p className="was">{was},</p>
          <p className="was">{say(p.formats, 'sheets.printedAt', { at: p.printedAt })}</p>
        </div>
        <strong>{p.version}</strong>
      </div>
    </header>
  );
}

/** A whole sheet: head and content. `id` names the printed page rules of this sheet. */
export function SheetFrame(p: HeadProps): ReactElement {
  return (
    <article className={`sheet sheet-${p.draft.kind}`} data-sheet={p.draft.id}>
      <SheetHead {...p} />
      {p.draft.content}
    </article>
  );
}
