import { onHand, type Measuring as MeasuringSettings } from '../../shared/event';
import { setPreference } from '../../shared/edit';
import { handMeasureIds } from '../../shared/measure';
import { useDocument } from '../app/document';
import { useSpeaker } from '../app/speak';
import { Choice } from './choice';
import styles from './measuring.module.css';
import { Tick } from './tick';
import { ViewSection } from './view-page';

const steps = [1, 2, 5, 10, 20, 50, 100];
const none = 'none';
const any = 'any';

/** What there is to measure with: the scale's step, spoons and cups. Amounts everywhere follow. */
export function Measuring() {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const kept = event.preferences.measuring;
  const { measures } = onHand(event.preferences);
  const change = (patch: Partial<MeasuringSettings>) => edit(setPreference(event, { measuring: { ...kept, ...patch } }));
  const scale = kept?.scaleStepG === null ? none : kept?.scaleStepG === undefined ? any : String(kept.scaleStepG);
  const listed = steps.map(String).includes(scale) || scale === none || scale === any ? steps : [...steps, Number(scale)].toSorted((a, b) => a - b);
  const withoutStep = (): MeasuringSettings => {
    const { scaleStepG: _step, ...rest } = kept ?? {};
    return rest;
  };
  return (
    <ViewSection title={t('measuring.title')} lead={t('measuring.lead')}>
      <div className={styles['fields']}>
        <Choice label={t('measuring.scale')} value={scale}
          options={[{ value: any, text: t('measuring.anyStep') }, ...listed.map((grams) => ({ value: String(grams), text: t('measuring.step', { grams }) })), { value: none, text: t('measuring.noScale') }]}
          onCommit={(next) => (next === any ? edit(setPreference(event, { measuring: withoutStep() })) : change({ scaleStepG: next === none ? null : Number(next) }))} />
        <fieldset className={styles['set']}>
          <legend>{t('measuring.spoons')}</legend>
          {handMeasureIds.map((id) => (
            <Tick key={id} label={t(`measuring.${id}`)} checked={measures.includes(id)} onChange={(there) => change({ measures: handMeasureIds.filter((x) => (x === id ? there : measures.includes(x))) })} />
          ))}
        </fieldset>
      </div>
    </ViewSection>
  );
}
