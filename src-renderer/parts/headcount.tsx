import { useRef, useState } from 'react';
import { Slider, SliderThumb, SliderTrack } from 'react-aria-components/Slider';
import type { Message } from '../../shared/words';
import { useSpeaker } from '../app/speak';
import { useFrame } from './frame';
import { Mark } from './mark';
import { NumberField } from './number-field';
import styles from './headcount.module.css';

interface HeadcountProps {
  readonly label: string;
  readonly value: number;
  readonly was?: string | undefined;
  /** `merge`: edits under one key are one undo step. */
  readonly onChange: (value: number, merge: string | null) => Message | null;
}

/** Rounds a slider's end up to something calm, and never lets it move under the cook's finger. */
const endFor = (value: number): number => Math.max(40, Math.ceil((value * 1.8) / 20) * 20);

/** How many come: a field, plus and minus, and a slider that everything follows. */
export function Headcount({ label, value, was, onChange }: HeadcountProps) {
  const t = useSpeaker();
  const [end, setEnd] = useState(() => endFor(value));
  const stroke = useRef(0);
  if (value > end) setEnd(endFor(value));
  const onFrame = useFrame((next: { readonly value: number; readonly merge: string }) => { onChange(next.value, next.merge); });
  return (
    <div className={styles['headcount']} data-changed={was !== undefined}>
      <NumberField label={label} value={value} min={0} max={20000} buttons onCommit={(next) => onChange(next, null)} />
      {was !== undefined && <span className={styles['was']}><Mark kind="changed" /> <s><span className="unseen">{t('part.was')} </span>{was}</s></span>}
      <Slider
        className={styles['slider'] ?? ''} aria-label={t('part.slider', { label })} value={value} minValue={0} maxValue={end}
        onChange={(next) => onFrame({ value: next, merge: `headcount-${label}-${stroke.current}` })} onChangeEnd={() => { stroke.current += 1; }}
      >
        <SliderTrack className={styles['track'] ?? ''}>
          {({ state }) => (
            <>
              <span className={styles['line']} />
              <span className={styles['fill']} style={{ width: `${state.getThumbPercent(0) * 100}%` }} />
              <SliderThumb className={styles['thumb'] ?? ''} />
            </>
          )}
        </SliderTrack>
      </Slider>
    </div>
  );
}
