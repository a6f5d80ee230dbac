import { useState } from 'react';
import { freshId } from '../../../../shared/edit';
import { stepSchema, type Step } from '../../../../shared/event';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import table from '../../../parts/table.module.css';
import type { PartProps } from './change';
import { useFollow } from './follow';
import { moved } from './moved';
import { StepRow } from './step-row';
import styles from './recipes.module.css';

/** The steps in a table; one opened shows what it needs and what it follows. */
export function StepTable({ recipe, change }: PartProps) {
  const t = useSpeaker();
  const [open, setOpen] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const list = recipe.steps;
  const put = (steps: Step[]) => {
    const problem = change({ steps });
    setRefused(problem === null ? null : t.message(problem));
    return problem;
  };
  const { box, onKeyDownCapture, go } = useFollow((at, by) => {
    const next = moved(list, at, by);
    return !next.every((step, i) => step === list[i]) && put(next) === null;
  });
  const add = (): void => {
    const last = list.at(-1);
    const id = freshId(list, 'step');
    if (put([...list, stepSchema.parse({ id, name: t('view.recipes.stepNew'), after: last === undefined ? [] : [last.id] })]) === null) setOpen(id);
  };
  return (
    <>
      {list.length === 0 ? <p className={styles['note']}>{t('view.recipes.noSteps')}</p> : (
        <div className={table['scroll']}>
          <table className={`${table['table']} ${styles['edit']}`}>
            <caption className="unseen">{t('view.recipes.steps')}</caption>
            <thead>
              <tr>
                <th scope="col">{t('view.recipes.step')}</th>
                <th scope="col">{t('view.recipes.active')}</th>
                <th scope="col">{t('view.recipes.passive')}</th>
                <th scope="col">{t('view.recipes.stepMore')}</th>
                <th scope="col">{t('view.recipes.more')}</th>
              </tr>
            </thead>
            <tbody ref={box} onKeyDownCapture={onKeyDownCapture}>
              {list.map((step, at) => <StepRow key={step.id} list={list} at={at} step={step} isOpen={open === step.id} onToggle={() => setOpen(open === step.id ? null : step.id)} put={put} go={go} />)}
            </tbody>
          </table>
        </div>
      )}
      {refused !== null && <p className={styles['problem']} role="alert">{refused}</p>}
      <div className={styles['finish']}><Button onPress={add}>{t('view.recipes.stepAdd')}</Button></div>
    </>
  );
}
