import { useSpeaker } from '../../../app/speak';
import { Tick } from '../../../parts/tick';
import type { PartProps } from './change';
import { Fold } from './fold';
import { WordsField } from './words-field';
import folded from './fold.module.css';
import styles from './recipes.module.css';

/** How it waits, where its ratios come from, and what else is to be remembered. */
export function AboutSection({ recipe, change }: PartProps) {
  const t = useSpeaker();
  const { serveHot, needsTemperatureControl, source, notes = '' } = recipe;
  const summary = [serveHot ? t('view.recipes.serveHot') : t('view.recipes.serveCold'), needsTemperatureControl ? t('view.recipes.control') : t('view.recipes.noControl')].join('; ');
  return (
    <Fold title={t('view.recipes.about')} summary={`${summary}. ${source}`}>
      <div className={styles['ticks']}>
        <Tick label={t('view.recipes.serveHot')} checked={serveHot} onChange={(on) => { change({ serveHot: on }); }} />
        <Tick label={t('view.recipes.control')} checked={needsTemperatureControl} onChange={(on) => { change({ needsTemperatureControl: on }); }} />
      </div>
      <p className={styles['note']}>{t('view.recipes.controlNote')}</p>
      <div className={folded['long']}>
        <WordsField label={t('view.recipes.source')} value={source} most={400} onCommit={(text) => change({ source: text === '' ? undefined : text })} />
        <WordsField label={t('view.recipes.notes')} value={notes} most={4000} lines={4} onCommit={(text) => change({ notes: text === '' ? undefined : text })} />
      </div>
    </Fold>
  );
}
