import type { ReactElement } from 'react';
import type { BrewRound } from '../../drinks';
import { say, sayMessage } from '../../words';
import { linesWords, pourWords, quantity } from '../amounts';
import { TickBox } from '../paper/marks';
import { isChanged, Was } from '../reprint';
import type { PrintedRow, Reprint, SheetContext } from '../types';

/** A round as it stands on paper. Rounds are told apart by drink and place among its rounds: a round more of tea is no change to the coffee. */
export function printedRound(round: BrewRound, { plan, formats: f, names }: SheetContext): PrintedRow {
  const nth = plan.drinks.rounds.filter((r) => r.drink === round.drink && r.number <= round.number).length;
  return {
    key: `${round.drink}/${nth}`, name: say(f, 'sheets.drinks.roundOf', { n: round.number, drink: names.dish(round.drink) }),
    cells: { pot: names.thing(round.pot), start: f.clock(round.startAt), ready: f.clock(round.readyAt), makes: quantity(f, round.litres, 'L') },
  };
}

/** One potful: when, how much of what, and which flask it goes into. Kept on one page. */
export function RoundRows({ round, reprint, context }: { readonly round: BrewRound; readonly reprint: Reprint | null; readonly context: SheetContext }): ReactElement {
  const { plan, formats: f, names } = context;
  const row = printedRound(round, context);
  const water = say(f, 'sheets.drinks.water', { amount: pourWords(f, round.waterLitres.value, 'water') });
  const rest = round.ingredients.filter((line) => line.ingredient !== 'water' && !round.apart.includes(line.ingredient));
  const beside = round.ingredients.filter((line) => round.apart.includes(line.ingredient));
  const fills = plan.drinks.fills.filter((fill) => fill.round === round.number);
  return (
    <tbody className="keep">
      <tr className={`tall hour${isChanged(reprint, row) ? ' changed' : ''}`}>
        <td className="tickcell"><TickBox /></td>
        <td className="big">{f.number(round.number)}</td>
        <td className="strong">{names.dish(round.drink)}</td>
        <td>{row.cells['pot']}<Was reprint={reprint} row={row} cell="pot" /></td>
        <td className="big">{row.cells['start']}<Was reprint={reprint} row={row} cell="start" /></td>
        <td className="mid nowrap">{row.cells['ready']}<Was reprint={reprint} row={row} cell="ready" /></td>
        <td className="mid nowrap n">{row.cells['makes']}<Was reprint={reprint} row={row} cell="makes" /></td>
      </tr>
      <tr className="detailrow">
        <td colSpan={7}>
          <strong>{round.note === null ? `${water}${rest.length > 0 ? `; ${linesWords(f, names, rest)}` : ''}` : sayMessage(f, round.note)}</strong>
          {round.note === null && beside.length > 0 && <span> {say(f, 'drinks.beside', { food: linesWords(f, names, beside) })}</span>}
          {round.heatMinutes.value > 0 && <span className="grey"> {say(f, 'sheets.drinks.boils', { at: round.boilAt })}</span>}
        </td>
      </tr>
      {fills.map((fill) => (
        <tr className="detailrow" key={`${fill.dispenser}-${fill.at}`}>
          <td colSpan={7}>
            <div className="line">
              <TickBox small />
              <span>
                {fill.trips === 0 ? say(f, 'sheets.drinks.inUrn', { flask: names.thing(fill.dispenser), amount: quantity(f, fill.litres, 'L'), at: fill.at }) : say(f, 'sheets.drinks.fill', { flask: names.thing(fill.dispenser), amount: quantity(f, fill.litres, 'L'), at: fill.at, trips: fill.trips })}
                {fill.leftLitres > 0.05 && `; ${say(f, 'sheets.drinks.leftFirst', { amount: quantity(f, fill.leftLitres, 'L') })}`}
              </span>
            </div>
          </td>
        </tr>
      ))}
    </tbody>
  );
}
