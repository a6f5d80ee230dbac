import type { Message } from '../../shared/words';
import { useDocument } from '../app/document';
import { NumberField } from './number-field';
import { usMeasure, type StoredUnit } from './us-measure';

interface MeasureFieldProps {
  readonly label: string;
  /** Unit the value is stored in; shown so, or in the US unit of the same kind when the event is written in US units. */
  readonly unit: StoredUnit;
  readonly value: number | null;
  readonly min: number;
  readonly max: number;
  readonly step?: number;
  readonly decimals?: number;
  readonly onClear?: () => Message | null;
  readonly onCommit: (value: number) => Message | null;
}

/** A number field for something measured, in the units of the event. What is stored is always metric. */
export function MeasureField({ value, min, max, unit, onCommit, ...rest }: MeasureFieldProps) {
  const { event } = useDocument();
  if (event.preferences.units === 'metric') return <NumberField {...rest} value={value} min={min} max={max} unit={unit} onCommit={onCommit} />;
  const us = usMeasure(unit);
  const finest = 10 ** us.decimals;
  // The limits are drawn in to what can be written, so that the entry at a limit is within it.
  return (
    <NumberField
      {...rest} unit={us.unit} step={us.step} decimals={us.decimals}
      value={value === null ? null : us.shown(value)}
      min={Math.ceil(us.shown(min) * finest - 1e-6) / finest} max={Math.floor(us.shown(max) * finest + 1e-6) / finest}
      onCommit={(next) => onCommit(us.kept(next))}
    />
  );
}
