import { useState } from 'react';
import { tidyLine } from '../../../../shared/exchange';
import { ingredientName } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { amountEntry } from './amount-field';
import { FoodChoice } from './food-choice';
import { ownFood, ownName, settle, startAmount, startFood, type Filled, type LineAnswer } from './line-answer';
import { PlainField } from './plain-field';
import styles from './recipes.module.css';

interface SettleRowProps {
  readonly answer: LineAnswer;
  readonly onChange: (settled: LineAnswer['settled']) => void;
}

/** A line the cook has to look at: as it was written, what is open, and the fields to settle it. */
function OpenLine({ answer, onChange }: SettleRowProps) {
  const t = useSpeaker();
  const { proposal } = answer;
  const { line, open } = proposal;
  const [filled, setFilled] = useState<Filled>({ food: startFood(proposal), amount: startAmount(proposal, (amount) => amountEntry(t, amount)), preparation: line.preparation ?? '', toTaste: line.toTaste });
  const [asked, setAsked] = useState(false);
  const result = settle({ ...filled, ...(filled.food === ownFood(proposal) ? { called: ownName(proposal) } : {}) });
  const problem = asked && 'problem' in result ? result : null;
  const text = tidyLine(line.text);
  const take = (): void => {
    setAsked(true);
    if (!('problem' in result)) onChange(result);
  };
  return (
    <fieldset className={styles['open']}>
      <legend className={styles['written']}>{text}</legend>
      {open.length > 0 && <p className={styles['what']}>{t('view.recipes.lineOpen', { what: t.formats.list(open.map((one) => t(`view.recipes.open.${one}`))) })}.</p>}
      <div className={styles['fields']}>
        <PlainField label={t('view.recipes.amount')} value={filled.amount} most={60} error={problem?.field === 'amount' ? t.message(problem.problem) : null} onEnter={take}
          onChange={(amount) => setFilled((had) => ({ ...had, amount }))} />
        <FoodChoice label={t('view.recipes.food')} value={filled.food} likely={proposal.foods.map((food) => food.id)} own={{ id: ownFood(proposal), name: ownName(proposal) }} problem={problem?.field === 'food' ? t.message(problem.problem) : null}
          onCommit={(food) => setFilled((had) => ({ ...had, food }))} />
        <PlainField label={t('view.recipes.preparation')} value={filled.preparation} most={200} onEnter={take} onChange={(preparation) => setFilled((had) => ({ ...had, preparation }))} />
        <div className={styles['pair']}>
          <Button label={t('view.recipes.takeOf', { text })} onPress={take}>{t('view.recipes.take')}</Button>
          <Button kind="link" label={t('view.recipes.leaveOutOf', { text })} onPress={() => onChange('leaveOut')}>{t('view.recipes.leaveOut')}</Button>
        </div>
      </div>
    </fieldset>
  );
}

/** One line of a recipe being taken in: settled, left out, or open. */
export function SettleRow({ answer, onChange }: SettleRowProps) {
  const t = useSpeaker();
  const { settled, proposal } = answer;
  const text = tidyLine(proposal.line.text);
  if (settled === null) return <li><OpenLine answer={answer} onChange={onChange} /></li>;
  const back = <Button kind="link" label={t('view.recipes.changeOf', { text })} onPress={() => onChange(null)}>{t('view.recipes.change')}</Button>;
  if (settled === 'leaveOut') return <li className={styles['settled']}><s>{text}</s><span className={styles['note']}>{t('view.recipes.leftOut')}</span>{back}</li>;
  return (
    <li className={styles['settled']}>
      <span><strong>{t.formats.amount(settled.amount)}</strong> {settled.called ?? ingredientName(settled.ingredient)}{settled.preparation === undefined ? '' : `, ${settled.preparation}`}{settled.toTaste === true ? `, ${t('view.recipes.toTaste')}` : ''}</span>
      <span className={styles['note']}>{text}</span>
      {back}
    </li>
  );
}
