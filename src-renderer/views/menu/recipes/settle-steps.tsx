import type { ImportedStep, StepTime } from '../../../../shared/exchange';
import { useSpeaker } from '../../../app/speak';
import { NumberField } from '../../../parts/number-field';
import table from '../../../parts/table.module.css';
import styles from './recipes.module.css';

/** Longest a step may take, in minutes: two days. */
const longest = 2880;

interface SettleStepsProps {
  readonly steps: readonly ImportedStep[];
  readonly times: readonly StepTime[];
  readonly onChange: (times: readonly StepTime[]) => void;
}

/** The steps of a recipe being taken in, each with the minutes its words state, for the cook to look at. */
export function SettleSteps({ steps, times, onChange }: SettleStepsProps) {
  const t = useSpeaker();
  const set = (at: number, part: Partial<StepTime>): null => {
    onChange(times.map((time, i) => (i === at ? { ...time, ...part } : time)));
    return null;
  };
  return (
    <div className={table['scroll']}>
      <table className={`${table['table']} ${styles['edit']}`}>
        <thead><tr><th scope="col">{t('view.recipes.step')}</th><th scope="col">{t('view.recipes.active')}</th><th scope="col">{t('view.recipes.passive')}</th></tr></thead>
        <tbody>
          {steps.map((step, at) => {
            const name = `${t('view.recipes.step')} ${at + 1}`;
            return (
              <tr key={`${at} ${step.text}`} data-step={at + 1}>
                <td className={styles['told']}>{at + 1}. {step.text}</td>
                <td className={styles['minutes']}><NumberField label={`${name}: ${t('view.recipes.active')}`} bare unit="min" value={times[at]?.active ?? 0} min={0} max={longest} decimals={1} onCommit={(active) => set(at, { active })} /></td>
                <td className={styles['minutes']}><NumberField label={`${name}: ${t('view.recipes.passive')}`} bare unit="min" value={times[at]?.passive ?? 0} min={0} max={longest} decimals={1} onCommit={(passive) => set(at, { passive })} /></td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
