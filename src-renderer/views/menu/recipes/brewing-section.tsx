import { brewingSchema, type Brewing, type Recipe } from '../../../../shared/event';
import { nameIn } from '../../../app/ingredient-name';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { Choice } from '../../../parts/choice';
import { Tick } from '../../../parts/tick';
import type { PartProps } from './change';
import { Fold } from './fold';
import { brewingSpecs, type NumberSpec } from './number-spec';
import { SpecField } from './spec-field';
import folded from './fold.module.css';
import styles from './recipes.module.css';

const methods = brewingSchema.shape.method.options;
const coolest: NumberSpec<'serveAboveC'> = { key: 'serveAboveC', as: 'degrees', min: 0, max: 95, decimals: 0 };
const none = '-';

const isDrink = (role: Recipe['role']): boolean => role === 'hotDrink' || role === 'coldDrink' || role === 'water';
/** A drink to start from (cups: common practice, no source); the rest are the event file's own starting values. */
const usual = (role: Recipe['role']): Brewing =>
  brewingSchema.parse(role === 'water' ? { method: 'water', hot: false, cupMl: 180 } : role === 'coldDrink' ? { method: 'cold', hot: false, cupMl: 180 } : { method: 'infuse', hot: true, cupMl: 150 });

/** How it is brewed: leaf, water, milk, minutes, cup. Offered where it is a drink. */
export function BrewingSection({ recipe, change }: PartProps) {
  const t = useSpeaker();
  const { brewing } = recipe;
  if (brewing === undefined && !isDrink(recipe.role)) return null;
  if (brewing === undefined) {
    return (
      <Fold title={t('view.recipes.brewing')} summary={t('view.recipes.noBrewing')} isOpen>
        <Button onPress={() => { change({ brewing: usual(recipe.role) }); }}>{t('view.recipes.brewingAdd')}</Button>
        <span className={styles['note']}> {t('view.recipes.usual')}</span>
      </Fold>
    );
  }
  const put = (next: Brewing) => change({ brewing: next });
  const setDose = (food: string) => {
    const { doseIngredient: _, ...rest } = brewing;
    return put(food === none ? rest : { ...rest, doseIngredient: food });
  };
  const foods = [...new Set([...recipe.ingredients.map((line) => line.ingredient), ...(brewing.doseIngredient === undefined ? [] : [brewing.doseIngredient])])];
  const summary = t('view.recipes.brewingSays', { method: t(`view.recipes.method.${brewing.method}`), dose: brewing.doseGPerL, cup: brewing.cupMl, goodFor: brewing.goodForMinutes });
  return (
    <Fold title={t('view.recipes.brewing')} summary={summary}>
      <div className={folded['specs']}>
        <Choice label={t('view.recipes.brewing.method')} value={brewing.method} onCommit={(method) => put({ ...brewing, method })} options={methods.map((value) => ({ value, text: t(`view.recipes.method.${value}`) }))} />
        <Choice label={t('view.recipes.brewing.doseIngredient')} value={brewing.doseIngredient ?? none} onCommit={setDose}
          options={[{ value: none, text: t('view.recipes.brewing.noDose') }, ...foods.map((value) => ({ value, text: nameIn(recipe, value) }))]} />
        <Choice label={t('view.recipes.brewing.sugar')} value={brewing.sugar ?? 'in'} onCommit={(sugar) => put({ ...brewing, sugar })} options={[{ value: 'in', text: t('view.drinks.sugarIn') }, { value: 'apart', text: t('view.drinks.sugarApart') }]} />
        {brewingSpecs.map((spec) => <SpecField key={spec.key} spec={spec} label={t(`view.recipes.brewing.${spec.key}`)} value={brewing[spec.key]} onCommit={(value) => put({ ...brewing, [spec.key]: value })} />)}
        <SpecField spec={coolest} label={t('view.recipes.brewing.serveAboveC')} value={brewing.serveAboveC} onClear={() => put({ ...brewing, serveAboveC: null })} onCommit={(serveAboveC) => put({ ...brewing, serveAboveC })} />
      </div>
      <div className={styles['ticks']}>
        <Tick label={t('view.recipes.brewing.hot')} checked={brewing.hot} onChange={(hot) => { put({ ...brewing, hot }); }} />
        <Tick label={t('view.recipes.brewing.caffeinated')} checked={brewing.caffeinated} onChange={(caffeinated) => { put({ ...brewing, caffeinated }); }} />
      </div>
      <Button kind="link" onPress={() => { change({ brewing: undefined }); }}>{t('view.recipes.brewingOut')}</Button>
    </Fold>
  );
}
