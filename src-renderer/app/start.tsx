import { Button } from '../parts/button';
import { Problem } from '../parts/problem';
import { EventList } from './event-list';
import { startNew } from './files';
import { sessionStore, useSession } from './session';
import { useSpeaker } from './speak';
import styles from './start.module.css';

/** The page while no event is open: begin one, go on with one, or look at a demo. */
export function Start() {
  const t = useSpeaker();
  const { problem, info, busy } = useSession();
  return (
    <main className={styles['start']} data-view="start">
      {problem !== null && <Problem message={t.loose(problem.message)} mend={problem.mend} onClose={() => sessionStore.set({ problem: null })} />}
      <div className={styles['column']}>
        <h1 className={styles['name']}>Brimful</h1>
        <p className={styles['line']}>{t('start.line')}</p>
        <Button kind="primary" onPress={startNew}>{t('panel.new')}</Button>
        {info === null && problem === null ? <p role="status">{t('panel.loading')}</p> : <EventList />}
        <p role="status" className={styles['busy']}>{busy ? t('panel.loading') : ''}</p>
        <p className={styles['safety']}>{t('start.safety')}</p>
      </div>
    </main>
  );
}
