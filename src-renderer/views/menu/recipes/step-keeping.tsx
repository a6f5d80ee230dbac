import type { Step } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import { DurationField } from './duration-field';
import { longestAhead, windowOfEarliest, windowOfLatest, withWindow } from './step-window';
import styles from './recipes.module.css';

/** Longest a result keeps, in minutes (limit of the event file: a year). */
const longestKept = 525600;
const places = ['none', 'counter', 'hot', 'cold', 'freezer'] as const;
type Place = (typeof places)[number];
/** What a place starts from, in minutes: common practice, no source; the cook writes her own. */
const usualKept: Readonly<Record<Exclude<Place, 'none'>, number>> = { counter: 60, hot: 120, cold: 1440, freezer: 43200 };

interface StepKeepingProps {
  readonly step: Step;
  readonly set: (step: Step) => Message | null;
}

/** When the step must be done, and where and how long its result keeps. */
export function StepKeeping({ step, set }: StepKeepingProps) {
  const t = useSpeaker();
  const { endsBefore, keeps } = step;
  const keepIn = (place: Place): Message | null => {
    const { keeps: _, ...rest } = step;
    return set(place === 'none' ? rest : { ...rest, keeps: { ...keeps, place, minutes: keeps?.minutes ?? usualKept[place] } });
  };
  const noWindow = (): Message | null => set(withWindow(step, undefined));
  return (
    <>
      <fieldset className={styles['group3']}>
        <legend>{t('view.recipes.window')}</legend>
        <DurationField label={t('view.recipes.earliest')} value={endsBefore?.earliest ?? null} max={longestAhead} onClear={noWindow} onCommit={(earliest) => set(withWindow(step, windowOfEarliest(step, earliest)))} />
        <DurationField label={t('view.recipes.latest')} value={endsBefore?.latest ?? null} max={longestAhead} onClear={noWindow} onCommit={(latest) => set(withWindow(step, windowOfLatest(step, latest)))} />
      </fieldset>
      <fieldset className={styles['group3']}>
        <legend>{t('view.recipes.keeps')}</legend>
        <Choice label={t('view.recipes.keepsWhere')} value={keeps?.place ?? 'none'} onCommit={keepIn} options={places.map((value) => ({ value, text: t(`view.recipes.place.${value}`) }))} />
        {keeps !== undefined && <DurationField label={t('view.recipes.keepsFor')} value={keeps.minutes} max={longestKept} onCommit={(minutes) => set({ ...step, keeps: { ...keeps, minutes } })} />}
      </fieldset>
    </>
  );
}
