import { stepSchema, thingIds, type Step } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import { NumberField } from '../../../parts/number-field';
import { Tick } from '../../../parts/tick';
import styles from './recipes.module.css';

const kinds = stepSchema.shape.does.unwrap().options;

interface StepMoreProps {
  readonly list: readonly Step[];
  readonly at: number;
  readonly step: Step;
  readonly set: (step: Step) => Message | null;
}

/** What a step is, what it needs, which steps come before it, and the minutes that grow with the size. */
export function StepMore({ list, at, step, set }: StepMoreProps) {
  const t = useSpeaker();
  const has = (thing: string): boolean => step.needs.some((need) => need.thing === thing);
  return (
    <div className={styles['stepMore']}>
      <div className={styles['fields']}>
        <Choice label={t('view.recipes.does')} value={step.does} onCommit={(does) => set({ ...step, does })} options={kinds.map((value) => ({ value, text: t(`view.recipes.does.${value}`) }))} />
        <NumberField label={t('view.recipes.perKg')} unit="min" value={step.active.perKg} min={0} max={600} decimals={2} onCommit={(perKg) => set({ ...step, active: { ...step.active, perKg } })} />
        <NumberField label={t('view.recipes.perBatch')} unit="min" value={step.active.perBatch} min={0} max={600} decimals={2} onCommit={(perBatch) => set({ ...step, active: { ...step.active, perBatch } })} />
      </div>
      <fieldset className={styles['ticks']}>
        <legend>{t('view.recipes.needs')}</legend>
        {thingIds.map((thing) => (
          <Tick key={thing} label={t(`view.recipes.thing.${thing}`)} checked={has(thing)}
            onChange={(on) => { set({ ...step, needs: on ? [...step.needs, { thing, count: 1 }] : step.needs.filter((need) => need.thing !== thing) }); }} />
        ))}
      </fieldset>
      {list.length > 1 && (
        <fieldset className={styles['ticks']}>
          <legend>{t('view.recipes.after')}</legend>
          {list.map((other, i) => (i === at ? null : (
            <Tick key={other.id} label={`${i + 1}. ${other.name}`} checked={step.after.includes(other.id)}
              onChange={(on) => { set({ ...step, after: on ? [...step.after, other.id] : step.after.filter((id) => id !== other.id) }); }} />
          )))}
        </fieldset>
      )}
    </div>
  );
}
