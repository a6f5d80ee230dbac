import { onHand, type Measuring as MeasuringSettings } from '../../shared/event';
import { setPreference } from '../../shared/edit';
import { handMeasureIds, mostOff, weighedFromG } from '../../shared/measure';
import { useMemo } from 'react';
import { useDocument } from '../app/document';
import { useSpeaker } from '../app/speak';
import { Choice } from './choice';
import styles from './measuring.module.css';
import { Tick } from './tick';
import { ViewSection } from './view-page';

const steps = [1, 2, 5, 10, 20, 50, 100];
const jugSteps = [10, 20, 25, 50, 100, 250];
const none = 'none';
const any = 'any';

/** What there is to measure with: the scale's step, spoons and cups. Amounts everywhere follow. */
export function Measuring() {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const kept = event.preferences.measuring;
  const there = onHand(event.preferences);
  const { measures } = there;
  const { units } = event.preferences;
  const bound = useMemo(() => mostOff(units, onHand(event.preferences)), [event.preferences, units]);
  const change = (patch: Partial<MeasuringSettings>) => edit(setPreference(event, { measuring: { ...kept, ...patch } }));
  const scale = kept?.scaleStepG === null ? none : kept?.scaleStepG === undefined ? any : String(kept.scaleStepG);
  const jug = kept?.jugStepMl === null ? none : kept?.jugStepMl === undefined ? any : String(kept.jugStepMl);
  const jugsListed = jugSteps.map(String).includes(jug) || jug === none || jug === any ? jugSteps : [...jugSteps, Number(jug)].toSorted((a, b) => a - b);
  const withoutJug = (): MeasuringSettings => {
    const { jugStepMl: _step, ...rest } = kept ?? {};
    return rest;
  };
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
        <Choice label={t('measuring.jug')} value={jug}
          options={[{ value: any, text: t(units === 'us' ? 'measuring.jugStepUs' : 'measuring.anyJug') }, ...(units === 'us' ? [] : jugsListed.map((ml) => ({ value: String(ml), text: t('measuring.jugStep', { ml }) }))), { value: none, text: t('measuring.noJug') }]}
          onCommit={(next) => (next === any ? edit(setPreference(event, { measuring: withoutJug() })) : change({ jugStepMl: next === none ? null : Number(next) }))} />
        <fieldset className={styles['set']}>
          <legend>{t('measuring.spoons')}</legend>
          {handMeasureIds.map((id) => (
            <Tick key={id} label={t(`measuring.${id}`)} checked={measures.includes(id)} onChange={(there) => change({ measures: handMeasureIds.filter((x) => (x === id ? there : measures.includes(x))) })} />
          ))}
        </fieldset>
      </div>
      <p className={styles['bound']}>{bound.poured === null ? t('measuring.pours.none') : t('measuring.pours', { off: bound.poured })} {bound.weighed === null || there.scaleStepG === null ? '' : t('measuring.weighs', { off: bound.weighed, from: weighedFromG(there.scaleStepG) })}</p>
    </ViewSection>
  );
}
