import { fryingSchema, type Frying, type Recipe } from '../../../../shared/event';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { Tick } from '../../../parts/tick';
import type { PartProps } from './change';
import { Fold } from './fold';
import { fryingSpecs, type NumberSpec } from './number-spec';
import { SpecField } from './spec-field';
import folded from './fold.module.css';
import styles from './recipes.module.css';

/** A spooned fritter to start from (common practice, no source); the rest are the event file's own starting values. */
const usual = { pieceBatterG: 25, fryMinutes: 4 };
const bowlLife: NumberSpec<'bowlMinutes'> = { key: 'bowlMinutes', as: 'min', min: 1, max: 240, decimals: 0 };

/** A recipe that may be fried: one that is, or one whose place in the meal is among the fried. */
const mayBeFried = ({ role, frying }: Recipe): boolean => frying !== undefined || role === 'friedSnack' || role === 'friedSide';

/** How it is fried: piece, minutes, oil, batter. Offered where the dish is fried or has its place among the fried. */
export function FryingSection({ recipe, change }: PartProps) {
  const t = useSpeaker();
  const { frying } = recipe;
  if (!mayBeFried(recipe)) return null;
  if (frying === undefined) {
    return (
      <Fold title={t('view.recipes.frying')} summary={t('view.recipes.noFrying')} isOpen>
        <Button onPress={() => { change({ frying: fryingSchema.parse(usual) }); }}>{t('view.recipes.fryingAdd')}</Button>
        <span className={styles['note']}> {t('view.recipes.usual')}</span>
      </Fold>
    );
  }
  const set = (patch: Partial<Frying>) => change({ frying: { ...frying, ...patch } });
  const summary = t('view.recipes.fryingSays', { gram: frying.pieceBatterG, minutes: frying.fryMinutes, oil: t.formats.degrees(frying.targetC), hold: frying.holdMinutes });
  return (
    <Fold title={t('view.recipes.frying')} summary={summary}>
      <div className={folded['specs']}>
        {fryingSpecs.map((spec) => <SpecField key={spec.key} spec={spec} label={t(`view.recipes.frying.${spec.key}`)} value={frying[spec.key]} onCommit={(value) => set({ [spec.key]: value })} />)}
        {frying.bowlMinutes !== null && <SpecField spec={bowlLife} label={t('view.recipes.frying.bowlMinutes')} value={frying.bowlMinutes} onCommit={(bowlMinutes) => set({ bowlMinutes })} />}
      </div>
      <div className={styles['ticks']}>
        <Tick label={t('view.recipes.frying.hasBatter')} checked={frying.bowlMinutes !== null} onChange={(on) => { set({ bowlMinutes: on ? fryingSchema.parse(usual).bowlMinutes : null }); }} />
        <Tick label={t('view.recipes.frying.crumbly')} checked={frying.crumbly} onChange={(crumbly) => { set({ crumbly }); }} />
        <Tick label={t('view.recipes.frying.strongFlavour')} checked={frying.strongFlavour === true} onChange={(strongFlavour) => { set({ strongFlavour }); }} />
      </div>
      <Button kind="link" onPress={() => { change({ frying: undefined }); }}>{t('view.recipes.fryingOut')}</Button>
    </Fold>
  );
}
