import { stepSchema, thingIds, type Step, type ThingId } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';
import { useDocument } from '../../../app/document';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import { NumberField } from '../../../parts/number-field';
import { Tick } from '../../../parts/tick';
import { StepKeeping } from './step-keeping';
import styles from './recipes.module.css';

const kinds = stepSchema.shape.does.unwrap().options;
/** Who does a step that names nobody: the cook. */
const nobody = 'cook';

interface StepMoreProps {
  readonly list: readonly Step[];
  readonly at: number;
  readonly step: Step;
  readonly set: (step: Step) => Message | null;
}

/** What a step is, who does it, what it needs, which steps come before it, the minutes that grow with the size, when it must be done and how its result keeps. */
export function StepMore({ list, at, step, set }: StepMoreProps) {
  const t = useSpeaker();
  const { event } = useDocument();
  const countOf = (thing: ThingId): number => step.needs.filter((need) => need.thing === thing).reduce((sum, need) => sum + need.count, 0);
  const need = (thing: ThingId, count: number): Message | null => {
    const others = step.needs.filter((one) => one.thing !== thing);
    return set({ ...step, needs: count === 0 ? others : step.needs.some((one) => one.thing === thing) ? step.needs.flatMap((one, i, all) => (one.thing !== thing ? [one] : all.findIndex((x) => x.thing === thing) === i ? [{ ...one, count }] : [])) : [...others, { thing, count }] });
  };
  const tasks = [...new Set([nobody, ...event.people.flatMap((person) => person.roles), ...(step.by === undefined ? [] : [step.by])])];
  const minutes = (part: 'active' | 'passive', key: 'perKg' | 'perBatch') => (
    <NumberField label={t(part === 'active' ? `view.recipes.${key}` : `view.recipes.${key}Passive`)} unit="min" value={step[part][key]} min={0} max={600} decimals={2} onCommit={(value) => set({ ...step, [part]: { ...step[part], [key]: value } })} />
  );
  return (
    <div className={styles['stepMore']}>
      <div className={styles['fields']}>
        <Choice label={t('view.recipes.does')} value={step.does} onCommit={(does) => set({ ...step, does })} options={kinds.map((value) => ({ value, text: t(`view.recipes.does.${value}`) }))} />
        <Choice label={t('view.recipes.by')} value={step.by ?? nobody} onCommit={(by) => set({ ...step, by })} options={tasks.map((value) => ({ value, text: value }))} />
        {minutes('active', 'perKg')}
        {minutes('active', 'perBatch')}
        {minutes('passive', 'perKg')}
        {minutes('passive', 'perBatch')}
        <NumberField label={t('view.recipes.attention')} unit="%" value={Number((100 * step.passiveAttention).toPrecision(6))} min={0} max={100} decimals={0} onCommit={(percent) => set({ ...step, passiveAttention: percent / 100 })} />
      </div>
      <fieldset className={styles['ticks']}>
        <legend>{t('view.recipes.needs')}</legend>
        {thingIds.map((thing) => (
          <span key={thing} className={styles['need']}>
            <Tick label={t(`view.recipes.thing.${thing}`)} checked={countOf(thing) > 0} onChange={(on) => { need(thing, on ? 1 : 0); }} />
            {countOf(thing) > 0 && <NumberField label={t('view.recipes.countOf', { thing: t(`view.recipes.thing.${thing}`) })} bare value={countOf(thing)} min={1} max={20} onCommit={(count) => need(thing, count)} />}
          </span>
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
      <StepKeeping step={step} set={set} />
    </div>
  );
}
