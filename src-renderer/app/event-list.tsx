import { useEffect, useState } from 'react';
import type { CallOutput, FileRef } from '../../shared/host';
import { call } from '../bridge';
import { Button } from '../parts/button';
import { useOpenDocument } from './document';
import { chooseOpen, leaving, openDemo, openKept, openPath } from './files';
import { OpenOwnFile } from './open-own-file';
import { sessionStore, useSession } from './session';
import { useSpeaker, type Speaker } from './speak';
import styles from './event-list.module.css';

interface Lists {
  readonly demos: CallOutput<'events.demos'>;
  readonly kept: CallOutput<'recovery.list'>;
  readonly folder: CallOutput<'events.folder'> | null;
  readonly recents: readonly FileRef[];
}

async function load(): Promise<Lists> {
  const [demos, kept, folder, recents] = await Promise.all([call('events.demos', {}), call('recovery.list', {}), call('events.folder', {}), call('events.recent', {})]);
  return {
    demos: demos.ok ? demos.value : [],
    kept: kept.ok ? kept.value : [],
    folder: folder.ok ? folder.value : null,
    recents: recents.ok ? recents.value : [],
  };
}

const two = (n: number): string => String(n).padStart(2, '0');

/** A moment of this computer's clock, in the cook's way of writing days and times. */
function moment(at: number, formats: Speaker['formats']): { readonly day: string; readonly time: string } {
  const local = new Date(at);
  const day = `${local.getFullYear()}-${two(local.getMonth() + 1)}-${two(local.getDate())}`;
  return { day: formats.date(day), time: formats.clock(local.getHours() * 60 + local.getMinutes()) };
}

/** Every event within reach: work kept aside, recent files, files of the events folder, the demo events. */
export function EventList() {
  const t = useSpeaker();
  const { info } = useSession();
  const openId = useOpenDocument()?.openId;
  const [lists, setLists] = useState<Lists | null>(null);
  useEffect(() => { void load().then(setLists); }, []);
  if (lists === null) return <p role="status">{t('panel.loading')}</p>;
  // The open document's own copy is no second one.
  const kept = lists.kept.filter((copy) => copy.id !== openId);
  const recentPaths = new Set(lists.recents.map((r) => r.path));
  const others = lists.folder?.files.filter((f) => !recentPaths.has(f.path)) ?? [];
  return (
    <div className={styles['lists']}>
      {kept.length > 0 && (
        <section>
          <h2>{t('panel.kept')}</h2>
          <ul>{kept.map((k) => (
            <li key={k.id}>
              <button type="button" className={styles['row']} onClick={() => leaving(() => void openKept(k.id))}><span>{k.title}</span><span className={styles['note']}>{t('panel.keptFrom', { at: t('host.moment', moment(k.at, t.formats)) })}</span></button>
              <button type="button" className={styles['forget']} aria-label={t('panel.discardKept', { title: k.title })} onClick={() => void call('recovery.discard', { id: k.id }).then(load).then(setLists)}>×</button>
            </li>
          ))}</ul>
        </section>
      )}
      {lists.recents.length > 0 && <Files title={t('panel.recent')} files={lists.recents} onForget={(path) => void call('events.forget', { path }).then(load).then((next) => { setLists(next); sessionStore.set({ recents: next.recents }); })} />}
      {others.length > 0 && <Files title={t('panel.folder', { folder: lists.folder?.folder ?? '' })} files={others} />}
      {info !== null && !info.dialogs && <OpenOwnFile folder={lists.folder?.folder ?? info.folder} />}
      {info?.dialogs === true && <Button onPress={() => leaving(() => void chooseOpen())}>{t('panel.openOther')}</Button>}
      {lists.demos.length > 0 && (
        <section>
          <h2>{t('panel.demos')}</h2>
          <ul>{lists.demos.map((d) => (
            <li key={d.id}><button type="button" className={styles['row']} data-demo={d.id} onClick={() => leaving(() => void openDemo(d.id))}><span>{d.title}</span><span className={styles['note']}>{t.loose(`demo.${d.id}`) === `demo.${d.id}` ? '' : t.loose(`demo.${d.id}`)}</span></button></li>
          ))}</ul>
        </section>
      )}
    </div>
  );
}

function Files({ title, files, onForget }: { readonly title: string; readonly files: readonly FileRef[]; readonly onForget?: (path: string) => void }) {
  const t = useSpeaker();
  return (
    <section>
      <h2>{title}</h2>
      <ul>{files.map((f) => (
        <li key={f.path}>
          <button type="button" className={styles['row']} disabled={!f.exists} onClick={() => leaving(() => void openPath(f.path))}>
            <span>{f.title}</span><span className={styles['note']}>{f.exists ? (f.day === '' ? '' : t.formats.date(f.day)) : t('panel.gone', { day: f.day === '' ? '' : t.formats.date(f.day) })}</span>
          </button>
          {onForget !== undefined && <button type="button" className={styles['forget']} aria-label={t('panel.forget', { title: f.title })} onClick={() => onForget(f.path)}>×</button>}
        </li>
      ))}</ul>
    </section>
  );
}
