import { useState } from 'react';
import { dayCsv, dayText, planCalendar, readCalendar } from '../../../shared/exchange';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { calendarAt, writeText, type TextEnding } from '../../app/write-text';
import { Button } from '../../parts/button';
import { ViewSection } from '../../parts/view-page';
import styles from './day.module.css';

/** The day for other programs: a calendar, a table or a text, of everybody or of the helper who is shown. Says where it went. */
export function TakeAlong({ person }: { readonly person: string | null }) {
  const t = useSpeaker();
  const { plan, event } = useDocument();
  const [written, setWritten] = useState<string | null>(null);
  const who = event.people.find((p) => p.id === person)?.name ?? null;
  const only = person ?? undefined;
  // A calendar written over an older one counts its revisions on and cancels what is gone, so that it can be read in again.
  const calendar = async (path: string): Promise<string> => {
    const before = readCalendar((await calendarAt(path)) ?? '') ?? [];
    return planCalendar(plan, t.formats, { writtenAt: Math.floor(new Date().getTime() / 1000), before, ...(only === undefined ? {} : { person: only }) });
  };
  const write = async (ending: TextEnding, make: (path: string) => Promise<string>): Promise<void> => {
    const path = await writeText(`${event.title} ${who ?? t('view.day')}`, ending, make);
    if (path !== null) setWritten(path);
  };
  return (
    <ViewSection title={t('view.day.along')} lead={t('view.day.alongWhose', { who })}>
      <div className={styles['along']}>
        <Button onPress={() => void write('ics', calendar)}>{t('view.day.alongCalendar')}</Button>
        <Button onPress={() => void write('csv', () => Promise.resolve(dayCsv(plan, t.formats, only)))}>{t('view.day.alongTable')}</Button>
        <Button onPress={() => void write('txt', () => Promise.resolve(dayText(plan, t.formats, only)))}>{t('view.day.alongText')}</Button>
      </div>
      <output>{written === null ? '' : t('view.shopping.saved', { path: written })}</output>
    </ViewSection>
  );
}
