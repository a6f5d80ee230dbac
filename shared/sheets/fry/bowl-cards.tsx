import type { ReactElement } from 'react';
import { reserveBowls, type Bowl } from '../../frying';
import { say } from '../../words';
import { lineWords, quantity } from '../amounts';
import { TickBox } from '../paper/marks';
import type { SheetContext, SheetDraft } from '../types';

/** One card: what is weighed ahead into its bag, what goes in only when the bowl is finished, when that is and until when it is used. */
function Card({ bowl, context: { plan, formats: f, names } }: { readonly bowl: Bowl; readonly context: SheetContext }): ReactElement {
  const now = bowl.lines.filter((line) => line.perBowl);
  const ahead = bowl.lines.filter((line) => !line.perBowl);
  const batches = plan.frying.batches.filter((b) => b.bowls.includes(bowl.number)).map((b) => f.number(b.number));
  return (
    <div className="card">
      <p className="cardhead"><strong className="big">{say(f, 'sheets.bowl.number', { n: bowl.number })}</strong><span>{names.dish(bowl.dish)}</span></p>
      <p className="cardtimes"><strong>{say(f, 'sheets.bowl.finish', { at: bowl.readyAt })}</strong><strong>{say(f, 'sheets.bowl.useBy', { at: bowl.useBy })}</strong></p>
      <p className="small">{say(f, 'sheets.bowl.holds', { batter: quantity(f, bowl.batterKg, 'kg'), pieces: bowl.pieces, batches: f.list(batches) })}</p>
      {ahead.length > 0 && <p className="part"><TickBox small /><strong>{say(f, 'sheets.bowl.ahead')}</strong></p>}
      <ul>{ahead.map((line) => <li key={line.ingredient}>{lineWords(f, names, line)}</li>)}</ul>
      {now.length > 0 && <p className="part"><TickBox small /><strong>{say(f, 'sheets.bowl.now', { at: bowl.mixAt })}</strong></p>}
      <ul>{now.map((line) => <li key={line.ingredient}>{lineWords(f, names, line)}{line.preparation === undefined ? '' : `, ${line.preparation}`}</li>)}</ul>
    </div>
  );
}

/** Cards of one station's bowls, one for each bag of dry mix: cut apart, each goes with its bag. Empty when the station has no batter. */
export function bowlCardDrafts(context: SheetContext, station: string): readonly SheetDraft[] {
  const { plan, formats: f, names } = context;
  const bowls = plan.frying.bowls.filter((b) => b.station === station);
  if (bowls.length === 0) return [];
  const late = new Set(reserveBowls(plan.menu.dishes, plan.frying).flatMap((r) => r.numbers));
  const usual = bowls.filter((b) => !late.has(b.number)).length;
  const content = (
    <>
      <p className="short">{say(f, 'sheets.bowl.late')} {usual < bowls.length && <strong>{say(f, 'sheets.bowl.reserve', { usual, all: bowls.length, cover: plan.event.preferences.cover })}</strong>}</p>
      <div className="cards">{bowls.map((bowl) => <Card key={bowl.number} bowl={bowl} context={context} />)}</div>
    </>
  );
  return [{ kind: 'fry', id: `bowls-${station}`, title: say(f, 'sheets.titled', { title: say(f, 'sheets.bowl.title'), of: names.thing(station) }), note: '', content }];
}
