import type { Dispenser, Pot } from '../../../shared/event';
import { changeDispenser, changePot, removeDispenser, removePot } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { FigureButton } from '../../parts/figure-button';
import { MeasureField } from '../../parts/measure-field';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { Derived, Thing } from '../../parts/thing';
import { Tick } from '../../parts/tick';
import { CoolTestFields } from './cool-test';

/** A pot. */
export function PotThing({ pot }: { readonly pot: Pot }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const change = (patch: Parameters<typeof changePot>[2]) => edit(changePot(event, pot.id, patch));
  return (
    <Thing name={pot.name} removeText={t('view.kitchen.remove')} remove={() => removePot(event, pot.id)} fields={(
      <>
        <TextField label={t('view.kitchen.name')} value={pot.name} onCommit={(name) => change({ name })} />
        <MeasureField label={t('view.kitchen.litres')} unit="L" value={pot.litres} min={0.3} max={200} step={0.5} decimals={2} onCommit={(litres) => change({ litres })} />
        <MeasureField label={t('view.kitchen.mass')} unit="kg" value={pot.massKg} min={0.1} max={60} step={0.1} decimals={2} onCommit={(massKg) => change({ massKg })} />
      </>
    )} />
  );
}

/** A flask or urn: what it holds, for which drink, how fast it cools. */
export function DispenserThing({ dispenser }: { readonly dispenser: Dispenser }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const change = (patch: Parameters<typeof changeDispenser>[2]) => edit(changeDispenser(event, dispenser.id, patch));
  const state = plan.drinks.dispensers.find((d) => d.id === dispenser.id);
  const { circuits } = event.kitchen;
  const heated = dispenser.insulation === 'heated' || dispenser.brewsW !== undefined;
  const drinks = plan.menu.dishes.filter((d) => d.recipe.brewing !== undefined);
  return (
    <Thing
      name={dispenser.name} removeText={t('view.kitchen.remove')} remove={() => removeDispenser(event, dispenser.id)}
      fields={(
        <>
          <TextField label={t('view.kitchen.name')} value={dispenser.name} onCommit={(name) => change({ name })} />
          <Choice label={t('view.kitchen.holds')} value={dispenser.dish ?? ''} options={[{ value: '', text: t('view.kitchen.anyDrink') }, ...drinks.map((d) => ({ value: d.id, text: d.name }))]} onCommit={(dish) => change({ dish: dish === '' ? undefined : dish })} />
          <MeasureField label={t('view.kitchen.litres')} unit="L" value={dispenser.litres} min={0.2} max={200} step={0.5} decimals={2} onCommit={(litres) => change({ litres })} />
          <MeasureField label={t('view.kitchen.mass')} unit="kg" value={dispenser.massKg} min={0.1} max={60} step={0.1} decimals={2} onCommit={(massKg) => change({ massKg })} />
          <Choice label={t('view.kitchen.insulation')} value={dispenser.insulation} onCommit={(insulation) => change({ insulation })}
            options={[{ value: 'foam', text: t('view.kitchen.foam') }, { value: 'vacuum', text: t('view.kitchen.vacuum') }, { value: 'none', text: t('view.kitchen.noInsulation') }, { value: 'heated', text: t('view.kitchen.heated') }]} />
          {heated && <NumberField label={t('view.kitchen.brewsW')} unit="W" value={dispenser.brewsW ?? null} min={200} max={20000} step={100} onClear={() => change({ brewsW: undefined, circuit: undefined })} onCommit={(brewsW) => change({ brewsW })} />}
          {dispenser.brewsW !== undefined && circuits.length > 0 && (
            <Choice label={t('view.kitchen.circuit')} value={dispenser.circuit ?? ''} options={[{ value: '', text: t('view.kitchen.noCircuit') }, ...circuits.map((c) => ({ value: c.id, text: c.name }))]} onCommit={(circuit) => change({ circuit: circuit === '' ? undefined : circuit })} />
          )}
          <Tick label={t('view.kitchen.fitForMilk')} checked={dispenser.fitForMilk} onChange={(fitForMilk) => { change({ fitForMilk }); }} />
        </>
      )}
      figures={(
        <>
          {state !== undefined && <Derived name={t('view.kitchen.cooling')}><FigureButton figure={state.coolingPerHour} title={`${dispenser.name}: ${t('view.kitchen.cooling')}`}>{t.formats.percent(state.coolingPerHour.value)}</FigureButton></Derived>}
          {!heated && <CoolTestFields dispenser={dispenser} />}
        </>
      )}
    />
  );
}
