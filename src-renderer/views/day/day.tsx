import { useState } from 'react';
import { mustNotSlip, namesOf } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { EmptyState } from '../../parts/empty-state';
import { FigureButton } from '../../parts/figure-button';
import { Fact, Facts, ViewPage, ViewSection } from '../../parts/view-page';
import { JobTable } from './job-table';
import { dayHours } from './lanes';
import { LanesPicture } from './lanes-picture';
import { troubles } from './trouble';
import styles from './day.module.css';

const everybody = 'all';

/** The view Day: everybody on the clock, who is how busy, what must not slip, what does not fit. */
export function Day() {
  const t = useSpeaker();
  const { plan, formats } = useDocument();
  const [person, setPerson] = useState(everybody);
  const [chosen, setChosen] = useState<string | null>(null);
  const names = namesOf(plan, formats);
  const { day, event } = plan;
  if (day.tasks.length === 0) return <ViewPage title={t('view.day')}><EmptyState title={t('view.day.emptyTitle')}>{t('view.day.empty')}</EmptyState></ViewPage>;
  const hours = dayHours(plan);
  const late = troubles(plan);
  const shown = event.people.some((p) => p.id === person) ? person : everybody;
  const critical = day.tasks.filter(mustNotSlip);
  const fried = day.tasks.some((task) => task.kind === 'fry' || task.kind === 'brew');
  return (
    <ViewPage title={t('view.day')}>
      {late.length > 0 && (
        <section className={styles['overloads']}>
          <h3>{t('view.day.overloads')}</h3>
          <ul>{late.map((o) => <li key={o.key}><strong>{t.message(o.title)}</strong>{o.sentences.length === 1 ? o.sentences.map((m) => <span key="why"> {t.message(m)}</span>) : <ul className={styles['jobs']}>{o.sentences.map((m, i) => <li key={i}>{t.message(m)}</li>)}</ul>}</li>)}</ul>
        </section>
      )}
      <Facts>
        {day.busy.map((b) => <Fact key={b.person} name={t('view.day.busyOf', { name: names.person(b.person) })}><FigureButton figure={b.minutes} title={t('view.day.busyOf', { name: names.person(b.person) })}>{formats.duration(b.minutes.value)}</FigureButton></Fact>)}
      </Facts>
      {hours !== null && (
        <ViewSection title={t('view.day.lanesOf', { day: formats.date(event.day) })} lead={t('view.day.keySlip')}>
          <LanesPicture plan={plan} from={hours.from} to={hours.to} chosen={chosen} onChoose={(task) => { setChosen(task); setPerson(everybody); }} />
        </ViewSection>
      )}
      {(critical.length > 0 || fried) && (
        <ViewSection title={t('view.day.critical')} lead={t('view.day.criticalLead')}>
          {fried && <p>{t('view.day.criticalFry')}</p>}
          <ul className={styles['critical']}>
            {critical.map((task) => <li key={task.id}><time>{formats.clock(task.start)}</time> {t.message(task.name)}, {formats.list(task.who.map(names.person))}</li>)}
          </ul>
        </ViewSection>
      )}
      <ViewSection title={t('view.day.listTitle')}>
        <div className={styles['choose']}><Choice label={t('view.day.show')} value={shown} onCommit={(value) => { setPerson(value); return null; }}
          options={[{ value: everybody, text: t('view.day.everybody') }, ...event.people.map((p) => ({ value: p.id, text: p.name }))]} /></div>
        <JobTable tasks={shown === everybody ? day.tasks : day.tasks.filter((task) => task.who.includes(shown))} names={names} chosen={chosen} />
      </ViewSection>
    </ViewPage>
  );
}
