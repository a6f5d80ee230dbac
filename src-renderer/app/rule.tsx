import { views } from '../views/registry';
import { viewGroups } from '../views/view';
import { useDocument } from './document';
import { save } from './files';
import { sessionStore, useSession } from './session';
import { useSpeaker } from './speak';
import styles from './rule.module.css';

/** The left rule: which event, the questions in the order a cook asks them, and what is done with the file. */
export function Rule() {
  const t = useSpeaker();
  const { event, file, unsaved, undoName, redoName, undo, redo } = useDocument();
  const { view } = useSession();
  return (
    <div className={styles['rule']}>
      <header className={styles['event']}>
        <h1 className={styles['title']}>{event.title}</h1>
        <p>{t.formats.date(event.day)}</p>
        <p>{t('shell.hours', { from: event.opensAt, to: event.closesAt })}</p>
      </header>
      <nav className={styles['views']} aria-label={t('shell.views')}>
        {viewGroups.filter((g) => views.some((v) => v.group === g)).map((group) => (
          <section key={group} aria-labelledby={`group-${group}`}>
            <h2 id={`group-${group}`}>{t(`group.${group}`)}</h2>
            <ul>
              {views.filter((v) => v.group === group).map((v) => (
                <li key={v.id}>
                  <button type="button" aria-current={v.id === view ? 'page' : undefined} aria-keyshortcuts={views.indexOf(v) < 10 ? `Alt+${(views.indexOf(v) + 1) % 10}` : undefined} onClick={() => sessionStore.show(v.id)}>{t(v.titleWord)}</button>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </nav>
      <footer className={styles['foot']}>
        <p className={styles['saved']} role="status">{t(unsaved ? 'shell.unsaved' : file.path === null ? 'shell.unplaced' : 'shell.saved')}</p>
        <div className={styles['pair']}>
          <button type="button" disabled={undoName === null} onClick={undo} title={undoName === null ? undefined : t('shell.undoStep', { name: t.message(undoName) })} aria-keyshortcuts="Control+Z">{t('shell.undo')}</button>
          <button type="button" disabled={redoName === null} onClick={redo} title={redoName === null ? undefined : t('shell.redoStep', { name: t.message(redoName) })} aria-keyshortcuts="Control+Shift+Z">{t('shell.redo')}</button>
        </div>
        <div className={styles['pair']}>
          <button type="button" onClick={() => void save()} aria-keyshortcuts="Control+S">{t('shell.save')}</button>
          <button type="button" onClick={() => sessionStore.set({ panel: { kind: 'file' } })} aria-keyshortcuts="Control+O" aria-haspopup="dialog">{t('shell.event')}</button>
        </div>
      </footer>
    </div>
  );
}
