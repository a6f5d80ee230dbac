import type { ReactElement } from 'react';
import { say, sayMessage } from '../../words';
import { pourWords } from '../amounts';
import { fireWords } from '../cards/fire-words';
import { TickBox } from '../paper/marks';
import type { Reprint, SheetContext, SheetDraft } from '../types';
import { AfterBox } from './after-box';
import { Since } from '../reprint';
import { BatchRow, printedBatch } from './batch-row';
import { bowlCardDrafts } from './bowl-cards';
import { BowlRow } from './bowl-row';
import { OilBox } from './oil-box';
import { pauseWords } from './pause-words';
import { fryRows, keepTogether, type FryRow } from './rows';

interface Station {
  readonly id: string;
  readonly pans: readonly string[];
  readonly dishes: readonly string[];
}

/** Temperature to load at for the dishes fried in a pan: the highest of them, in degrees Celsius; 177 where no recipe says (350 °F, common practice). */
function targetOf(context: SheetContext, dishes: readonly string[]): number {
  const targets = context.plan.menu.dishes.filter((d) => dishes.includes(d.id)).flatMap((d) => (d.recipe.frying === undefined ? [] : [d.recipe.frying.targetC]));
  return targets.length > 0 ? Math.max(...targets) : 177;
}

function Head({ context: { formats: f }, showPan }: { readonly context: SheetContext; readonly showPan: boolean }): ReactElement {
  return (
    <thead>
      <tr>
        <th scope="col">{say(f, 'sheets.tick')}</th>
        <th scope="col">{say(f, 'sheets.fry.batch')}</th>
        <th scope="col">{say(f, 'sheets.fry.putIn')}</th>
        <th scope="col">{say(f, 'sheets.fry.liftOut')}</th>
        <th scope="col">{say(f, 'sheets.fry.pieces')}</th>
        {showPan && <th scope="col">{say(f, 'sheets.fry.pan')}</th>}
        <th scope="col" className="for">{say(f, 'sheets.fry.for')}</th>
        <th scope="col">{say(f, 'sheets.fry.eatBy')}</th>
      </tr>
    </thead>
  );
}

function Row({ row, station, reprint, context }: { readonly row: FryRow; readonly station: Station; readonly reprint: Reprint | null; readonly context: SheetContext }): ReactElement {
  const { formats: f } = context;
  const showPan = station.pans.length > 1;
  if (row.kind === 'bowl') return <BowlRow bowl={row.bowl} columns={showPan ? 8 : 7} context={context} />;
  if (row.kind === 'batch') return <BatchRow batch={row.batch} hour={row.hour} showPan={showPan} showDish={station.dishes.length > 1} reprint={reprint} context={context} />;
  if (row.kind !== 'topUp') {
    const text = row.kind === 'pause' ? pauseWords(context.plan, f, context.names, row.pause) : say(f, 'sheets.fry.change', { pan: context.names.thing(row.pan), after: row.afterBatch });
    return <tr className="bowl"><td colSpan={showPan ? 8 : 7}><div className="line"><TickBox small /><strong>{text}</strong></div></td></tr>;
  }
  const words = say(f, 'sheets.fry.topUp', { after: row.afterBatch, litres: pourWords(f, row.litres, context.plan.event.kitchen.oilKind), targetC: targetOf(context, station.dishes) });
  return <tr className="bowl"><td colSpan={showPan ? 8 : 7}><div className="line"><TickBox small /><strong>{words}</strong></div></td></tr>;
}

/** Cautions and what goes short, above the table: a page never holds them alone, and they are read before the first batch. */
function Cautions({ station, context: { plan, formats: f } }: { readonly station: Station; readonly context: SheetContext }): ReactElement {
  const ends = plan.frying.oilEnds.filter((e) => station.pans.includes(e.pan));
  // Fried whole, without batter: what its recipe says (dried, slit) keeps it from bursting.
  const whole = plan.menu.dishes.filter((d) => station.dishes.includes(d.id) && d.recipe.frying?.bowlMinutes === null && d.recipe.notes !== undefined);
  const short = plan.frying.shortages.filter((s) => station.dishes.includes(s.dish));
  return (
    <div className="short">
      <p className="strong">{say(f, fireWords(plan.event))}</p>
      <p className="small">{say(f, 'sheets.fry.caution1')} {say(f, 'sheets.fry.caution2')} {ends.length > 0 ? say(f, 'sheets.fry.rest', { at: Math.max(...ends.map((e) => Number(e.movableAt))) }) : say(f, 'sheets.fry.caution3')} {say(f, 'sheets.guidance')}</p>
      {whole.map((d) => <p key={d.id} className="small"><strong>{d.name}:</strong> {d.recipe.notes}</p>)}
      {plan.frying.care.length > 0 && station.dishes.length > 1 && <p className="small">{plan.frying.care.map((m) => sayMessage(f, m)).join(' ')}</p>}
      {short.map((s) => <p key={`${s.dish}-${s.from}`} className="strong">{say(f, 'sheets.fry.unmet', { from: s.from, to: s.to, pieces: s.unmet })}</p>)}
    </div>
  );
}

/** Rows that fit under the head of the first page when they are a little lower; longer tables need a further page anyhow. */
const shortTable = 15;

const unique = (list: readonly string[]): readonly string[] => [...new Set(list)];

/** Per station that fries a sheet of batches, for whoever stands there, and the cards of its bowls. */
export function fryDrafts(context: SheetContext): readonly SheetDraft[] {
  const { batches, loads } = context.plan.frying;
  return unique(batches.map((b) => b.station)).flatMap((id) => {
    const own = batches.filter((b) => b.station === id);
    const station = { id, pans: unique(own.map((b) => b.pan)), dishes: unique(own.map((b) => b.dish)) };
    const title = say(context.formats, 'sheets.titled', { title: say(context.formats, 'sheets.kind.fry'), of: context.names.thing(id) });
    const rows = fryRows(context.plan.frying, id);
    const printed = own.map((b) => printedBatch(b, context));
    const reprint = context.reprintOf?.(`fry-${id}`) ?? null;
    const content = (
      <>
        <Cautions station={station} context={context} />
        <Since reprint={reprint} rows={printed} formats={context.formats} />
        {station.pans.map((pan) => (
          <OilBox key={pan} pan={pan} loads={loads.filter((l) => l.pan === pan && station.dishes.includes(l.dish))} targetC={targetOf(context, station.dishes)} named={station.pans.length > 1} context={context} />
        ))}
        <table className={rows.length <= shortTable ? 'fry snug' : 'fry'}>
          <Head context={context} showPan={station.pans.length > 1} />
          {keepTogether(rows).map((group, at) => (
            // The rows of one plan never move among themselves.
            // oxlint-disable-next-line react/no-array-index-key
            <tbody key={at} className="keep">{group.map((row, n) => <Row key={n} row={row} station={station} reprint={reprint} context={context} />)}</tbody>
          ))}
        </table>
        {/* A short table and its head fill one page; there the head alone says when the oil may be moved. */}
        {rows.length > shortTable && <AfterBox ends={context.plan.frying.oilEnds.filter((e) => station.pans.includes(e.pan))} named={station.pans.length > 1} context={context} />}
      </>
    );
    return [{ kind: 'fry', id: `fry-${id}`, title, note: '', rows: printed, content }, ...bowlCardDrafts(context, id)];
  });
}
