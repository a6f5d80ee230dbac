import { useEffect } from 'react';
import { I18nProvider } from 'react-aria-components/I18nProvider';
import { call } from '../bridge';
import { Problem } from '../parts/problem';
import { WorkingPanel } from '../parts/working-panel';
import { views } from '../views/registry';
import { ChangeStrip } from './change-strip';
import { useOpenDocument } from './document';
import { openPath } from './files';
import { keepAside } from './keeping';
import { hearHanded } from './handed';
import { useKeys } from './keys';
import { useNativeMenu } from './native-menu';
import { Panels } from './panels';
import { Rule } from './rule';
import { sessionStore, useSession } from './session';
import { useSpeaker } from './speak';
import { Start } from './start';
import { useTheme } from './theme';
import { ViewFault } from './view-fault';
import styles from './shell.module.css';

async function begin(): Promise<void> {
  const [info, settings, recents] = await Promise.all([call('app.info', {}), call('settings.get', {}), call('events.recent', {})]);
  sessionStore.set({
    info: info.ok ? info.value : null,
    settings: settings.ok ? settings.value : null,
    recents: recents.ok ? recents.value : [],
    problem: info.ok ? null : info.problem,
  });
  if (info.ok && info.value.openPath !== null) await openPath(info.value.openPath);
  void call('app.ready', {});
  if (info.ok && info.value.host === 'local') void hearHanded();
}

let begun = false;

/** The window: the left rule, the view, the working panel, the change strip. */
export function Shell() {
  useTheme();
  useKeys();
  useNativeMenu();
  useEffect(() => {
    if (!begun) void begin();
    begun = true;
    return keepAside();
  }, []);
  const open = useOpenDocument();
  const session = useSession();
  const t = useSpeaker();
  const title = open === null ? 'Brimful' : `${open.unsaved ? '• ' : ''}${open.event.title} · Brimful`;
  useEffect(() => { document.title = title; }, [title]);
  const view = views.find((v) => v.id === session.view) ?? views[0];
  const viewId = view?.id;
  const View = view?.component;

  return (
    <I18nProvider locale={open?.event.preferences.locale ?? 'en-GB'}>
      <Panels />
      {open === null ? (
        <Start />
      ) : (
        <div className={styles['frame']}>
          <Rule />
          <div className={styles['middle']}>
            {session.problem !== null && <Problem message={t.loose(session.problem.message)} mend={session.problem.mend} onClose={() => sessionStore.set({ problem: null })} />}
            {session.keepFault !== null && open.unsaved && <Problem message={t('host.keep-failed')} mend={`${t.loose(session.keepFault.message)} ${t('host.keep-failed.mend')}`} level="watch" />}
            {open.readOnly && <Problem message={t('shell.readOnly')} level="watch" />}
            <div className={styles['stage']}>
              <main className={styles['view']} aria-label={view === undefined ? '' : t(view.titleWord)} data-view={viewId}>
                {View !== undefined && <ViewFault key={viewId} of={open.event} title={t('shell.viewFault')}><View /></ViewFault>}
              </main>
              {viewId !== 'board' && <WorkingPanel />}
            </div>
            <ChangeStrip />
          </div>
        </div>
      )}
    </I18nProvider>
  );
}
