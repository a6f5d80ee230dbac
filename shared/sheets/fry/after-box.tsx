import type { ReactElement } from 'react';
import type { OilEnd } from '../../frying';
import { say } from '../../words';
import { quantity } from '../amounts';
import type { SheetContext } from '../types';

/** What becomes of the oil of each pan after the last batch: how much is left, when it may be moved, where it goes. */
export function AfterBox({ ends, named, context: { plan, formats: f, names } }: { readonly ends: readonly OilEnd[]; readonly named: boolean; readonly context: SheetContext }): ReactElement | null {
  if (ends.length === 0) return null;
  return (
    <div className="after">
      <p className="strong">{say(f, 'sheets.fry.afterTitle')}</p>
      {ends.map((end) => {
        const litres = quantity(f, end.leftLitres.value, 'L');
        const words = { litres, at: Number(end.movableAt), hours: plan.event.kitchen.oilRestHours };
        return <p key={end.pan}>{named ? `${names.thing(end.pan)}: ` : ''}{say(f, 'sheets.fry.after', words)}</p>;
      })}
      <p className="small">{say(f, 'sheets.fry.signs')} {say(f, 'sheets.fry.where')}</p>
    </div>
  );
}
