import type { Step } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';
import { useSpeaker } from '../../../app/speak';
import { NumberField } from '../../../parts/number-field';
import { TextField } from '../../../parts/text-field';
import { RowButtons } from './row-buttons';
import { StepMore } from './step-more';
import { withoutStep } from './without-step';
import styles from './recipes.module.css';

interface StepRowProps {
  readonly list: readonly Step[];
  readonly at: number;
  readonly step: Step;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  readonly put: (steps: Step[]) => Message | null;
  readonly go: (at: number, by: -1 | 1) => void;
}

/** Longest a step may take, in minutes: two days. */
const longest = 2880;

/** One step: its name, its minutes, and in words what it needs and follows. */
export function StepRow({ list, at, step, isOpen, onToggle, put, go }: StepRowProps) {
  const t = useSpeaker();
  const { name } = step;
  const set = (next: Step): Message | null => put(list.map((one, i) => (i === at ? next : one)));
  const needs = step.needs.map((need) => `${need.count > 1 ? `${t.formats.number(need.count)} × ` : ''}${t(`view.recipes.thing.${need.thing}`)}`);
  const after = step.after.map((id) => list.findIndex((one) => one.id === id) + 1).filter((n) => n > 0).map((n) => t.formats.number(n));
  return (
    <>
      <tr data-step={step.id} data-at={at}>
        <td>
          <div className={styles['stepName']}>
            <span className={styles['number']}>{at + 1}</span>
            <TextField label={`${t('view.recipes.step')} ${at + 1}`} bare value={name} onCommit={(next) => set({ ...step, name: next })} />
          </div>
        </td>
        <td className={styles['minutes']}>
          <NumberField label={`${name}: ${t('view.recipes.active')}`} bare unit="min" value={step.active.fixed} min={0} max={longest} decimals={1} onCommit={(fixed) => set({ ...step, active: { ...step.active, fixed } })} />
          <Also minutes={step.active} />
        </td>
        <td className={styles['minutes']}>
          <NumberField label={`${name}: ${t('view.recipes.passive')}`} bare unit="min" value={step.passive.fixed} min={0} max={longest} decimals={1} onCommit={(fixed) => set({ ...step, passive: { ...step.passive, fixed } })} />
          <Also minutes={step.passive} />
        </td>
        <td>
          <button type="button" className={styles['more']} aria-expanded={isOpen} aria-label={t('view.recipes.stepMoreOf', { name })} onClick={onToggle}>
            {needs.length === 0 ? t('view.recipes.needs.none') : needs.join(', ')}; {t('view.recipes.after').toLowerCase()} {after.length === 0 ? t('view.recipes.after.none') : t.formats.list(after)}
          </button>
        </td>
        <td><RowButtons list={list} at={at} name={name} put={put} go={go} remove={() => { put(withoutStep(list, step.id)); }} /></td>
      </tr>
      {isOpen && <tr className={styles['opened']}><td colSpan={5}><StepMore list={list} at={at} step={step} set={set} /></td></tr>}
    </>
  );
}

function Also({ minutes }: { readonly minutes: Step['active'] }) {
  const t = useSpeaker();
  return minutes.perKg > 0 || minutes.perBatch > 0 ? <span className={styles['note']}>{t('view.recipes.also', { perKg: minutes.perKg, perBatch: minutes.perBatch })}</span> : null;
}
