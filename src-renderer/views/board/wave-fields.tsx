import { changeWave } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { NumberField } from '../../parts/number-field';
import { TimeField } from '../../parts/time-field';
import { changePeople } from '../guests/people';
import styles from './wave-fields.module.css';

/** The same waves as numbers: when the first and last arrive, how many. */
export function WaveFields() {
  const t = useSpeaker();
  const { plan, event, edit } = useDocument();
  if (plan.guests.waves.length === 0) return null;
  return (
    <details className={styles['fields']}>
      <summary>{t('board.waves')}</summary>
      <ul>
        {plan.guests.waves.map((wave) => (
          <li key={wave.id}>
            <div role="group" aria-label={wave.name} className={styles['wave']}>
            <h3>{wave.name}</h3>
            <TimeField label={t('board.firstArrive')} value={wave.from} onCommit={(from) => edit(changeWave(event, wave.id, { from }))} />
            <TimeField label={t('board.lastArrive')} value={wave.to} onCommit={(to) => edit(changeWave(event, wave.id, { to }))} />
            <NumberField label={t('board.adults')} value={wave.adults} min={0} max={20000} onCommit={(n) => edit(changePeople(event, wave, 'adults', n))} />
            <NumberField label={t('board.children')} value={wave.children} min={0} max={20000} onCommit={(n) => edit(changePeople(event, wave, 'children', n))} />
            </div>
          </li>
        ))}
      </ul>
    </details>
  );
}
