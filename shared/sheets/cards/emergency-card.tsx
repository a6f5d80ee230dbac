import type { ReactElement } from 'react';
import type { Event } from '../../event';
import { say, type PlainWordId } from '../../words';
import type { SheetContext, SheetDraft } from '../types';
import { Blank } from './blank';

const cover = ['sheets.emergency.fire.never', 'sheets.emergency.fire.heat', 'sheets.emergency.fire.lid', 'sheets.emergency.fire.still', 'sheets.emergency.fire.out'] as const satisfies readonly PlainWordId[];
/** Steps for burning oil: the fire services of the United Kingdom say leave it (rule DF-09); others say cover it if that is safe (rule DF-08). Classes of extinguishers: F in Europe, K in the United States (rule DF-10). */
const fireSteps = {
  uk: ['sheets.emergency.fire.never', 'sheets.emergency.fire.uk1', 'sheets.emergency.fire.uk2', 'sheets.emergency.fire.uk3'],
  eu: [...cover, 'sheets.emergency.fire.kindEu'], us: [...cover, 'sheets.emergency.fire.kindUs'], household: [...cover, 'sheets.emergency.fire.kind'],
} as const satisfies Record<Event['preferences']['safetyProfile'], readonly PlainWordId[]>;
/** Burns and scalds: rule SC-08, an Australian burns centre's first aid; wide agreement. */
const burnSteps = ['sheets.emergency.burn.cool', 'sheets.emergency.burn.off', 'sheets.emergency.burn.not', 'sheets.emergency.burn.cover', 'sheets.emergency.burn.help'] as const satisfies readonly PlainWordId[];
/** Gas and its fumes: rules GC-03 and GC-06. */
const gasSteps = ['sheets.emergency.gas.smell', 'sheets.emergency.gas.fumes'] as const satisfies readonly PlainWordId[];
const allergySteps = ['sheets.emergency.allergy.signs', 'sheets.emergency.allergy.pen'] as const satisfies readonly PlainWordId[];

function Part({ title, steps, context: { formats: f }, numbered = false }: { readonly title: PlainWordId; readonly steps: readonly PlainWordId[]; readonly context: SheetContext; readonly numbered?: boolean }): ReactElement {
  const items = steps.map((id) => <li key={id}>{say(f, id)}</li>);
  return <section className="block"><h2>{say(f, title)}</h2>{numbered ? <ol className="steps">{items}</ol> : <ul className="plain">{items}</ul>}</section>;
}

/** The card by the door: address and numbers, burning oil by region, burns, gas where it is used. Names of those who carry an injector only when asked for. */
export function emergencyDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  const { event, frying, drinks, day } = plan;
  if (frying.batches.length === 0 && drinks.rounds.length === 0 && day.tasks.length === 0) return [];
  const known = event.precautions ?? {};
  const gas = event.kitchen.burners.some((b) => b.kind === 'gas' || b.kind === 'lpg' || b.kind === 'outdoorGas');
  const field = (label: PlainWordId, text: string | undefined): ReactElement => <div className="known"><span>{say(f, label)}</span><Blank text={text ?? ''} /></div>;
  const content = (
    <>
      {field('sheets.emergency.number', known.emergencyNumber)}
      {field('sheets.emergency.address', known.address)}
      {field('sheets.emergency.contact', known.contact)}
      <p className="small">{say(f, `sheets.emergency.numbers.${event.preferences.safetyProfile}`)} {say(f, 'sheets.emergency.tell')}</p>
      {frying.batches.length > 0 && <Part title="sheets.emergency.fire" steps={fireSteps[event.preferences.safetyProfile]} context={context} numbered />}
      <Part title="sheets.emergency.burn" steps={burnSteps} context={context} numbered />
      {gas && <Part title="sheets.emergency.gas" steps={gasSteps} context={context} />}
      <Part title="sheets.emergency.allergy" steps={allergySteps} context={context} />
      {known.printInjectors === true && (known.injectors === undefined ? field('sheets.emergency.carries', undefined) : <p className="strong">{say(f, 'sheets.emergency.injectors', { who: known.injectors })}</p>)}
      <p className="small">{say(f, 'sheets.emergency.guidance')}</p>
    </>
  );
  return [{ kind: 'emergency', id: 'emergency', title: say(f, 'sheets.kind.emergency'), note: '', content }];
}
