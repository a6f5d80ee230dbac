import { bandIds, type Wave } from '../../../shared/event';
import { changeWave } from '../../../shared/edit';
import type { WavePlan } from '../../../shared/guests';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { TimeField } from '../../parts/time-field';
import styles from './guests.module.css';

/** Everything about one wave. */
export function WaveFieldSet({ wave, entry }: { readonly wave: WavePlan; readonly entry: Wave }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const change = (patch: Parameters<typeof changeWave>[2]) => edit(changeWave(event, wave.id, patch));
  const { turnout } = entry;
  const people = bandIds.reduce((sum, band) => sum + wave.counts[band], 0);
  const planned = bandIds.reduce((sum, band) => sum + wave.planned[band], 0);
  return (
    <>
      <TextField label={t('view.guests.name')} value={entry.name} onCommit={(name) => change({ name })} />
      <TimeField label={t('view.guests.first')} value={entry.from} onCommit={(from) => change({ from })} />
      <TimeField label={t('view.guests.last')} value={entry.to} onCommit={(to) => change({ to })} />
      <div className={styles['group']} role="group" aria-label={t('view.guests.stay')}>
        <span className={styles['groupName']}>{t('view.guests.stay')}</span>
        <NumberField label={t('view.guests.shortest')} value={entry.stay.shortest} min={1} max={2880} unit="min" step={5} onCommit={(shortest) => change({ stay: { shortest } })} />
        <NumberField label={t('view.guests.usual')} value={entry.stay.usual} min={1} max={2880} unit="min" step={5} onCommit={(usual) => change({ stay: { usual } })} />
        <NumberField label={t('view.guests.longest')} value={entry.stay.longest} min={1} max={2880} unit="min" step={5} onCommit={(longest) => change({ stay: { longest } })} />
      </div>
      <Choice label={t('view.guests.sure')} value={turnout.kind}
        options={[{ value: 'known', text: t('view.guests.known') }, { value: 'share', text: t('view.guests.share') }, { value: 'range', text: t('view.guests.range') }]}
        onCommit={(kind) => change({ turnout: kind === 'known' ? { kind } : kind === 'share' ? { kind, share: 0.9 } : { kind, low: Math.floor(people * 0.7), likely: people, high: Math.ceil(people * 1.2) } })} />
      {turnout.kind === 'share' && <NumberField label={t('view.guests.shareOf')} unit="%" value={turnout.share * 100} min={0} max={100} decimals={1} onCommit={(share) => change({ turnout: { kind: 'share', share: share / 100 } })} />}
      {turnout.kind === 'range' && (
        <>
          <NumberField label={t('view.guests.low')} value={turnout.low} min={0} max={100000} onCommit={(low) => change({ turnout: { ...turnout, low } })} />
          <NumberField label={t('view.guests.likely')} value={turnout.likely} min={0} max={100000} onCommit={(likely) => change({ turnout: { ...turnout, likely } })} />
          <NumberField label={t('view.guests.high')} value={turnout.high} min={0} max={100000} onCommit={(high) => change({ turnout: { ...turnout, high } })} />
        </>
      )}
      <div className={styles['bands']}>
        {bandIds.map((band) => <NumberField key={band} label={t(`band.${band}`)} value={wave.counts[band]} min={0} max={20000} onCommit={(n) => change({ counts: { [band]: n } })} />)}
        {Math.abs(planned - people) > 0.05 && <span className={styles['planned']}>{t('view.guests.wavePlanned', { n: planned })}</span>}
      </div>
    </>
  );
}
