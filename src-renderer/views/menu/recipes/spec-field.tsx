import type { Message } from '../../../../shared/words';
import { useSpeaker } from '../../../app/speak';
import { MeasureField } from '../../../parts/measure-field';
import { NumberField } from '../../../parts/number-field';
import type { NumberSpec } from './number-spec';

interface SpecFieldProps {
  readonly spec: NumberSpec<string>;
  readonly label: string;
  readonly value: number | null;
  readonly onClear?: () => Message | null;
  readonly onCommit: (value: number) => Message | null;
}

const twelve = (value: number): number => Number(value.toPrecision(12));

/** A number of a recipe in the cook's units: shares in percent, temperatures in the scale of the event. */
export function SpecField({ spec: { as, min, max, decimals }, label, value, onClear, onCommit }: SpecFieldProps) {
  const t = useSpeaker();
  const empty = onClear === undefined ? {} : { onClear };
  if (as === 'degrees') return <MeasureField label={label} unit="°C" value={value} min={min} max={max} decimals={decimals} onCommit={onCommit} {...empty} />;
  if (as === 'share') {
    return <NumberField label={label} unit="%" value={value === null ? null : twelve(100 * value)} min={100 * min} max={100 * max} decimals={decimals} onCommit={(percent) => onCommit(twelve(percent / 100))} {...empty} />;
  }
  return <NumberField label={label} unit={t(`view.recipes.unit.${as}`)} value={value} min={min} max={max} decimals={decimals} onCommit={onCommit} {...empty} />;
}
