import { useState } from 'react';
import { isHouseholdDay, madeAhead, namesOf, shiftDay } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { CookingNotes } from '../../parts/cooking-notes';
import { EmptyState } from '../../parts/empty-state';
import { ViewPage, ViewSection } from '../../parts/view-page';
import { Amounts } from './amounts';
import { Boxes } from './boxes';
import { DayTable } from './day-table';
import { jobsOf, prepDays } from './prep-days';
import styles from './prep.module.css';

const everybody = 'all';

/** The view Prep: everything done ahead, by day and by where the result is kept; then what to weigh and cut for it. */
export function Prep() {
  const t = useSpeaker();
  const { plan, formats } = useDocument();
  const [person, setPerson] = useState(everybody);
  const all = madeAhead(plan);
  if (all.length === 0) return <ViewPage title={t('view.prep')}><EmptyState title={t('view.prep.emptyTitle')}>{t('view.prep.empty')}</EmptyState></ViewPage>;
  const { people, day } = plan.event;
  const shown = people.some((p) => p.id === person) ? person : everybody;
  const jobs = shown === everybody ? all : jobsOf(all, shown);
  const context = { plan, formats, names: namesOf(plan, formats) };
  const dishes = plan.menu.dishes.filter((dish) => jobs.some((job) => job.dish?.id === dish.id));
  return (
    <ViewPage title={t('view.prep')} lead={t(isHouseholdDay(plan) ? 'view.prep.leadHousehold' : 'view.prep.lead', { n: jobs.length })}
      actions={<Choice label={t('view.prep.show')} value={shown} onCommit={(value) => { setPerson(value); return null; }}
        options={[{ value: everybody, text: t('view.prep.everybody') }, ...people.map((p) => ({ value: p.id, text: p.name }))]} />}>
      <Boxes />
      {plan.cooking.notes.length > 0 && <ViewSection title={t('cooking.title')} lead={t('cooking.lead')}><CookingNotes notes={plan.cooking.notes} /></ViewSection>}
      {prepDays(jobs).map((one) => (
        <ViewSection key={one.day} title={formats.date(shiftDay(day, one.day))}><DayTable day={one} title={formats.date(shiftDay(day, one.day))} context={context} /></ViewSection>
      ))}
      <ViewSection title={t('view.prep.amounts')} lead={t('view.prep.amountsLead')}>
        <div className={styles['dishes']}>{dishes.map((dish) => <Amounts key={dish.id} dish={dish} context={context} />)}</div>
      </ViewSection>
    </ViewPage>
  );
}
