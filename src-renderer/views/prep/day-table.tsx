import { Fragment } from 'react';
import { amountText } from '../../../shared/measure';
import { allWho, boxCount, clockInDay, keptAmount, keptThings, rowWords, shiftDay, thingOfJob, type AheadJob, type KeptThing } from '../../../shared/sheets';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import table from '../../parts/table.module.css';
import type { PrepContext } from './context';
import { keepsUntil, type PrepDay } from './prep-days';
import styles from './prep.module.css';

/** From here on a date says more than a clock time. Minutes: two days. */
const datedFrom = 2880;

/** The jobs of one day, under the place their results are kept. */
export function DayTable({ day, title, context }: { readonly day: PrepDay; readonly title: string; readonly context: PrepContext }) {
  const t = useSpeaker();
  const things = keptThings(context.plan);
  return (
    <div className={table['scroll']}>
      <table className={`${table['table']} ${styles['jobs']}`}>
        <caption className="unseen">{title}</caption>
        <thead>
          <tr>
            <th scope="col">{t('view.prep.start')}</th>
            <th scope="col">{t('view.prep.job')}</th>
            <th scope="col" className={table['n']}>{t('view.prep.makes')}</th>
            <th scope="col">{t('view.prep.boxes')}</th>
            <th scope="col">{t('view.prep.keeps')}</th>
            <th scope="col">{t('view.prep.who')}</th>
          </tr>
        </thead>
        <tbody>
          {day.groups.map(({ place, jobs }) => (
            <Fragment key={place}>
              <tr className={styles['place']}><th scope="rowgroup" colSpan={6}>{t(`view.prep.place.${place}`)}</th></tr>
              {jobs.map((job) => <Job key={job.row.key} job={job} things={things} context={context} />)}
            </Fragment>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Job({ job, things, context }: { readonly job: AheadJob; readonly things: readonly KeptThing[]; readonly context: PrepContext }) {
  const t = useSpeaker();
  const { formats, plan } = context;
  const { row, task, dish } = job;
  const { title, lines } = rowWords(row, false, context);
  const until = keepsUntil(job);
  const name = t.message(task.name);
  const thing = thingOfJob(job, things);
  return (
    <tr data-job={row.key}>
      <td className={styles['start']}>{clockInDay(formats, row.start)}</td>
      <td>{title}{lines.map((line) => <p key={line} className={styles['line']}>{line}</p>)}</td>
      <td className={table['n']}>{thing?.foods != null ? keptAmount(thing, formats) : dish !== undefined && <FigureButton figure={dish.totalFigure} title={`${name}: ${t('view.prep.makes')}`}>{formats.amount(amountText(dish.total))}</FigureButton>}</td>
      <td className={styles['boxes']}>{thing !== null && <FigureButton figure={thing.boxes.count} title={`${name}: ${t('view.prep.boxes')}`}>{boxCount(thing, formats)}</FigureButton>}</td>
      <td className={styles['until']}>{until === null ? '' : (job.step?.keeps?.minutes ?? 0) < datedFrom ? formats.clock(until) : formats.date(shiftDay(plan.event.day, Math.floor(until / 1440)))}</td>
      <td className={table['note']}>{allWho(row.tasks, context)}</td>
    </tr>
  );
}
