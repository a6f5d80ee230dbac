import { setPreference } from '../../shared/edit';
import { Choice } from '../parts/choice';
import { useDocument } from './document';

import { changeSettings, useSession } from './session';
import { useSpeaker } from './speak';
import styles from './panels.module.css';

/** How this event is written and how this window looks. */
export function Preferences() {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const { settings } = useSession();
  const { units, clock, paper } = event.preferences;
  return (
    <div className={styles['form']}>
      <Choice label={t('pref.units')} value={units} options={[{ value: 'metric', text: t('pref.metric') }, { value: 'us', text: t('pref.us') }]} onCommit={(next) => edit(setPreference(event, { units: next }))} />
      <Choice label={t('pref.clock')} value={clock} options={[{ value: '24', text: t('pref.clock24') }, { value: '12', text: t('pref.clock12') }]} onCommit={(next) => edit(setPreference(event, { clock: next }))} />
      <Choice label={t('pref.paper')} value={paper} options={[{ value: 'a4', text: 'A4' }, { value: 'letter', text: 'Letter' }]} onCommit={(next) => edit(setPreference(event, { paper: next }))} />
      <Choice label={t('pref.cover')} value={String(Math.round(event.preferences.cover * 100))}
        options={[50, 60, 70, 80, 90, 95].map((n) => ({ value: String(n), text: t('pref.coverOf', { n: n / 10 }) }))}
        onCommit={(next) => edit(setPreference(event, { cover: Number(next) / 100 }))} />
      <Choice label={t('pref.theme')} value={settings?.theme ?? 'system'} options={[{ value: 'system', text: t('pref.themeSystem') }, { value: 'day', text: t('pref.themeDay') }, { value: 'night', text: t('pref.themeNight') }]}
        onCommit={(next) => { void changeSettings({ theme: next }); return null; }} />
    </div>
  );
}
