import { clockParts, minutes, minutesPerDay, parseClock } from '../../shared/measure';
import type { Message } from '../../shared/words';
import { useSpeaker } from '../app/speak';
import { useDraft, type Reading } from './draft';
import { Field } from './field';
import styles from './fields.module.css';

interface TimeFieldProps {
  readonly label: string;
  readonly bare?: boolean;
  /** Minutes from the event's midnight. */
  readonly value: number;
  readonly onCommit: (value: number) => Message | null;
}

/** A clock time, typed as the cook likes ("9", "9:30", "930", "9 pm"); the arrows move it by 5 minutes. */
export function TimeField({ label, bare = false, value, onCommit }: TimeFieldProps) {
  const t = useSpeaker();
  const day = clockParts(minutes(value)).day;
  const shown = t.formats.clock(value - day * minutesPerDay);
  const read = (text: string): Reading<number> => {
    const time = parseClock(text);
    // A time typed without a day keeps the day the field stands on; hours of 24 and more name the day themselves.
    return time === null ? { ok: false, problem: t('field.notATime', { label }) } : { ok: true, value: time >= minutesPerDay ? time : time + day * minutesPerDay };
  };
  const draft = useDraft(shown, read, onCommit);
  return (
    <Field label={label} bare={bare} error={draft.error} kind="time">
      {({ id, describedBy, invalid }) => (
        <span className={styles['box']}>
          <input
            {...draft.input} id={id} className={styles['input']} type="text" autoComplete="off" aria-invalid={invalid} aria-describedby={describedBy}
            onKeyDown={(e) => {
              if (e.key === 'ArrowUp' || e.key === 'ArrowDown') {
                e.preventDefault();
                onCommit(Math.round((value + (e.key === 'ArrowUp' ? 5 : -5)) / 5) * 5);
                draft.drop();
              } else draft.input.onKeyDown(e);
            }}
          />
          {day !== 0 && <span className={styles['unit']}>{t.formats.clock(value).replace(shown, '').trim()}</span>}
        </span>
      )}
    </Field>
  );
}
