import { useRef } from 'react';
import { Button } from '../parts/button';
import { leaving, openOwnFile } from './files';
import { useSpeaker } from './speak';
import styles from './event-list.module.css';

/** Opens an event file from anywhere on this computer, where the host has no window of its own for it; says which folder is the events folder. */
export function OpenOwnFile({ folder }: { readonly folder: string }) {
  const t = useSpeaker();
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className={styles['own']}>
      <Button onPress={() => input.current?.click()}>{t('panel.openFile')}</Button>
      <input
        ref={input} type="file" accept=".brimful" className="unseen" tabIndex={-1} aria-label={t('panel.openFile')} data-own-file
        onChange={(e) => {
          const file = e.currentTarget.files?.[0];
          // The same file may be chosen again.
          e.currentTarget.value = '';
          if (file !== undefined) leaving(() => void openOwnFile(file));
        }}
      />
      <p className={styles['note']}>{t('panel.folderIs', { folder })}</p>
    </div>
  );
}
