import type { ReactElement } from 'react';
import { say, sayMessage } from '../../words';
import { TickBox } from '../paper/marks';
import type { SheetContext, SheetDraft } from '../types';
import { checklistsOf, type Checklist } from './points';

function Points({ list, context }: { readonly list: Checklist; readonly context: SheetContext }): ReactElement {
  const { formats: f, names } = context;
  return (
    <section className="pause" data-pause={list.id}>
      <h2>{say(f, `sheets.check.${list.id}`)}</h2>
      {list.at !== null && <p className="small">{list.who.length > 0 ? say(f, 'sheets.check.readBy', { at: list.at, who: f.list(list.who.map(names.person)) }) : say(f, 'sheets.check.readAt', { at: list.at })}</p>}
      <ul className="points">
        {list.points.map((point) => {
          const words = sayMessage(f, point.words);
          return <li key={words}><TickBox /><span>{words}</span><span className="kind">{say(f, `sheets.check.kind.${point.kind}`)}</span></li>;
        })}
      </ul>
      <p className="signed"><span>{say(f, 'sheets.check.name')}</span><span className="line" /><span>{say(f, 'sheets.check.time')}</span><span className="line when" /></p>
    </section>
  );
}

/** The four pause points, two to a page. Not made when there are neither guests nor hot oil. */
export function checklistDrafts(context: SheetContext): readonly SheetDraft[] {
  const { formats: f } = context;
  const lists = checklistsOf(context.plan);
  if (lists.length === 0) return [];
  const rules = [...new Set(lists.flatMap((l) => l.points.flatMap((p) => p.rule ?? [])))].toSorted();
  const content = (
    <>
      {lists.map((list) => <Points key={list.id} list={list} context={context} />)}
      <div className="cautions">
        <p className="small">{say(f, 'sheets.check.sources', { rules })}</p>
        <p className="small">{say(f, 'sheets.guidance')}</p>
      </div>
    </>
  );
  return [{ kind: 'checklists', id: 'checklists', title: say(f, 'sheets.kind.checklists'), note: say(f, 'sheets.check.note'), content }];
}
