import type { ReactElement } from 'react';
import type { BrewRound } from '../../drinks';
import { say, sayMessage } from '../../words';
import { linesWords, quantity } from '../amounts';
import { TickBox } from '../paper/marks';
import type { SheetContext } from '../types';

/** One potful: when, how much of what, and which flask it goes into. Kept on one page. */
export function RoundRows({ round, context: { plan, formats: f, names } }: { readonly round: BrewRound; readonly context: SheetContext }): ReactElement {
  const water = say(f, 'sheets.drinks.water', { amount: quantity(f, round.waterLitres.value, 'L') });
  const rest = round.ingredients.filter((line) => line.ingredient !== 'water');
  const fills = plan.drinks.fills.filter((fill) => fill.round === round.number);
  return (
    <tbody className="keep">
      <tr className="tall hour">
        <td className="tickcell"><TickBox /></td>
        <td className="big">{f.number(round.number)}</td>
        <td className="strong">{names.dish(round.drink)}</td>
        <td>{names.thing(round.pot)}</td>
        <td className="big">{f.clock(round.startAt)}</td>
        <td className="mid nowrap">{f.clock(round.readyAt)}</td>
        <td className="mid nowrap n">{quantity(f, round.litres, 'L')}</td>
      </tr>
      <tr className="detailrow">
        <td colSpan={7}>
          <strong>{round.note === null ? `${water}${rest.length > 0 ? `; ${linesWords(f, names, rest)}` : ''}` : sayMessage(f, round.note)}</strong>
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
