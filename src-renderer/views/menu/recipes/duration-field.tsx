import { useState } from 'react';
import type { Message } from '../../../../shared/words';
import { useSpeaker } from '../../../app/speak';
import { NumberField } from '../../../parts/number-field';
import fields from '../../../parts/fields.module.css';
import { minutesIn, naturalSpan, spans, type Span } from './span';
import styles from './recipes.module.css';

interface DurationFieldProps {
  readonly label: string;
  /** Minutes; null when nothing is said. */
  readonly value: number | null;
  /** Longest allowed, in minutes. */
  readonly max: number;
  readonly onClear?: () => Message | null;
  readonly onCommit: (minutes: number) => Message | null;
}

/** A length of time in minutes, hours or days, as the cook says it; kept in minutes. */
export function DurationField({ label, value, max, onClear, onCommit }: DurationFieldProps) {
  const t = useSpeaker();
  const [chosen, setChosen] = useState<Span | null>(null);
  const span = chosen ?? naturalSpan(value ?? 0);
  const of = minutesIn[span];
  return (
    <div className={styles['duration']}>
      <NumberField label={label} value={value === null ? null : value / of} min={0} max={max / of} decimals={span === 'min' ? 0 : 2} {...(onClear === undefined ? {} : { onClear })} onCommit={(n) => onCommit(Math.round(n * of))} />
      <select className={fields['select']} aria-label={t('view.recipes.spanOf', { label })} value={span} onChange={(e) => setChosen(spans.find((one) => one === e.currentTarget.value) ?? null)}>
        {spans.map((one) => <option key={one} value={one}>{t(`view.recipes.span.${one}`)}</option>)}
      </select>
    </div>
  );
}
