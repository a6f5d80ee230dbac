import { useState } from 'react';
import { addDish, addRecipe, freshId, type EditResult } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { EmptyState } from '../../parts/empty-state';
import table from '../../parts/table.module.css';
import { ViewPage, ViewSection } from '../../parts/view-page';
import { DishRow } from './dish-row';
import { useShelf } from './shelf';
import styles from './menu.module.css';

/** What there is to eat and drink, how much of it, and who can have it. */
export function Menu() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const [open, setOpen] = useState<string | null>(null);
  const { dishes, diets } = plan.menu;
  const nameOf = (id: string): string => dishes.find((d) => d.id === id)?.name ?? id;
  const shelf = useShelf().filter((r) => !event.recipes.some((own) => own.id === r.id));
  const add = (recipe: string): EditResult => {
    const copied = shelf.find((r) => r.id === recipe);
    const ready = copied === undefined ? null : addRecipe(event, copied);
    if (ready !== null && 'problem' in ready) return ready;
    const start = ready?.event ?? event;
    return addDish(start, { id: start.menu.dishes.some((d) => d.id === recipe) ? freshId(start.menu.dishes, recipe.slice(0, 56)) : recipe, recipe });
  };
  const adder = (
    <Choice label={t('view.menu.add')} value="" onCommit={(recipe) => (recipe === '' ? null : edit(add(recipe)))}
      options={[{ value: '', text: t('view.menu.choose') }, ...[...event.recipes, ...shelf].map((r) => ({ value: r.id, text: r.name }))]} />
  );
  return (
    <ViewPage title={t('view.menu')} lead={t('view.menu.lead', { n: dishes.length })} actions={adder}>
      {dishes.length === 0 ? <EmptyState title={t('view.menu.emptyTitle')}>{t('view.menu.empty')}</EmptyState> : (
        <div className={table['scroll']}>
          <table className={`${table['table']} ${styles['dishes']}`}>
            <caption className="unseen">{t('view.menu')}</caption>
            <thead>
              <tr>
                <th scope="col">{t('view.menu.dish')}</th>
                <th scope="col" className={table['n']}>{t('view.menu.perAdult')}</th>
                <th scope="col">{t('view.menu.takeUp')}</th>
                <th scope="col">{t('view.menu.served')}</th>
                <th scope="col" className={table['n']}>{t('view.menu.portions')}</th>
                <th scope="col" className={table['n']}>{t('view.menu.total')}</th>
                <th scope="col">{t('view.menu.contains')}</th>
              </tr>
            </thead>
            <tbody>
              {dishes.map((dish) => <DishRow key={dish.id} dish={dish} isOpen={open === dish.id} onToggle={() => setOpen(open === dish.id ? null : dish.id)} />)}
            </tbody>
          </table>
        </div>
      )}
      {diets.length > 0 && (
        <ViewSection title={t('view.menu.dietsTitle')}>
          <table className={table['table']}>
            <thead><tr><th scope="col">{t('view.guests.diets')}</th><th scope="col" className={table['n']}>{t('view.menu.people')}</th><th scope="col">{t('view.menu.canEat')}</th></tr></thead>
            <tbody>
              {diets.map((d) => (
                <tr key={d.diet}>
                  <th scope="row" className={styles['diet']}>{t(`diet.${d.diet}`)}</th>
                  <td className={table['n']}>{t.formats.number(d.people)}</td>
                  <td className={d.open.length === 0 ? styles['none'] : table['note']}>{d.open.length === 0 ? t('view.menu.nothing') : t.formats.list(d.open.map(nameOf))}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ViewSection>
      )}
    </ViewPage>
  );
}
