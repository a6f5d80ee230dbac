import { changeKitchen, freshId } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { FigureButton } from '../../parts/figure-button';
import { MeasureField } from '../../parts/measure-field';
import { TextField } from '../../parts/text-field';
import { AddThing, Derived, Thing, Things } from '../../parts/thing';
import { ViewSection } from '../../parts/view-page';
import styles from './kitchen.module.css';

/** Gas cylinders: what is in them, where they stand, what the day takes out of them. */
export function Cylinders() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const { cylinders } = event.kitchen;
  const change = (id: string, patch: Partial<(typeof cylinders)[number]>) => edit(changeKitchen(event, { cylinders: cylinders.map((c) => (c.id === id ? { ...c, ...patch } : c)) }));
  return (
    <ViewSection title={t('view.kitchen.cylinders')}>
      {plan.day.gasNeed !== null && (
        <div className={styles['gas']}>
          <Derived name={t('view.kitchen.gasNeeded')}><FigureButton figure={plan.day.gasNeed.usedKg} title={t('view.kitchen.gasNeeded')} /></Derived>
          <Derived name={t('view.kitchen.gasWanted')}><FigureButton figure={plan.day.gasNeed.wantedKg} title={t('view.kitchen.gasWanted')} /></Derived>
        </div>
      )}
      {cylinders.length === 0 && <p>{t('view.kitchen.none')}</p>}
      <Things>
        {cylinders.map((c) => {
          const name = c.name ?? c.id;
          const gas = plan.day.gas.find((g) => g.cylinder === c.id);
          return (
            <Thing key={c.id} name={name} removeText={t('view.kitchen.remove')} remove={() => changeKitchen(event, { cylinders: cylinders.filter((x) => x.id !== c.id) })} fields={(
              <>
                <TextField label={t('view.kitchen.name')} value={name} onCommit={(next) => change(c.id, { name: next })} />
                <MeasureField label={t('view.kitchen.gasIn')} unit="kg" value={c.gasKg} min={0.1} max={100} step={0.5} decimals={1} onCommit={(gasKg) => change(c.id, { gasKg })} />
                <Choice label={t('view.kitchen.stands')} value={c.place} options={[{ value: 'indoor', text: t('view.kitchen.indoor') }, { value: 'outdoor', text: t('view.kitchen.outdoor') }]} onCommit={(place) => change(c.id, { place })} />
              </>
            )} figures={gas === undefined ? undefined : (
              <>
                <Derived name={t('view.kitchen.gasNeeded')}><FigureButton figure={gas.needKg} title={`${name}: ${t('view.kitchen.gasNeeded')}`} /></Derived>
                <Derived name={t('view.kitchen.gasLasts')}><FigureButton figure={gas.lasts} title={`${name}: ${t('view.kitchen.gasLasts')}`} /></Derived>
              </>
            )} />
          );
        })}
      </Things>
      <AddThing add={() => changeKitchen(event, { cylinders: [...cylinders, { id: freshId(cylinders, 'cylinder'), name: t('view.kitchen.newCylinder', { n: cylinders.length + 1 }), gasKg: 11, place: 'outdoor' }] })}>{t('view.kitchen.addCylinder')}</AddThing>
    </ViewSection>
  );
}
