import type { Message } from '../../../shared/words';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import styles from './look.module.css';

interface Item {
  readonly key: string;
  readonly level: 'stop' | 'watch';
  readonly title: Message | null;
  readonly text: Message;
  readonly more: readonly Message[];
}

/** What needs a look: safety that is out of bounds, guests who would go without, jobs nobody can do in time. Nothing when all is well. */
export function Look() {
  const t = useSpeaker();
  const { plan } = useDocument();
  const items: Item[] = [
    ...plan.safety.findings.filter((f) => f.level !== 'caution').map((f): Item => ({ key: `${f.rule} ${f.about.join(' ')}`, level: f.level === 'stop' ? 'stop' : 'watch', title: f.title, text: f.message, more: [] })),
    ...plan.frying.shortages.map((s): Item => ({ key: `short ${s.dish} ${s.from}`, level: 'watch', title: null, text: { id: 'board.short', params: { dish: plan.menu.dishes.find((d) => d.id === s.dish)?.name ?? s.dish, from: s.from, to: s.to, n: Math.round(s.unmet) } }, more: s.remedies })),
    ...plan.day.overloads.map((o): Item => ({ key: `late ${o.task}`, level: 'watch', title: null, text: o.message, more: [] })),
    ...[...plan.frying.problems, ...plan.drinks.problems].map((problem, i): Item => ({ key: `problem ${i}`, level: 'watch', title: null, text: problem, more: [] })),
  ];
  const cautions = plan.safety.findings.filter((f) => f.level === 'caution');
  return (
    <section className={styles['look']} aria-labelledby="look-title">
      <h2 id="look-title">{t('board.needsALook')}</h2>
      {items.length === 0 && <p className={styles['clear']}>{t('board.allWell')}</p>}
      <ul>
        {items.map((item) => (
          <li key={item.key} className={styles[item.level]}>
            <p className={styles['title']}><span aria-hidden="true">{item.level === 'stop' ? '■' : '▲'}</span> <span className="unseen">{t(item.level === 'stop' ? 'board.stop' : 'board.watch')}: </span>{t.message(item.title ?? item.text)}</p>
            {item.title !== null && <p>{t.message(item.text)}</p>}
            {item.more.map((m, i) => <p key={i}>{t.message(m)}</p>)}
          </li>
        ))}
      </ul>
      {cautions.length > 0 && (
        <details className={styles['cautions']}>
          <summary>{t('board.cautions', { n: cautions.length })}</summary>
          <ul>{cautions.map((f) => <li key={`${f.rule} ${f.about.join(' ')}`}><p className={styles['title']}>{t.message(f.title)}</p><p>{t.message(f.message)}</p></li>)}</ul>
        </details>
      )}
    </section>
  );
}
