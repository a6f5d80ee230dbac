import { changeKitchen } from '../../../shared/edit';
import { fryingOil, fryingOils } from '../../../shared/reference';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { MeasureField } from '../../parts/measure-field';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { ViewSection } from '../../parts/view-page';
import styles from './kitchen.module.css';

const anotherOil = 'another';

/** Temperatures, height, bowl, places, frying oil. */
export function Place() {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const { kitchen } = event;
  const change = (patch: Parameters<typeof changeKitchen>[1]) => edit(changeKitchen(event, patch));
  const oil = fryingOil(kitchen.oilKind)?.id ?? anotherOil;
  return (
    <ViewSection title={t('view.kitchen.place')}>
      <div className={styles['fields']}>
        <MeasureField label={t('view.kitchen.room')} unit="°C" value={kitchen.roomC} min={-20} max={50} decimals={1} onCommit={(roomC) => change({ roomC })} />
        <MeasureField label={t('view.kitchen.water')} unit="°C" value={kitchen.waterC} min={1} max={40} decimals={1} onCommit={(waterC) => change({ waterC })} />
        <MeasureField label={t('view.kitchen.altitude')} unit="m" value={kitchen.altitudeM} min={-400} max={5000} step={50} onCommit={(altitudeM) => change({ altitudeM })} />
        <MeasureField label={t('view.kitchen.bowl')} unit="L" value={kitchen.bowlLitres} min={0.5} max={60} step={0.5} decimals={1} onCommit={(bowlLitres) => change({ bowlLitres })} />
        <NumberField label={t('view.kitchen.ovens')} value={kitchen.ovens} min={0} max={10} onCommit={(ovens) => change({ ovens })} />
        <NumberField label={t('view.kitchen.counter')} value={kitchen.counterPlaces} min={1} max={40} onCommit={(counterPlaces) => change({ counterPlaces })} />
        <MeasureField label={t('view.kitchen.hotHold')} unit="°C" value={kitchen.hotHoldC} min={30} max={120} onClear={() => change({ hotHoldC: null })} onCommit={(hotHoldC) => change({ hotHoldC })} />
        <MeasureField label={t('view.kitchen.fridge')} unit="°C" value={kitchen.fridgeC} min={-5} max={20} decimals={1} onClear={() => change({ fridgeC: null })} onCommit={(fridgeC) => change({ fridgeC })} />
        <MeasureField label={t('view.kitchen.cold')} unit="L" value={kitchen.coldLitres} min={0} max={5000} step={10} onClear={() => change({ coldLitres: null })} onCommit={(coldLitres) => change({ coldLitres })} />
        <MeasureField label={t('view.kitchen.iceTub')} unit="L" value={kitchen.iceTubLitres ?? null} min={2} max={500} step={5} onClear={() => change({ iceTubLitres: undefined })} onCommit={(iceTubLitres) => change({ iceTubLitres })} />
        <Choice label={t('view.kitchen.fryingOil')} value={oil} options={[...fryingOils.map((o) => ({ value: o.id, text: o.name })), { value: anotherOil, text: t('view.kitchen.anotherOil') }]}
          onCommit={(id) => change({ oilKind: id === anotherOil ? t('view.kitchen.anotherOil') : id })} />
        {oil === anotherOil && <TextField label={t('view.kitchen.oilName')} value={kitchen.oilKind} onCommit={(oilKind) => change({ oilKind })} />}
        <NumberField label={t('view.kitchen.oilRest')} unit={t('view.kitchen.hours')} value={kitchen.oilRestHours} min={0} max={72} onCommit={(oilRestHours) => change({ oilRestHours })} />
      </div>
    </ViewSection>
  );
}
