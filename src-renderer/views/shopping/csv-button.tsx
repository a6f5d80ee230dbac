import { useState } from 'react';
import { shoppingCsv } from '../../../shared/exchange';
import { call } from '../../bridge';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { sessionStore } from '../../app/session';
import { Button } from '../../parts/button';
import styles from './shopping.module.css';

/** Writes the shopping list as a table other programs can read, and says where it went. */
export function CsvButton() {
  const t = useSpeaker();
  const { plan, event } = useDocument();
  const [written, setWritten] = useState<string | null>(null);
  const write = async (): Promise<void> => {
    const place = await call('events.chooseSave', { name: `${event.title} ${t('view.shopping')}`, extension: 'csv' });
    if (!place.ok) { sessionStore.set({ problem: place.problem }); return; }
    if (place.value.path === null) return;
    const answer = await call('files.write', { path: place.value.path, text: shoppingCsv(plan, t.formats) });
    if (answer.ok) setWritten(answer.value.path);
    else sessionStore.set({ problem: answer.problem });
  };
  return (
    <div>
      <Button onPress={() => void write()}>{t('view.shopping.csv')}</Button>
      <output className={written === null ? 'unseen' : styles['written']}>{written === null ? '' : t('view.shopping.saved', { path: written })}</output>
    </div>
  );
}
