import type { OilPause } from '../../../shared/frying';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import styles from './frying.module.css';

/** A long pause of a pan: what is done about the heat and by whom, and what either way takes. */
export function Pause({ pause, pan, words }: { readonly pause: OilPause; readonly pan: string; readonly words: string }) {
  const t = useSpeaker();
  const of = t('view.frying.pauseOf', { pan, at: pause.from });
  const what = { low: t('view.frying.pauseLow'), off: t('view.frying.pauseOff'), cooled: t('view.frying.pauseCooled') };
  return (
    <p className={styles['pause']}>
      <strong>{words}.</strong>{' '}
      {what.low} <FigureButton figure={pause.lowKg ?? pause.lowKwh} title={t('view.sheets.figureOf', { of, what: what.low })} />,{' '}
      {what.off} <FigureButton figure={pause.offKg ?? pause.offKwh} title={t('view.sheets.figureOf', { of, what: what.off })} />,{' '}
      {what.cooled} <FigureButton figure={pause.cooledC} title={t('view.sheets.figureOf', { of, what: what.cooled })} />
    </p>
  );
}
