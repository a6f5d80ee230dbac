import type { Person } from '../../../shared/event';
import { changePerson, removePerson } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { MeasureField } from '../../parts/measure-field';
import { TextField } from '../../parts/text-field';
import { Derived, Thing } from '../../parts/thing';
import { TimeField } from '../../parts/time-field';

/** A helper: what they do, when they are here, what they lift. */
export function PersonThing({ person }: { readonly person: Person }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const change = (patch: Parameters<typeof changePerson>[2]) => edit(changePerson(event, person.id, patch));
  const busy = plan.day.busy.find((b) => b.person === person.id);
  return (
    <Thing
      name={person.name} removeText={t('view.kitchen.remove')} remove={() => removePerson(event, person.id)}
      fields={(
        <>
          <TextField label={t('view.kitchen.name')} value={person.name} onCommit={(name) => change({ name })} />
          <TextField label={t('view.kitchen.roles')} value={person.roles.join(', ')} onCommit={(text) => change({ roles: text.split(',').map((r) => r.trim()).filter((r) => r !== '') })} />
          <TimeField label={t('view.kitchen.hereFrom')} value={person.from} onCommit={(from) => change({ from })} />
          <TimeField label={t('view.kitchen.hereTo')} value={person.to} onCommit={(to) => change({ to })} />
          <MeasureField label={t('view.kitchen.lift')} unit="kg" value={person.liftKg ?? null} min={1} max={60} decimals={1} onClear={() => change({ liftKg: undefined })} onCommit={(liftKg) => change({ liftKg })} />
        </>
      )}
      figures={busy === undefined ? undefined : <Derived name={t('view.kitchen.busy')}><FigureButton figure={busy.minutes} title={`${person.name}: ${t('view.kitchen.busy')}`}>{t.formats.duration(busy.minutes.value)}</FigureButton></Derived>}
    />
  );
}
