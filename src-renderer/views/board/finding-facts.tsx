import type { Finding } from '../../../shared/safety';
import { useSpeaker } from '../../app/speak';
import styles from './look.module.css';

/** Units of what is measured; a count of dishes or guests, and a yes or no, are told by the sentence. */
const measuredUnits: ReadonlySet<string> = new Set(['degC', 'h', 'min', 'd', 'L', 'kg', 'cm', 'mm', 'm', 'W', 'pH', 'percent', 'share']);

/** What was measured, the limit, and where the limit comes from. Text, not buttons: the panel of a working takes the place of this list. */
export function FindingFacts({ finding }: { readonly finding: Finding }) {
  const t = useSpeaker();
  const words = ({ value, unit }: Finding['limit']): string => (unit === 'share' ? t.formats.percent(value) : unit === 'h' ? t.formats.duration(Math.round(value * 60)) : t.formats.figure(value, unit));
  const { measured, limit } = finding;
  const shown = measuredUnits.has(measured.unit);
  return (
    <div className={styles['facts']}>
      {shown && <p>{t('safety.measured')} {words(measured)}{t('safety.limit', { limit: words(limit) })}</p>}
      <p>{t('safety.source', { rule: finding.rule, source: finding.source })}</p>
    </div>
  );
}
