import { changePan } from '../../../shared/edit';
import type { Pan } from '../../../shared/event';
import { depthByJug, oilByDepth } from '../../../shared/kitchen';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { MeasureField } from '../../parts/measure-field';
import { Measured } from '../../parts/measured';

/** Depth of a pan by filling it with a litre jug, and its oil by how deep it stands: what a cook can measure best. */
export function JugFields({ pan }: { readonly pan: Pan }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const state = plan.kitchen.pans.find((p) => p.pan.id === pan.id);
  return (
    <Measured title={t('view.kitchen.byJug')} how={t('view.kitchen.byJug.how')} open={false}>
      <MeasureField label={t('view.kitchen.jugLitres')} unit="L" value={state?.fullLitres.value ?? null} min={0.2} max={200} step={0.5} decimals={2} onCommit={(litres) => {
        const depthMm = depthByJug(event, pan, litres);
        return depthMm === null ? { id: 'view.kitchen.jugMisfit', params: { litres } } : edit(changePan(event, pan.id, { depthMm }));
      }} />
      <MeasureField label={t('view.kitchen.oilDepth')} unit="mm" value={null} min={5} max={600} step={5} onCommit={(deep) => edit(changePan(event, pan.id, { oilLitres: oilByDepth(event, pan, deep) }))} />
    </Measured>
  );
}
