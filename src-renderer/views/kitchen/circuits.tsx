import { changeKitchen, freshId } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { AddThing, Thing, Things } from '../../parts/thing';
import { ViewSection } from '../../parts/view-page';

/** The house's circuits that plates and urns hang on. */
export function Circuits() {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const { circuits } = event.kitchen;
  const change = (id: string, patch: Partial<(typeof circuits)[number]>) => edit(changeKitchen(event, { circuits: circuits.map((c) => (c.id === id ? { ...c, ...patch } : c)) }));
  return (
    <ViewSection title={t('view.kitchen.circuits')}>
      {circuits.length === 0 && <p>{t('view.kitchen.none')}</p>}
      <Things>
        {circuits.map((c) => (
          <Thing key={c.id} name={c.name} removeText={t('view.kitchen.remove')} remove={() => changeKitchen(event, { circuits: circuits.filter((x) => x.id !== c.id) })} fields={(
            <>
              <TextField label={t('view.kitchen.name')} value={c.name} onCommit={(name) => change(c.id, { name })} />
              <NumberField label={t('view.kitchen.volts')} unit="V" value={c.volts} min={50} max={480} onCommit={(volts) => change(c.id, { volts })} />
              <NumberField label={t('view.kitchen.amps')} unit="A" value={c.amps} min={1} max={200} onCommit={(amps) => change(c.id, { amps })} />
              <NumberField label={t('view.kitchen.other')} unit="W" value={c.otherWatts} min={0} max={100000} step={50} onCommit={(otherWatts) => change(c.id, { otherWatts })} />
            </>
          )} />
        ))}
      </Things>
      <AddThing add={() => changeKitchen(event, { circuits: [...circuits, { id: freshId(circuits, 'circuit'), name: t('view.kitchen.newCircuit', { n: circuits.length + 1 }), volts: 230, amps: 16, otherWatts: 0 }] })}>{t('view.kitchen.addCircuit')}</AddThing>
    </ViewSection>
  );
}
