import type { ReactElement } from 'react';
import type { LoadPlan } from '../../frying';
import { say } from '../../words';
import { pourWords } from '../amounts';
import type { SheetContext } from '../types';

interface Props {
  readonly pan: string;
  readonly loads: readonly LoadPlan[];
  /** Temperature to load at, in degrees Celsius. */
  readonly targetC: number;
  readonly named: boolean;
  readonly context: SheetContext;
}

/** Oil, fire and load of one pan: what the fryer checks before the first batch. */
export function OilBox({ pan, loads, targetC, named, context: { plan, formats: f, names } }: Props): ReactElement {
  const oil = plan.frying.oil.find((o) => o.pan === pan);
  const sessions = plan.frying.sessions.filter((s) => s.pan === pan);
  const litres = oil === undefined ? '' : pourWords(f, oil.fillLitres.value, plan.event.kitchen.oilKind);
  return (
    <div className="oil">
      {oil !== undefined && (
        <div>
          <strong>{named ? say(f, 'sheets.fry.oilIn', { litres, pan: names.thing(pan) }) : say(f, 'sheets.fry.oil', { litres })}</strong>
          <span>{say(f, 'sheets.fry.oilLevel', { share: f.percent(oil.loadedFillShare.value), rim: f.figure(Math.round(oil.loadedFreeRimMm.value), oil.loadedFreeRimMm.unit) })}</span>
        </div>
      )}
      <div>
        {sessions.map((s) => (
          <p key={s.heatOnAt}>
            <strong>{say(f, 'sheets.fry.light', { at: s.heatOnAt, targetC })}</strong>
            <span>{say(f, 'sheets.fry.heat', { minutes: s.readyAt - s.heatOnAt, ready: s.readyAt })}</span>
            <strong>{say(f, 'sheets.fry.off', { at: s.heatOffAt })}</strong>
          </p>
        ))}
      </div>
      <div>
        {loads.map((load) => (
          <p key={load.dish}>
            <strong>{loads.length > 1 ? `${names.dish(load.dish)}: ` : ''}{say(f, 'sheets.fry.atOnce', { pieces: load.pieces.value, minutes: load.recipeMinutes })}</strong>
            <span>{say(f, 'sheets.fry.cycle', { minutes: load.cycleMinutes.value, dip: load.dipC.value })}</span>
          </p>
        ))}
      </div>
    </div>
  );
}
