import { useState } from 'react';
import type { IngredientLine } from '../../../../shared/event';
import type { SettledLine } from '../../../../shared/exchange';
import { useSpeaker } from '../../../app/speak';
import table from '../../../parts/table.module.css';
import { AddLine } from './add-line';
import type { PartProps } from './change';
import { useFollow } from './follow';
import { IngredientRow } from './ingredient-row';
import { typedAnswer, type LineAnswer } from './line-answer';
import { moved } from './moved';
import { SettleRow } from './settle-row';
import styles from './recipes.module.css';

const full = (line: SettledLine): IngredientLine => ({ ...line, amount: { ...line.amount }, scaling: { kind: 'linear' }, perBowl: false, toTaste: line.toTaste ?? false });

/** The ingredients, to change where they stand; a new one is typed as a line and settled where it is not plain. */
export function IngredientTable({ recipe, change }: PartProps) {
  const t = useSpeaker();
  const [open, setOpen] = useState<readonly LineAnswer[]>([]);
  const [opened, setOpened] = useState<number | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const list = recipe.ingredients;
  const isFried = recipe.frying !== undefined || list.some((line) => line.perBowl);
  const put = (ingredients: IngredientLine[]) => {
    const problem = change({ ingredients });
    setRefused(problem === null ? null : t.message(problem));
    return problem;
  };
  const { box, onKeyDownCapture, go } = useFollow((at, by) => {
    const next = moved(list, at, by);
    if (next.every((line, i) => line === list[i]) || put(next) !== null) return false;
    setOpened((was) => (was === at ? at + by : was === at + by ? at : was));
    return true;
  });
  const take = (line: SettledLine): void => { put([...list, full(line)]); };
  return (
    <>
      <div className={table['scroll']}>
        <table className={`${table['table']} ${styles['edit']}`}>
          <caption className="unseen">{t('view.recipes.lines')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('view.recipes.amount')}</th>
              <th scope="col">{t('view.recipes.food')}</th>
              <th scope="col">{t('view.recipes.preparation')}</th>
              <th scope="col">{t('view.recipes.scaling')}</th>
              <th scope="col">{t('view.recipes.more')}</th>
            </tr>
          </thead>
          <tbody ref={box} onKeyDownCapture={onKeyDownCapture}>
            {/* Lines have no name of their own; their place is what they are known by. */}
            {list.map((line, at) => <IngredientRow key={`${at} ${line.ingredient}`} list={list} at={at} line={line} isFried={isFried} isOpen={opened === at} onToggle={() => setOpened(opened === at ? null : at)}
              put={(next) => { if (next.length < list.length) setOpened(null); return put(next); }} go={go} />)}
          </tbody>
        </table>
      </div>
      {refused !== null && <p className={styles['problem']} role="alert">{refused}</p>}
      <ol className={styles['lines']}>
        {open.map((answer, at) => (
          <SettleRow key={answer.proposal.line.text} answer={answer} onChange={(settled) => {
            setOpen(open.filter((_, i) => i !== at));
            if (settled !== null && settled !== 'leaveOut') take(settled);
          }} />
        ))}
      </ol>
      <AddLine onAdd={(text) => {
        const answer = typedAnswer(text);
        if (answer.settled === null || answer.settled === 'leaveOut') setOpen([...open.filter((one) => one.proposal.line.text !== text), answer]);
        else take(answer.settled);
      }} />
    </>
  );
}
