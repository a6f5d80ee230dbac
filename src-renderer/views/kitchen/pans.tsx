import type { Pan } from '../../../shared/event';
import { changePan, removePan } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { FigureButton } from '../../parts/figure-button';
import { MeasureField } from '../../parts/measure-field';
import { TextField } from '../../parts/text-field';
import { Derived, Thing } from '../../parts/thing';
import { JugFields } from './jug-fields';

const shapes = ['round', 'flatWok', 'straight', 'rectangular'] as const;
const materials = ['steel', 'iron', 'aluminium', 'brass'] as const;

/** A frying pan: its measures, and what the oil in it comes to. */
export function PanThing({ pan }: { readonly pan: Pan }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const change = (patch: Parameters<typeof changePan>[2]) => edit(changePan(event, pan.id, patch));
  const state = plan.kitchen.pans.find((p) => p.pan.id === pan.id);
  const rectangular = pan.shape === 'rectangular';
  return (
    <Thing
      name={pan.name} removeText={t('view.kitchen.remove')} remove={() => removePan(event, pan.id)}
      fields={(
        <>
          <TextField label={t('view.kitchen.name')} value={pan.name} onCommit={(name) => change({ name })} />
          <Choice label={t('view.kitchen.shape')} value={pan.shape} options={shapes.map((value) => ({ value, text: t(`view.kitchen.${value}`) }))}
            onCommit={(shape) => change(shape === 'rectangular' ? { shape, lengthMm: pan.lengthMm ?? 400, widthMm: pan.widthMm ?? 300 } : { shape, rimMm: pan.rimMm ?? 300, ...(shape === 'flatWok' ? { bottomMm: pan.bottomMm ?? 150 } : {}) })} />
          {!rectangular && <MeasureField label={t('view.kitchen.rim')} unit="mm" value={pan.rimMm ?? null} min={100} max={1200} step={5} onCommit={(rimMm) => change({ rimMm })} />}
          {pan.shape === 'flatWok' && <MeasureField label={t('view.kitchen.bottom')} unit="mm" value={pan.bottomMm ?? null} min={20} max={1200} step={5} onCommit={(bottomMm) => change({ bottomMm })} />}
          {rectangular && <MeasureField label={t('view.kitchen.length')} unit="mm" value={pan.lengthMm ?? null} min={80} max={1500} step={5} onCommit={(lengthMm) => change({ lengthMm })} />}
          {rectangular && <MeasureField label={t('view.kitchen.width')} unit="mm" value={pan.widthMm ?? null} min={80} max={1500} step={5} onCommit={(widthMm) => change({ widthMm })} />}
          <MeasureField label={t('view.kitchen.depth')} unit="mm" value={pan.depthMm} min={20} max={600} step={5} onCommit={(depthMm) => change({ depthMm })} />
          <MeasureField label={t('view.kitchen.oil')} unit="L" value={pan.oilLitres} min={0.2} max={60} step={0.1} decimals={2} onCommit={(oilLitres) => change({ oilLitres })} />
          <MeasureField label={t('view.kitchen.mass')} unit="kg" value={pan.massKg} min={0.1} max={60} step={0.1} decimals={2} onCommit={(massKg) => change({ massKg })} />
          <Choice label={t('view.kitchen.material')} value={pan.material} options={materials.map((value) => ({ value, text: t(`view.kitchen.${value}`) }))} onCommit={(material) => change({ material })} />
          <Choice label={t('view.kitchen.onBurner')} value={pan.burner} options={event.kitchen.burners.map((b) => ({ value: b.id, text: b.name }))} onCommit={(burner) => change({ burner })} />
        </>
      )}
      figures={state === undefined ? undefined : (
        <>
          <Derived name={t('view.kitchen.hotDepth')}><FigureButton figure={state.hotDepthMm} title={`${pan.name}: ${t('view.kitchen.hotDepth')}`} /></Derived>
          <Derived name={t('view.kitchen.freeRim')}><FigureButton figure={state.freeRimMm} title={`${pan.name}: ${t('view.kitchen.freeRim')}`} /></Derived>
          <Derived name={t('view.kitchen.fill')}><FigureButton figure={state.fillShare} title={`${pan.name}: ${t('view.kitchen.fill')}`}>{t.formats.percent(state.fillShare.value)}</FigureButton></Derived>
          <Derived name={t('view.kitchen.fullLitres')}><FigureButton figure={state.fullLitres} title={`${pan.name}: ${t('view.kitchen.fullLitres')}`} /></Derived>
          <Derived name={t('view.kitchen.useful')}><FigureButton figure={state.burner.usefulW} title={`${pan.name}: ${t('view.kitchen.useful')}`} /></Derived>
          <JugFields pan={pan} />
        </>
      )}
    />
  );
}
