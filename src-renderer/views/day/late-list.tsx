import { takeRemedy } from '../../../shared/edit';
import type { ClashRemedies } from '../../../shared/timeline';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import type { Trouble } from './trouble';
import { waysOf, type Way } from './ways';
import styles from './day.module.css';

function WayRow({ way, usable, onTake }: { readonly way: Way; readonly usable: boolean; readonly onTake: (() => void) | null }) {
  const t = useSpeaker();
  const { remedy: { message, cost }, ends, of, elsewhere } = way;
  const said = t.message(message);
  return (
    <li className={styles['way']}>
      <span><strong>{said}</strong> <span className={styles['effect']}>{t('view.day.way.effect', { ends, of, elsewhere, others: cost.otherJobs })}</span></span>
      {onTake !== null && <Button onPress={onTake} isDisabled={!usable} label={t('view.day.way.takeIt', { way: message })}>{t('view.day.way.take')}</Button>}
    </li>
  );
}

/** What does not fit, each with the cheapest ways out: every one planned as a whole, taken by one press and undone like any edit. Those found last stay, out of use, while new ones are looked for (`fresh` false). */
export function LateList({ late, ways, fresh }: { readonly late: readonly Trouble[]; readonly ways: readonly ClashRemedies[]; readonly fresh: boolean }) {
  const t = useSpeaker();
  const { event, edit, readOnly } = useDocument();
  if (late.length === 0) return null;
  const take = (way: Way): void => {
    edit(takeRemedy(event, way.remedy, { helper: t('timeline.remedy.helperName'), ring: t('timeline.remedy.ringName'), urn: t('timeline.remedy.urnName'), pot: t('timeline.remedy.potName') }));
  };
  return (
    <section className={styles['overloads']} aria-label={t('view.day.overloads')}>
      <h3>{t('view.day.overloads')}</h3>
      <ul className={styles['troubles']}>
        {late.map((o) => {
          const found = waysOf(o, ways);
          return (
            <li key={o.key}>
              <strong>{t.message(o.title)}</strong>
              {o.sentences.length === 1 ? o.sentences.map((m) => <span key="why"> {t.message(m)}</span>) : <ul className={styles['jobs']}>{o.sentences.map((m, i) => <li key={i}>{t.message(m)}</li>)}</ul>}
              {found.length === 0
                ? <p className={styles['looking']}>{t(fresh ? 'view.day.way.none' : 'view.day.way.looking')}</p>
                : <ul className={styles['ways']} aria-label={t('view.day.way.list')}>{found.map((way) => <WayRow key={JSON.stringify(way.remedy.change)} way={way} usable={fresh} onTake={readOnly ? null : () => take(way)} />)}</ul>}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
