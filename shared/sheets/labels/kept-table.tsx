import type { ReactElement } from 'react';
import { amountOf } from '../../measure';
import { say } from '../../words';
import { amountWords } from '../amounts';
import { shiftDay } from '../calendar';
import { TickBox } from '../paper/marks';
import type { SheetContext } from '../types';
import { boxCount, keptAmount, keptUntil, keptWhat } from './box-words';
import { keptThings, roomIn, type KeptThing } from './kept-things';

/** Places in the order of the sheet: what keeps longest first. */
const places = ['freezer', 'cold', 'counter'] as const;

function Row({ thing, context }: { readonly thing: KeptThing; readonly context: SheetContext }): ReactElement {
  const { plan: { event }, formats: f } = context;
  return (
    <tr>
      <td className="tickcell"><TickBox small /></td>
      <td><strong>{keptWhat(thing, context)}</strong>{thing.foods !== null && <><br /><span className="small">{say(f, 'sheets.boxes.for', { dish: thing.dish.name })}</span></>}</td>
      <td className="n nowrap">{keptAmount(thing, f)}</td>
      <td className="nowrap">{boxCount(thing, f)}</td>
      <td className="small">{f.date(shiftDay(event.day, Math.floor(thing.madeAt / 1440)))}</td>
      <td className="small">{keptUntil(thing, event.day, f)}</td>
    </tr>
  );
}

/** Everything in boxes and bags by where it stands, with the room they take in the fridge and the freezer, and how many labels are printed for them. Nothing when nothing is kept. */
export function KeptTable({ context }: { readonly context: SheetContext }): ReactElement | null {
  const { plan, formats: f } = context;
  const things = keptThings(plan);
  if (things.length === 0) return null;
  const labels = things.reduce((sum, thing) => sum + thing.boxes.count.value, 0);
  const headOf = (place: (typeof places)[number]): string => {
    const room = place === 'counter' ? null : roomIn(plan, place);
    const name = say(f, `sheets.kept.place.${place}`);
    return room === null ? name : say(f, 'sheets.kept.room', { place: name, room: amountWords(f, amountOf(room.value, 'L')) });
  };
  return (
    <section>
      <h2>{say(f, 'sheets.kept.head')}</h2>
      <p className="small">{say(f, 'sheets.kept.labels', { n: labels })}</p>
      <table className="kept">
        <thead>
          <tr>
            <th scope="col">{say(f, 'sheets.tick')}</th>
            <th scope="col">{say(f, 'sheets.kept.what')}</th>
            <th scope="col" className="n">{say(f, 'sheets.kept.amount')}</th>
            <th scope="col">{say(f, 'sheets.kept.boxes')}</th>
            <th scope="col">{say(f, 'sheets.kept.made')}</th>
            <th scope="col">{say(f, 'sheets.boxes.useBy')}</th>
          </tr>
        </thead>
        {places.map((place) => {
          const own = things.filter((thing) => thing.keeps.place === place);
          return own.length === 0 ? null : (
            <tbody key={place}>
              <tr className="sectionrow"><th scope="rowgroup" colSpan={6}>{headOf(place)}</th></tr>
              {own.map((thing) => <Row key={thing.key} thing={thing} context={context} />)}
            </tbody>
          );
        })}
      </table>
    </section>
  );
}
