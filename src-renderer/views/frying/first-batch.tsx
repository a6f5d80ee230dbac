import { useMemo } from 'react';
import { calibrate, type Told } from '../../../shared/calibration';
import { changes, largestChanges } from '../../../shared/changes';
import { freshId, removeTrial, setTrial, takeTrial } from '../../../shared/edit';
import type { Trial } from '../../../shared/event';
import { plan as planOf } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker, type Speaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { FigureButton } from '../../parts/figure-button';
import table from '../../parts/table.module.css';
import { AddThing, Thing, Things } from '../../parts/thing';
import { ViewSection } from '../../parts/view-page';
import styles from './first-batch.module.css';
import { TrialFields } from './trial-fields';

/** How a told value is written: shares as percent, the rest with its unit. */
function valueText(t: Speaker, told: Told, value: number): string {
  if (told === 'pieceBatterG') return t.formats.figure(value, 'g');
  if (told === 'fryMinutes') return t.formats.figure(value, 'min');
  return t.formats.percent(value);
}

/** What one batch tells, beside what was planned with until now. */
function Told({ trial, names }: { readonly trial: Trial; readonly names: Names }) {
  const t = useSpeaker();
  const { event } = useDocument();
  const told = useMemo(() => calibrate(event, trial), [event, trial]);
  return (
    <>
      {told.settings.length > 0 && (
        <div className={table['scroll']}>
          <table className={`${table['table']} ${styles['told']}`}>
            <caption className="unseen">{t('view.trial.told')}</caption>
            <thead><tr><th scope="col">{t('view.trial.value')}</th><th scope="col" className={table['n']}>{t('view.trial.before')}</th><th scope="col" className={table['n']}>{t('view.trial.now')}</th><th scope="col"><span className="unseen">{t('view.trial.sure')}</span></th></tr></thead>
            <tbody>
              {told.settings.map((s) => (
                <tr key={s.told}>
                  <td>{t(`view.trial.told.${s.told}`)}{s.told === 'usefulShare' && <>, {names.thing(s.of)}</>}</td>
                  <td className={table['n']}>{valueText(t, s.told, s.before)}</td>
                  <td className={table['n']}><FigureButton figure={s.figure} title={`${names.dish(trial.dish)}: ${t(`view.trial.told.${s.told}`)}`}>{valueText(t, s.told, s.after)}</FigureButton></td>
                  <td className={table['note']}>{s.rough && t('view.trial.rough')}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {told.notes.length > 0 && <ul className={styles['notes']}>{told.notes.map((n) => <li key={n.id}>{t.message(n)}</li>)}</ul>}
    </>
  );
}

/** What taking the figures would change, by planning both; and the buttons. */
function Taking({ trial }: { readonly trial: Trial }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const taken = useMemo(() => takeTrial(event, trial.id), [event, trial.id]);
  const effects = useMemo(() => ('event' in taken ? changes(plan, planOf(taken.event)) : []), [plan, taken]);
  if (!('event' in taken)) return null;
  const nothing = effects.length === 0;
  if (nothing && trial.taken === true) return <p className={styles['taken']}>{t('view.trial.isTaken')}</p>;
  return (
    <div className={styles['would']}>
      <p>{t(nothing ? 'view.trial.wouldNot' : 'view.trial.would')}</p>
      {!nothing && <ul className={styles['effects']}>{largestChanges(effects, 6).map((c, i) => <li key={`${i} ${c.about}`}>{t.message(c.message)}</li>)}</ul>}
      <Button kind="primary" onPress={() => { edit(taken); }}>{t('view.trial.take')}</Button>
    </div>
  );
}

/** One batch fried before the day, or the first of it: what was measured, what it tells, what would change. Nothing when nothing is fried. */
export function FirstBatch({ names }: { readonly names: Names }) {
  const t = useSpeaker();
  const { event, plan } = useDocument();
  const [load] = plan.frying.loads;
  const trials = event.trials ?? [];
  if (load === undefined && trials.length === 0) return null;
  return (
    <ViewSection title={t('view.trial')} lead={t('view.trial.lead')}>
      <Things>
        {trials.map((trial) => (
          <Thing key={trial.id} name={t('view.trial.of', { dish: names.dish(trial.dish) })} removeText={t('view.trial.remove')} remove={() => removeTrial(event, trial.id)}
            fields={<TrialFields trial={trial} names={names} />} figures={<div className={styles['below']}><Told trial={trial} names={names} /><Taking trial={trial} /></div>} />
        ))}
      </Things>
      {load !== undefined && (
        <AddThing add={() => setTrial(event, { id: freshId(trials, 'batch'), dish: load.dish, pan: load.pan, pieces: Math.max(1, load.pieces.value) })}>{t(trials.length === 0 ? 'view.trial.add' : 'view.trial.addMore')}</AddThing>
      )}
    </ViewSection>
  );
}
