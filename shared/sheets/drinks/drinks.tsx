import type { ReactElement } from 'react';
import { say, sayMessage } from '../../words';
import { quantity } from '../amounts';
import type { SheetContext, SheetDraft } from '../types';
import { flaskFacts } from './flask-facts';
import { Since } from '../reprint';
import { printedRound, RoundRows } from './round-rows';

function Flasks({ context: { plan, formats: f, names } }: { readonly context: SheetContext }): ReactElement {
  return (
    <section className="keep">
      <h2>{say(f, 'sheets.drinks.flasksHead')}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{say(f, 'sheets.drinks.flask')}</th>
            <th scope="col">{say(f, 'sheets.drinks.drink')}</th>
            <th scope="col" className="n">{say(f, 'sheets.drinks.holds')}</th>
            <th scope="col">{say(f, 'sheets.drinks.inUse')}</th>
            <th scope="col">{say(f, 'sheets.drinks.empty')}</th>
          </tr>
        </thead>
        <tbody>
          {plan.drinks.dispensers.filter((d) => d.litres.some((l) => l > 0)).map((flask) => {
            const { coolest, warmest, emptyAt } = flaskFacts(flask);
            const hot = plan.menu.dishes.find((d) => d.id === flask.drink)?.recipe.brewing?.hot ?? true;
            return (
              <tr key={flask.id}>
                <td className="strong">{flask.name}</td>
                <td>{names.dish(flask.drink)}</td>
                <td className="n nowrap">{quantity(f, flask.capacityLitres, 'L')}</td>
                <td className="nowrap">{hot ? coolest !== null && say(f, 'sheets.drinks.coolest', coolest) : warmest !== null && say(f, 'sheets.drinks.warmest', warmest)}</td>
                <td>{emptyAt.length > 0 ? f.list(emptyAt.map((at) => f.clock(at))) : say(f, 'sheets.drinks.never')}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

/** The drinks sheet: every potful with its ingredients and fills, then what to expect of each flask. Not made when nothing is brewed. */
export function drinksDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f, names } = context;
  if (plan.drinks.rounds.length === 0) return [];
  const rows = plan.drinks.rounds.map((round) => printedRound(round, context));
  const reprint = context.reprintOf?.('drinks') ?? null;
  const made = plan.drinks.totals.filter((total) => total.notes.length > 0);
  const content = (
    <>
      <Since reprint={reprint} rows={rows} formats={f} />
      <table className="rounds">
        <thead>
          <tr>
            <th scope="col">{say(f, 'sheets.tick')}</th>
            <th scope="col">{say(f, 'sheets.drinks.round')}</th>
            <th scope="col">{say(f, 'sheets.drinks.drink')}</th>
            <th scope="col">{say(f, 'sheets.drinks.pot')}</th>
            <th scope="col">{say(f, 'sheets.drinks.start')}</th>
            <th scope="col">{say(f, 'sheets.drinks.ready')}</th>
            <th scope="col" className="n">{say(f, 'sheets.drinks.makes')}</th>
          </tr>
        </thead>
        {plan.drinks.rounds.map((round) => <RoundRows key={round.number} round={round} reprint={reprint} context={context} />)}
      </table>
      <Flasks context={context} />
      {plan.drinks.ice !== null && <p className="line">{say(f, 'sheets.drinks.ice', { amount: quantity(f, plan.drinks.ice.kg.value, 'kg'), tubs: plan.drinks.ice.tubs.value })}</p>}
      <div className="cautions">
        {made.map(({ drink, notes }) => <p key={drink}><strong>{names.dish(drink)}:</strong> {notes.map((n) => sayMessage(f, n)).join('; ')}.</p>)}
        <p>{say(f, 'sheets.drinks.note1')} {say(f, 'sheets.drinks.note2')} {say(f, 'sheets.guidance')}</p>
      </div>
    </>
  );
  return [{ kind: 'drinks', id: 'drinks', title: say(f, 'sheets.kind.drinks'), note: '', rows, content }];
}
