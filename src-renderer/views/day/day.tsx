import { useRef, useState } from 'react';
import { mustNotSlip, namesOf } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { EmptyState } from '../../parts/empty-state';
import { FigureButton } from '../../parts/figure-button';
import { Problem } from '../../parts/problem';
import { Fact, Facts, ViewPage, ViewSection } from '../../parts/view-page';
import { BetterDay } from './better-day';
import { BusyCurves } from './busy-curves';
import { JobPanel } from './job-panel';
import { JobTable } from './job-table';
import { LateList } from './late-list';
import { dayHours, lanesOf } from './lanes';
import { LanesPicture, laneAtHeight } from './lanes-picture';
import { DayActions, OffJobs } from './own-jobs';
import { StalePages } from './stale-pages';
import { TakeAlong } from './take-along';
import { thingLanesOf } from './thing-lanes';
import { troubles, type Trouble } from './trouble';
import { useDaySearch } from './use-day-search';
import { useJobMoves } from './use-job-moves';
import styles from './day.module.css';

const everybody = 'all';

/** The view Day: everybody or every thing on the clock, jobs to be moved and given, who is how busy, what must not slip, what does not fit. */
export function Day() {
  const t = useSpeaker();
  const { plan, formats } = useDocument();
  const [person, setPerson] = useState(everybody);
  const [by, setBy] = useState<'people' | 'things'>('people');
  const [chosen, setChosen] = useState<string | null>(null);
  const box = useRef<HTMLDivElement>(null);
  const moves = useJobMoves((clientY) => laneAtHeight(box.current, clientY));
  const lateNow = troubles(plan);
  const search = useDaySearch(plan.event, moves.dragging !== null);
  // While a job is dragged the list above the picture stands still, so that the picture does not move under the hand.
  const [standing, setStanding] = useState<readonly Trouble[] | null>(null);
  if (moves.dragging !== null && standing === null) setStanding(lateNow);
  if (moves.dragging === null && standing !== null) setStanding(null);
  const names = namesOf(plan, formats);
  const { day, event } = plan;
  if (day.tasks.length === 0) {
    return (
      <ViewPage title={t('view.day')}>
        <EmptyState title={t('view.day.emptyTitle')}>{t('view.day.empty')}</EmptyState>
        <DayActions onAdded={setChosen} /><OffJobs />
      </ViewPage>
    );
  }
  const hours = dayHours(plan);
  const shown = event.people.some((p) => p.id === person) ? person : everybody;
  const only = shown === everybody ? null : shown;
  const critical = day.tasks.filter(mustNotSlip);
  const fried = day.tasks.some((task) => task.kind === 'fry' || task.kind === 'brew');
  const task = day.tasks.find((x) => x.id === chosen) ?? day.tasks.find((x) => x.job === chosen);
  const lanes = hours === null ? [] : by === 'things'
    ? thingLanesOf(plan, hours.from, hours.to, (kind, n, of) => (of === 1 ? t(`view.day.thing.${kind}`) : t(`view.day.thing.${kind}Of`, { n })))
    : lanesOf(plan, hours.from, hours.to, { itself: t('view.day.byItself'), nobody: t('view.day.nobody') }, only);
  return (
    <ViewPage title={t('view.day')} actions={<DayActions onAdded={setChosen} />}>
      <LateList late={standing ?? lateNow} ways={search.ways} fresh={search.fresh && standing === null} />
      <StalePages />
      <OffJobs />
      {day.notes.length > 0 && <ul className={styles['notes']}>{day.notes.map((m, i) => <li key={i}>{t.message(m)}</li>)}</ul>}
      {hours !== null && (
        <ViewSection title={t('view.day.lanesOf', { day: formats.date(event.day) })}>
          <div className={styles['choices']}>
            <Choice label={t('view.day.show')} value={shown} onCommit={(value) => { setPerson(value); setBy('people'); return null; }}
              options={[{ value: everybody, text: t('view.day.everybody') }, ...event.people.map((p) => ({ value: p.id, text: p.name }))]} />
            <Choice label={t('view.day.lanesBy')} value={by} onCommit={(value) => { setBy(value); setPerson(everybody); return null; }}
              options={[{ value: 'people', text: t('view.day.byPeople') }, { value: 'things', text: t('view.day.byThings') }]} />
          </div>
          <BetterDay search={search} />
          <p id="day-keys" className={styles['note']}>{t('view.day.keys')}</p>
          <div ref={box}><LanesPicture lanes={lanes} from={hours.from} to={hours.to} chosen={chosen} onChoose={setChosen} moves={moves} /></div>
          {moves.problem !== null && <Problem level="watch" message={t.message(moves.problem)} />}
          <p className={styles['note']}>{t('view.day.keySlip')}</p>
          {task !== undefined && <JobPanel task={task} names={names} onChoose={setChosen} />}
          <BusyCurves plan={plan} from={hours.from} to={hours.to} person={only} gutter={by === 'things' ? 168 : 112} />
          <p className={styles['note']}>{t('view.day.curveKey')}</p>
        </ViewSection>
      )}
      {hours === null && task !== undefined && <JobPanel task={task} names={names} onChoose={setChosen} />}
      <Facts>
        {day.busy.map((b) => <Fact key={b.person} name={t('view.day.busyOf', { name: names.person(b.person) })}><FigureButton figure={b.minutes} title={t('view.day.busyOf', { name: names.person(b.person) })}>{formats.duration(b.minutes.value)}</FigureButton></Fact>)}
      </Facts>
      {(critical.length > 0 || fried) && (
        <ViewSection title={t('view.day.critical')} lead={t('view.day.criticalLead')}>
          {fried && <p>{t('view.day.criticalFry')}</p>}
          <ul className={styles['critical']}>
            {critical.map((x) => <li key={x.id}><time>{formats.clock(x.start)}</time> {t.message(x.name)}, {formats.list(x.who.map(names.person))}</li>)}
          </ul>
        </ViewSection>
      )}
      <ViewSection title={t('view.day.listTitle')}>
        <JobTable tasks={only === null ? day.tasks : day.tasks.filter((x) => x.who.includes(only))} names={names} chosen={task?.id ?? null} />
      </ViewSection>
      <TakeAlong person={only} />
    </ViewPage>
  );
}
