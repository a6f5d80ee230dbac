import type { ReactElement } from 'react';
import type { OilPlan } from '../../frying';
import { coolestOil, oilStopC, warmestOil } from '../../safety';
import { say } from '../../words';
import { pourWords, quantity } from '../amounts';
import type { SheetContext, SheetDraft } from '../types';
import { fireWords } from './fire-words';

/** Temperature to load at in a pan: the highest of its dishes. */
function loadC(pan: string, { plan }: SheetContext): number | null {
  const dishes = plan.frying.loads.filter((l) => l.pan === pan).map((l) => l.dish);
  const targets = plan.menu.dishes.filter((d) => dishes.includes(d.id)).flatMap((d) => (d.recipe.frying === undefined ? [] : [d.recipe.frying.targetC]));
  return targets.length === 0 ? null : Math.max(...targets);
}

const line = (words: string, strong = false): ReactElement => <li className={strong ? 'strong' : undefined} key={words}>{words}</li>;

function Pan({ oil, context }: { readonly oil: OilPlan; readonly context: SheetContext }): ReactElement {
  const { plan, formats: f, names } = context;
  const end = plan.frying.oilEnds.find((e) => e.pan === oil.pan);
  const celsius = loadC(oil.pan, context);
  return (
    <section className="dish">
      <h2>{names.thing(oil.pan)}</h2>
      <ul className="plain">
        {line(say(f, 'sheets.oil.fill', { litres: pourWords(f, oil.fillLitres.value, plan.event.kitchen.oilKind) }), true)}
        {line(say(f, 'sheets.oil.level', { rim: f.figure(Math.round(oil.loadedFreeRimMm.value), oil.loadedFreeRimMm.unit), share: f.percent(oil.loadedFillShare.value) }))}
        {plan.frying.sessions.filter((s) => s.pan === oil.pan).map((s) => line(say(f, 'sheets.oil.session', { on: s.heatOnAt, ready: s.readyAt, off: s.heatOffAt })))}
        {celsius !== null && line(say(f, 'sheets.oil.window', { load: celsius, low: coolestOil, high: warmestOil }), true)}
        {line(say(f, 'sheets.oil.stop', { stop: oilStopC(plan.event) }), true)}
        {oil.topUps.length === 0 ? line(say(f, 'sheets.oil.noTopUp')) : oil.topUps.map((u) => line(say(f, 'sheets.oil.topUp', { after: u.afterBatch, litres: pourWords(f, u.litres, plan.event.kitchen.oilKind) })))}
        {end?.changeAfter.map((after) => line(say(f, 'sheets.oil.change', { after }), true))}
        {end !== undefined && line(say(f, 'sheets.oil.left', { litres: quantity(f, end.leftLitres.value, 'L') }))}
        {end !== undefined && line(say(f, 'sheets.oil.move', { at: Number(end.movableAt) }), true)}
      </ul>
    </section>
  );
}

/** The oil of every pan from filling to putting away: one card for whoever looks after it. Not made when nothing is fried. */
export function oilDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  if (plan.frying.batches.length === 0) return [];
  const content = (
    <>
      {plan.frying.oil.map((oil) => <Pan key={oil.pan} oil={oil} context={context} />)}
      <div className="cautions">
        <p>{say(f, 'sheets.oil.spent')}</p>
        <p>{say(f, 'sheets.oil.where')}</p>
        <p className="small">{say(f, fireWords(plan.event))} {say(f, 'sheets.guidance')}</p>
      </div>
    </>
  );
  return [{ kind: 'oil', id: 'oil', title: say(f, 'sheets.kind.oil'), note: '', content }];
}
