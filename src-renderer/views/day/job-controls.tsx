import { changeJob, changeOwnJob, removeOwnJob, type EditResult } from '../../../shared/edit';
import { dayOf, type JobChange, type OwnJob } from '../../../shared/event';
import type { Task } from '../../../shared/timeline';
import { useState } from 'react';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { TimeField } from '../../parts/time-field';
import { firstOfJob, hasOwnPlan, jobOf, refOf, standsAtOil } from './job-ref';
import styles from './day.module.css';

const anybody = 'anybody';
const inOne = '1';

/** What can be laid down about a job: its minute, who does it, how long, in how many parts, or not at all. */
export function JobControls({ task, own, onGone }: { readonly task: Task; readonly own: OwnJob | undefined; readonly onGone: () => void }) {
  const t = useSpeaker();
  const { plan, event, edit, readOnly } = useDocument();
  const [problem, setProblem] = useState<string | null>(null);
  if (readOnly) return null;
  if (standsAtOil(task)) return <p className={styles['note']}>{t('view.day.oilStands')}</p>;
  const ref = refOf(task, t);
  const change = dayOf(event).changes.find((c) => c.job === ref.key);
  const lay = (patch: { readonly [K in keyof JobChange]?: JobChange[K] | undefined }) => edit(changeJob(event, ref, patch));
  const press = (made: EditResult): void => { const answer = edit(made); setProblem(answer === null ? null : t.message(answer)); };
  const first = firstOfJob(task, plan.day.tasks);
  const hands = plan.day.tasks.filter((o) => jobOf(o) === ref.key && o.attention > 0);
  const minutes = hands[0] === undefined ? 0 : hands[0].end - hands[0].start;
  const free = !hasOwnPlan(task);
  return (
    <div className={styles['controls']}>
      {own !== undefined && <TextField label={t('view.day.ownName')} value={own.name} onCommit={(name) => edit(changeOwnJob(event, own.id, { name }))} />}
      {free && <TimeField label={t('view.day.pinTo')} value={first.start} onCommit={(at) => lay({ at })} />}
      {task.kind !== 'rest' && (
        <Choice label={t('view.day.givenTo')} value={change?.who ?? anybody} onCommit={(who) => lay({ who: who === anybody ? undefined : who })}
          options={[{ value: anybody, text: t('view.day.whoeverFree') }, ...event.people.map((p) => ({ value: p.id, text: p.name }))]} />
      )}
      {free && own === undefined && minutes > 0 && <NumberField label={t('view.day.takes')} unit={t('view.day.minutes')} value={change?.minutes ?? Math.round(minutes)} min={1} max={1440} onClear={() => lay({ minutes: undefined })} onCommit={(n) => lay({ minutes: n })} />}
      {own !== undefined && (
        <>
          <NumberField label={t('view.day.takes')} unit={t('view.day.minutes')} value={own.minutes} min={1} max={1440} onCommit={(n) => edit(changeOwnJob(event, own.id, { minutes: n }))} />
          <TimeField label={t('view.day.ownFrom')} value={own.from ?? first.start} onCommit={(from) => edit(changeOwnJob(event, own.id, { from }))} />
          <TimeField label={t('view.day.ownTo')} value={own.to ?? first.end} onCommit={(to) => edit(changeOwnJob(event, own.id, { to }))} />
          <Choice label={t('view.day.ownNeeds')} value={own.needs[0]?.thing ?? ''} onCommit={(thing) => edit(changeOwnJob(event, own.id, { needs: thing === '' ? [] : [{ thing, count: 1 }] }))}
            options={[{ value: '', text: t('view.day.nothing') }, ...(['counter', 'burner', 'pot', 'oven'] as const).map((thing) => ({ value: thing, text: t(`sheets.thing.${thing}`) }))]} />
        </>
      )}
      {free && task.kind !== 'rest' && <Choice label={t('view.day.parts')} value={String(change?.parts ?? inOne)} onCommit={(n) => lay({ parts: n === inOne ? undefined : Number(n) })}
        options={[inOne, '2', '3', '4'].map((n) => ({ value: n, text: n === inOne ? t('view.day.inOne') : t('view.day.inParts', { n: Number(n) }) }))} />}
      <p className={styles['buttons']}>
        {change?.at !== undefined && <Button onPress={() => press(changeJob(event, ref, { at: undefined, held: undefined }))}>{t('view.day.letFree')}</Button>}
        {own === undefined && <Button onPress={() => { press(changeJob(event, ref, { off: true })); onGone(); }}>{t('view.day.switchOff')}</Button>}
        {own !== undefined && <Button onPress={() => { press(removeOwnJob(event, own.id)); onGone(); }}>{t('view.day.removeOwn')}</Button>}
      </p>
      {problem !== null && <p role="alert" className={styles['problem']}>{problem}</p>}
    </div>
  );
}
