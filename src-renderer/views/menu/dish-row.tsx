import { changeDish, removeDish } from '../../../shared/edit';
import { amountText } from '../../../shared/measure';
import type { DishPlan } from '../../../shared/menu';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { CookingNotes } from '../../parts/cooking-notes';
import { Choice } from '../../parts/choice';
import { FigureButton } from '../../parts/figure-button';
import { Mark } from '../../parts/mark';
import { NumberField } from '../../parts/number-field';
import table from '../../parts/table.module.css';
import { TextField } from '../../parts/text-field';
import { TimeField } from '../../parts/time-field';
import { OwnPortionNote } from './own-portion';
import { ScaledRecipe } from './scaled-recipe';
import styles from './menu.module.css';

/** One dish of the menu: portion, who take it, when; opened, its recipe at this size. */
export function DishRow({ dish, isOpen, onToggle, onEdit }: { readonly dish: DishPlan; readonly isOpen: boolean; readonly onToggle: () => void; readonly onEdit: () => void }) {
  const t = useSpeaker();
  const { event, edit, plan } = useDocument();
  const entry = event.menu.dishes.find((d) => d.id === dish.id);
  if (entry === undefined) return null;
  const change = (patch: Parameters<typeof changeDish>[2]) => edit(changeDish(event, dish.id, patch));
  const { served } = entry;
  const kinds = [{ value: 'throughout', text: t('view.menu.throughout') }, { value: 'between', text: t('view.menu.between') }, { value: 'fixed', text: t('view.menu.fixed') }] as const;
  const contains = dish.allergens.length === 0 ? <><span aria-hidden="true">–</span><span className="unseen">{t('view.menu.containsNone')}</span></> : dish.allergens.map((a) => t(`allergen.${a}`).toLowerCase()).join(', ');
  return (
    <>
      <tr data-dish={dish.id}>
        <th scope="row" className={styles['name']}>
          <button type="button" className={styles['toggle']} aria-expanded={isOpen} onClick={onToggle}><span className={styles['arrow']}><Mark kind={isOpen ? 'opened' : 'closed'} /></span><span className="unseen">{t(isOpen ? 'view.menu.hide' : 'view.menu.show', { dish: '' })} </span>{dish.name}</button>
          {dish.broughtBy !== undefined && <p className={styles['brought']}>{t('view.menu.broughtShort', { who: dish.broughtBy })}</p>}
          <p className={styles['containsHere']} data-contains-here>{t('view.menu.contains')}: {dish.allergens.length === 0 ? t('view.menu.containsNone') : contains}</p>
          <OwnPortionNote dish={dish} />
        </th>
        <td className={table['n']}><FigureButton figure={dish.perAdult} title={`${dish.name}: ${t('view.menu.perAdult')}`}>{t.formats.figure(Math.round(dish.perAdult.value * 100) / 100, dish.perAdult.unit)}</FigureButton></td>
        <td><NumberField label={`${dish.name}: ${t('view.menu.takeUp')}`} bare unit="%" value={entry.takeUp * 100} min={0} max={100} step={5} onCommit={(n) => change({ takeUp: n / 100 })} /></td>
        <td>
          <div className={styles['served']}>
            <Choice label={`${dish.name}: ${t('view.menu.served')}`} bare value={served.kind} options={kinds}
              onCommit={(kind) => change({ served: kind === 'throughout' ? { kind } : kind === 'between' ? { kind, from: event.opensAt, to: event.closesAt } : { kind, at: event.opensAt, portions: Math.max(1, dish.portions.value) } })} />
            {served.kind === 'between' && (
              <>
                <TimeField label={`${dish.name}: ${t('view.menu.from')}`} bare value={served.from} onCommit={(from) => change({ served: { ...served, from } })} />
                <TimeField label={`${dish.name}: ${t('view.menu.to')}`} bare value={served.to} onCommit={(to) => change({ served: { ...served, to } })} />
              </>
            )}
            {served.kind === 'fixed' && (
              <>
                <TimeField label={`${dish.name}: ${t('view.menu.at')}`} bare value={served.at} onCommit={(at) => change({ served: { ...served, at } })} />
                <NumberField label={`${dish.name}: ${t('view.menu.portionsFixed')}`} bare value={served.portions} min={0} max={100000} onCommit={(portions) => change({ served: { ...served, portions } })} />
              </>
            )}
          </div>
        </td>
        <td className={table['n']}><FigureButton figure={dish.portions} title={`${dish.name}: ${t('view.menu.portions')}`} /></td>
        <td className={`${table['n']} ${styles['total']}`}><FigureButton figure={dish.totalFigure} title={`${dish.name}: ${t('view.menu.total')}`}>{t.formats.amount(amountText(dish.total))}</FigureButton></td>
        <td className={`${table['note']} ${styles['contains']}`}>{contains}</td>
      </tr>
      {isOpen && (
        <tr className={styles['more']}>
          <td colSpan={7}>
            <div className={styles['tools']}>
              <NumberField label={`${t('view.menu.ownPortion')} (${t('view.menu.ownPortionNote')})`} unit={t.loose(`unit.${dish.recipe.yield.amount.unit}`, { count: 2 }).replace(/^unit\./, '')} value={entry.portion === undefined ? null : Number(entry.portion.amount)} min={0} max={10000} decimals={3}
                onClear={() => change({ portion: undefined })} onCommit={(n) => change({ portion: { amount: String(n), unit: dish.recipe.yield.amount.unit } })} />
              <TextField label={t('view.menu.broughtBy')} optional longest={120} value={entry.broughtBy ?? ''} onCommit={(who) => change({ broughtBy: who.trim() === '' ? undefined : who.trim() })} />
              <p className={styles['open']}>{t('view.menu.openTo')}: {dish.diets.length === 0 ? t('view.menu.nothing') : t.formats.list(dish.diets.map((d) => t(`diet.${d}`).toLowerCase()))}</p>
              <Button kind="link" onPress={onEdit}>{t('view.recipes.edit')}</Button>
              <Button kind="link" onPress={() => edit(removeDish(event, dish.id))}>{t('view.menu.remove')}</Button>
            </div>
            <CookingNotes notes={plan.cooking.notes.filter((n) => n.dish === dish.id)} />
            {dish.broughtBy === undefined ? <ScaledRecipe dish={dish} /> : <p>{t('view.menu.brought', { who: dish.broughtBy })}</p>}
          </td>
        </tr>
      )}
    </>
  );
}
