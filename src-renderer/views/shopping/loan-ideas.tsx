import { useMemo } from 'react';
import { addBorrowed, changeBorrowed, waveLoan } from '../../../shared/edit';
import { shoppingOf } from '../../../shared/event';
import { loanId, loanIdeas, type LoanIdea } from '../../../shared/plan';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { FigureButton } from '../../parts/figure-button';
import styles from './shopping.module.css';

function Idea({ idea }: { readonly idea: LoanIdea }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const name = t.message(idea.name);
  const id = loanId(idea);
  const take = () => edit(shoppingOf(event).borrowed.some((b) => b.id === id) ? changeBorrowed(event, id, { count: idea.count }) : addBorrowed(event, { id, name, count: idea.count }));
  return (
    <li className={styles['idea']}>
      <span><strong>{t('buying.lent.line', { count: idea.count, name, from: '' })}</strong><span className={styles['for']}>{t.message(idea.why)} {idea.figure !== undefined && <FigureButton figure={idea.figure} title={name} />}</span></span>
      <Button label={t('loan.takeOf', { name })} onPress={() => { take(); }}>{t('loan.take')}</Button>
      <Button kind="link" label={t('loan.waveOf', { name })} onPress={() => { edit(waveLoan(event, { id: idea.id, name })); }}>{t('loan.wave')}</Button>
    </li>
  );
}

/** What the plan would have her borrow, each with why: taken with one press, or waved away. */
export function LoanIdeas() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const ideas = useMemo(() => loanIdeas(plan), [plan]);
  const waved = shoppingOf(event).noLoans?.length ?? 0;
  if (ideas.length === 0 && waved === 0) return null;
  return (
    <div className={styles['ideas']}>
      {ideas.length > 0 && <h3>{t('loan.title')}</h3>}
      <ul>{ideas.map((idea) => <Idea key={idea.id} idea={idea} />)}</ul>
      {waved > 0 && <Button kind="link" onPress={() => { edit(waveLoan(event, null)); }}>{t('loan.back', { n: waved })}</Button>}
    </div>
  );
}
