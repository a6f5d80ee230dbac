import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import styles from './guests.module.css';

/** Who is still here at closing time by the stays entered, and when the last leave; nothing when (nearly) all have gone. */
export function StayOn() {
  const t = useSpeaker();
  const { event, plan } = useDocument();
  const { fromMinute, expected } = plan.guests.presence;
  const people = Math.round(expected[event.closesAt - fromMinute] ?? 0);
  if (people < 1) return null;
  const last = fromMinute + expected.findLastIndex((n) => n >= 0.5);
  return <p className={styles['note']}>{t('view.guests.stayOn', { closes: event.closesAt, people, last })}</p>;
}
