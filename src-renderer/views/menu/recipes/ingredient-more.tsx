import type { IngredientLine } from '../../../../shared/event';
import type { Message } from '../../../../shared/words';
import { useSpeaker } from '../../../app/speak';
import { Choice } from '../../../parts/choice';
import { NumberField } from '../../../parts/number-field';
import { Tick } from '../../../parts/tick';
import styles from './recipes.module.css';

const scalings = ['linear', 'fixed', 'perBatch', 'damped'] as const;
type Scaling = (typeof scalings)[number];
/** What "less than in step" starts from (our choice; common practice for spice and salt, no source). */
const firstExponent = 0.9;

interface IngredientMoreProps {
  readonly line: IngredientLine;
  readonly name: string;
  readonly isFried: boolean;
  readonly set: (line: IngredientLine) => Message | null;
}

/** How an ingredient follows the size, whether it is to taste, and whether it waits for each bowl. */
export function IngredientMore({ line, name, isFried, set }: IngredientMoreProps) {
  const t = useSpeaker();
  const { scaling } = line;
  const scaled = (kind: Scaling): IngredientLine => ({ ...line, scaling: kind === 'damped' ? { kind, exponent: firstExponent } : { kind } });
  return (
    <div className={styles['stepMore']}>
      <div className={styles['fields']}>
        <Choice label={`${name}: ${t('view.recipes.scaling')}`} value={scaling.kind} onCommit={(kind) => set(scaled(kind))} options={scalings.map((value) => ({ value, text: t(`view.recipes.scaling.${value}`) }))} />
        {scaling.kind === 'damped' && <NumberField label={t('view.recipes.exponent')} value={scaling.exponent} min={0.3} max={1} step={0.05} decimals={2} onCommit={(exponent) => set({ ...line, scaling: { kind: 'damped', exponent } })} />}
        <p className={styles['aside']}>{scaling.kind === 'damped' ? t('view.recipes.dampedMeans', { times: 10 ** scaling.exponent }) : t(`view.recipes.scalingMeans.${scaling.kind}`)}</p>
      </div>
      <div className={styles['ticks']}>
        <Tick label={t('view.recipes.toTasteStart')} checked={line.toTaste} onChange={(toTaste) => { set({ ...line, toTaste }); }} />
        {(isFried || line.perBowl) && <Tick label={t('view.recipes.perBowlLong')} checked={line.perBowl} onChange={(perBowl) => { set({ ...line, perBowl }); }} />}
      </div>
    </div>
  );
}
