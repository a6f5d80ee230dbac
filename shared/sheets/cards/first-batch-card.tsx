import type { ReactElement } from 'react';
import type { LoadPlan } from '../../frying';
import { settle } from '../../household';
import { say, sayLoose } from '../../words';
import { quantity } from '../amounts';
import type { SheetContext, SheetDraft } from '../types';
import { Blank } from './blank';
import { fireWords } from './fire-words';

interface Row { readonly what: string; readonly planned: string; readonly unit: string }

/** What is planned beside each blank: grams, degrees, minutes of one full batch. */
function rowsOf(load: LoadPlan, { plan, formats: f }: SheetContext): readonly Row[] {
  const frying = plan.menu.dishes.find((d) => d.id === load.dish)?.recipe.frying;
  if (frying === undefined) return [];
  const pieces = load.pieces.value;
  const before = pieces * frying.pieceBatterG;
  const oil = before * frying.oilUptakeKgPerKg;
  // The scale's sign without a number.
  const sign = f.degrees(0).replace(/^[^°]*/, '');
  const grams = (g: number): string => say(f, 'sheets.trial.grams', { n: Math.round(g) });
  return [
    { what: say(f, frying.bowlMinutes === null ? 'sheets.trial.weighPieces' : 'sheets.trial.weigh'), planned: grams(before), unit: 'g' },
    { what: say(f, 'sheets.trial.start'), planned: f.degrees(frying.targetC), unit: sign },
    { what: say(f, 'sheets.trial.putIn'), planned: f.figure(pieces, 'pieces'), unit: '' },
    { what: say(f, 'sheets.trial.lowest'), planned: f.degrees(frying.targetC - load.dipC.value), unit: sign },
    { what: say(f, 'sheets.trial.lift'), planned: f.figure(frying.fryMinutes, 'min'), unit: 'min' },
    { what: say(f, 'sheets.trial.back'), planned: say(f, 'sheets.trial.atMost', { minutes: load.cycleMinutes.value }), unit: 'min' },
    { what: say(f, 'sheets.trial.drain'), planned: grams(before * (1 - frying.waterLostKgPerKg + frying.oilUptakeKgPerKg)), unit: 'g' },
    { what: say(f, 'sheets.trial.mark'), planned: quantity(f, (oil / settle(plan.event, 'oil.rho20').value) * 1000, 'ml'), unit: sayLoose(f, plan.event.preferences.units === 'us' ? 'unit.floz' : 'unit.ml') },
  ];
}

/** A card to fill in beside the pan for every fried dish: one batch, on a trial day or the first of the day, step by step with what is planned and a blank. */
export function firstBatchDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f, names } = context;
  if (plan.frying.batches.length === 0) return [];
  const firstOf = plan.frying.loads.filter((l, at, all) => all.findIndex((o) => o.dish === l.dish) === at);
  return firstOf.map((load): SheetDraft => ({
    kind: 'firstBatch', id: `first-batch-${load.dish}`, title: say(f, 'sheets.titled', { title: say(f, 'sheets.kind.firstBatch'), of: names.dish(load.dish) }), note: '',
    content: <Card load={load} context={context} />,
  }));
}

function Card({ load, context }: { readonly load: LoadPlan; readonly context: SheetContext }): ReactElement {
  const { formats: f, names, plan } = context;
  const burner = plan.event.kitchen.pans.find((p) => p.id === load.pan)?.burner;
  const whole = plan.menu.dishes.find((d) => d.id === load.dish)?.recipe.frying?.bowlMinutes === null;
  return (
    <>
      <p className="strong">{say(f, 'sheets.trial.where', { pan: names.thing(load.pan), burner: burner === undefined ? '' : names.thing(burner) })}</p>
      <p>{say(f, 'sheets.trial.how')}</p>
      <table className="fillin">
        <thead><tr><th scope="col">{say(f, 'sheets.trial.step')}</th><th scope="col" className="n">{say(f, 'sheets.trial.planned')}</th><th scope="col">{say(f, 'sheets.trial.seen')}</th></tr></thead>
        <tbody>
          {rowsOf(load, context).map((row) => (
            <tr className="tall" key={row.what}>
              <td>{row.what}</td>
              <td className="n nowrap grey">{row.planned}</td>
              <td><Blank unit={row.unit} /></td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="cautions">
        <p>{say(f, whole ? 'sheets.trial.dropPiece' : 'sheets.trial.drop')}</p>
        {!whole && <p>{say(f, 'sheets.trial.taste')}</p>}
        <p>{say(f, 'sheets.trial.enter')}</p>
        <p className="small">{say(f, fireWords(plan.event))} {say(f, 'sheets.guidance')}</p>
      </div>
    </>
  );
}
