import type { Burner } from '../../../shared/event';
import { changeBurner, removeBurner } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { FigureButton } from '../../parts/figure-button';
import { MeasureField } from '../../parts/measure-field';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { Derived, Thing } from '../../parts/thing';
import { BoilTestFields } from './boil-test';

const winds = ['calm', 'breeze', 'wind'] as const;
const kinds = ['gas', 'lpg', 'electric', 'induction', 'outdoorGas'] as const;

/** A burner or plate, and what of its power arrives. */
export function BurnerThing({ burner }: { readonly burner: Burner }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const change = (patch: Parameters<typeof changeBurner>[2]) => edit(changeBurner(event, burner.id, patch));
  const state = plan.kitchen.burners.find((b) => b.burner.id === burner.id);
  const { circuits, cylinders } = event.kitchen;
  const electric = burner.kind === 'electric' || burner.kind === 'induction';
  const bottled = burner.kind === 'lpg' || burner.kind === 'outdoorGas';
  return (
    <Thing
      name={burner.name} removeText={t('view.kitchen.remove')} remove={() => removeBurner(event, burner.id)}
      fields={(
        <>
          <TextField label={t('view.kitchen.name')} value={burner.name} onCommit={(name) => change({ name })} />
          <Choice label={t('view.kitchen.kind')} value={burner.kind} options={kinds.map((value) => ({ value, text: t(`view.kitchen.${value}`) }))} onCommit={(kind) => change({ kind })} />
          {electric ? <NumberField label={t('view.kitchen.rated')} unit="W" value={burner.ratedW} min={100} max={60000} step={100} onCommit={(ratedW) => change({ ratedW })} />
            : <MeasureField label={t('view.kitchen.rated')} unit="W" value={burner.ratedW} min={100} max={60000} step={100} onCommit={(ratedW) => change({ ratedW })} />}
          <Choice label={t('view.kitchen.stands')} value={burner.place} options={[{ value: 'indoor', text: t('view.kitchen.indoor') }, { value: 'outdoor', text: t('view.kitchen.outdoor') }]} onCommit={(place) => change({ place })} />
          {electric && circuits.length > 0 && (
            <Choice label={t('view.kitchen.circuit')} value={burner.circuit ?? ''} options={[{ value: '', text: t('view.kitchen.noCircuit') }, ...circuits.map((c) => ({ value: c.id, text: c.name }))]} onCommit={(circuit) => change({ circuit: circuit === '' ? undefined : circuit })} />
          )}
          {burner.place === 'outdoor' && <Choice label={t('view.kitchen.wind')} value={burner.wind ?? 'calm'} options={winds.map((value) => ({ value, text: t(value === 'wind' ? 'view.kitchen.wind.on' : `view.kitchen.${value}`) }))} onCommit={(wind) => change({ wind: wind === 'calm' ? undefined : wind })} />}
          {bottled && cylinders.length > 0 && (
            <Choice label={t('view.kitchen.cylinder')} value={burner.cylinder ?? ''} options={[{ value: '', text: t('view.kitchen.noCircuit') }, ...cylinders.map((c) => ({ value: c.id, text: c.name ?? c.id }))]} onCommit={(cylinder) => change({ cylinder: cylinder === '' ? undefined : cylinder })} />
          )}
        </>
      )}
      figures={(
        <>
          {state !== undefined && <Derived name={t('view.kitchen.useful')}><FigureButton figure={state.usefulW} title={`${burner.name}: ${t('view.kitchen.useful')}`} /></Derived>}
          <BoilTestFields burner={burner} />
        </>
      )}
    />
  );
}
