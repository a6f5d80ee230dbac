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

interface ListProps {
  readonly late: readonly Trouble[];
  readonly ways: readonly ClashRemedies[];
  readonly fresh: boolean;
}

function Ways({ late, ways, fresh }: ListProps) {
  const t = useSpeaker();
  const { event, edit, readOnly } = useDocument();
  const take = (way: Way): void => {
    edit(takeRemedy(event, way.remedy, { helper: t('timeline.remedy.helperName'), ring: t('timeline.remedy.ringName'), urn: t('timeline.remedy.urnName'), pot: t('timeline.remedy.potName') }));
  };
  const found = waysOf(late, ways);
  if (found.length === 0) return <p className={styles['looking']}>{t(fresh ? 'view.day.way.none' : 'view.day.way.looking')}</p>;
  return <ul className={styles['ways']} aria-label={t('view.day.way.list')}>{found.map((way) => <WayRow key={JSON.stringify(way.remedy.change)} way={way} usable={fresh} onTake={readOnly ? null : () => take(way)} />)}</ul>;
}

function Clash({ trouble, alone, ways, fresh }: Omit<ListProps, 'late'> & { readonly trouble: Trouble; readonly alone: boolean }) {
  const t = useSpeaker();
  const one = trouble.clashes.length === 1;
  // Of several troubles each names its clashing set when it is opened: the sets are long and much alike.
  const [first, ...set] = trouble.sentences;
  const told = one && !alone && first !== undefined ? [first] : trouble.sentences;
  const inside = told.length === trouble.sentences.length ? [] : set;
  return (
    <li>
      <strong>{t.message(trouble.title)}</strong>
      {one ? told.map((m, i) => <span key={i}> {t.message(m)}</span>) : <ul className={styles['jobs']}>{told.map((m, i) => <li key={i}>{t.message(m)}</li>)}</ul>}
      {!alone && <details className={styles['own']}><summary>{t(inside.length > 0 ? 'view.day.way.clashAndOwn' : 'view.day.way.own')}</summary>{inside.map((m, i) => <p key={i}>{t.message(m)}</p>)}<Ways late={[trouble]} ways={ways} fresh={fresh} /></details>}
    </li>
  );
}

/** Troubles shown at once; the rest are opened by a press. */
const shown = 4;

/**
 * What does not fit, in words, and the cheapest ways out, those that end most of it first: every one planned as a whole, taken by one press and
 * undone like any edit. Ways found last stay, out of use, while new ones are looked for (`fresh` false). Their place is kept free from the start,
 * so that nothing below moves when they come.
 */
export function LateList({ late, ways, fresh }: ListProps) {
  const t = useSpeaker();
  if (late.length === 0) return null;
  const clash = (trouble: Trouble) => <Clash key={trouble.key} trouble={trouble} alone={late.length === 1} ways={ways} fresh={fresh} />;
  return (
    <section className={styles['overloads']} aria-label={t('view.day.overloads')}>
      <h3>{t('view.day.overloads')}</h3>
      <ul className={styles['troubles']}>{late.slice(0, shown).map(clash)}</ul>
      {late.length > shown && <details className={styles['own']}><summary>{t('view.day.moreLate', { n: late.length - shown })}</summary><ul className={styles['troubles']}>{late.slice(shown).map(clash)}</ul></details>}
      <h4 className={styles['helps']}>{t(late.length === 1 ? 'view.day.way.list' : 'view.day.way.most')}</h4>
      <div className={styles['keptFree']}><Ways late={late} ways={ways} fresh={fresh} /></div>
    </section>
  );
}
