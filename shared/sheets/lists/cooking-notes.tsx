import type { ReactElement } from 'react';
import { say, sayMessage } from '../../words';
import type { SheetContext } from '../types';

/** How the meal is cooked and put out, on paper: how often, in which pots, in which bowls. Nothing where each dish is cooked once in one pot. */
export function CookingNotes({ context }: { readonly context: SheetContext }): ReactElement | null {
  const { plan, formats: f } = context;
  const { notes } = plan.cooking;
  if (notes.length === 0) return null;
  return (
    <section>
      <h2>{say(f, 'cooking.title')}</h2>
      {notes.map((note, i) => <p key={i} className="small">{note.level === 'watch' ? <strong>{sayMessage(f, note.message)}</strong> : sayMessage(f, note.message)}{note.level === 'watch' && note.ways.length > 0 && ` ${note.ways.map((way) => sayMessage(f, way)).join(' ')}`}</p>)}
    </section>
  );
}
