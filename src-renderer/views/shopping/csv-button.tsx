import { useState } from 'react';
import { shoppingCsv } from '../../../shared/exchange';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { writeText } from '../../app/write-text';
import { Button } from '../../parts/button';
import styles from './shopping.module.css';

/** Writes the shopping list as a table other programs can read, and says where it went. */
export function CsvButton() {
  const t = useSpeaker();
  const { plan, event } = useDocument();
  const [written, setWritten] = useState<string | null>(null);
  const write = async (): Promise<void> => {
    const path = await writeText(`${event.title} ${t('view.shopping')}`, 'csv', () => Promise.resolve(shoppingCsv(plan, t.formats)));
    if (path !== null) setWritten(path);
  };
  return (
    <div>
      <Button onPress={() => void write()}>{t('view.shopping.csv')}</Button>
      <output className={written === null ? 'unseen' : styles['written']}>{written === null ? '' : t('view.shopping.saved', { path: written })}</output>
    </div>
  );
}
