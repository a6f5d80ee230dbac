import type { ReactElement } from 'react';
import { isRice } from '../../menu';
import { safetyRule } from '../../reference';
import { limitsOf } from '../../safety';
import { say } from '../../words';
import { shiftDay } from '../calendar';
import { keptUntil } from '../labels/box-words';
import { leftovers, type Leftover } from '../labels/leftover';
import { TickBox } from '../paper/marks';
import type { SheetContext, SheetDraft } from '../types';

/** Temperature food is brought down to within two hours, before it goes on to the fridge in four more (rule CO-01, its text). */
const firstC = 21;
const firstHours = 2;

function Row({ left, context }: { readonly left: Leftover; readonly context: SheetContext }): ReactElement {
  const { plan, formats: f, names } = context;
  const off = left.dish.lastServed ?? plan.event.closesAt;
  const within = safetyRule(isRice(left.dish) ? 'PR-05a' : 'TC-01').limit ?? 2;
  const jobs = plan.day.tasks.filter((t) => (t.kind === 'cool' && t.dish === left.dish.id) || (t.kind === 'store' && t.after.some((id) => id === `cool/${left.dish.id}`)));
  const label = say(f, 'sheets.cooling.label', {
    dish: left.dish.name, made: f.date(shiftDay(plan.event.day, Math.floor(off / 1440))), by: keptUntil({ madeAt: off, useBy: left.useBy }, plan.event.day, f), reheatC: left.reheatC,
  });
  return (
    <tr>
      <td className="tickcell"><TickBox /></td>
      <td><strong>{left.dish.name}</strong>{jobs.length > 0 && <p className="small">{say(f, 'sheets.cooling.jobs', { cool: jobs.find((t) => t.kind === 'cool')?.start ?? null, store: jobs.find((t) => t.kind === 'store')?.start ?? null, who: f.list([...new Set(jobs.map((t) => (t.who.length === 0 ? say(f, 'sheets.day.nobody') : f.list(t.who.map(names.person)))))]) })}</p>}</td>
      <td className="when">{f.clock(off)}</td>
      <td className="when">{f.clock(off + within * 60)}</td>
      <td className="small">{label}</td>
      <td className="write">{'\u00a0'}</td>
    </tr>
  );
}

/** What may be left over: when it comes off the table, by when it is in the fridge, what its container says. Not made without guests. */
export function coolingDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  const left = leftovers(plan);
  if (left.length === 0) return [];
  const cold = limitsOf(plan.event).coldTarget;
  const content = (
    <>
      <table className="cooling">
        <thead><tr>
          <th scope="col" className="t0">{say(f, 'sheets.tick')}</th><th scope="col" className="what">{say(f, 'sheets.cooling.what')}</th><th scope="col" className="t2">{say(f, 'sheets.cooling.off')}</th>
          <th scope="col" className="t2">{say(f, 'sheets.cooling.by')}</th><th scope="col">{say(f, 'sheets.cooling.labelHead')}</th><th scope="col" className="t2">{say(f, 'sheets.cooling.amount')}</th>
        </tr></thead>
        <tbody>{left.map((one) => <Row key={one.dish.id} left={one} context={context} />)}</tbody>
      </table>
      <ul className="plain">
        <li>{say(f, 'sheets.cooling.limits', { first: firstC, hours: firstHours, cold })}</li>
        <li>{say(f, 'sheets.cooling.how')}</li>
        <li>{say(f, 'sheets.cooling.throw', { hours: safetyRule('TC-01').limit ?? 2 })}</li>
      </ul>
      <div className="cautions">
        <p className="small">{say(f, 'sheets.check.sources', { rules: ['CO-01', 'TC-01', 'PR-05a', 'LO-01', 'LO-03', 'RH-01'] })}</p>
        <p className="small">{say(f, 'sheets.guidance')}</p>
      </div>
    </>
  );
  return [{ kind: 'cooling', id: 'cooling', title: say(f, 'sheets.kind.cooling'), note: say(f, 'sheets.cooling.note'), content }];
}
