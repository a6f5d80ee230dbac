import { useState } from 'react';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { EmptyState } from '../../parts/empty-state';
import table from '../../parts/table.module.css';
import { ViewPage, ViewSection } from '../../parts/view-page';
import { DishRow } from './dish-row';
import { PerHead } from './per-head';
import type { RecipePage } from './recipes/page';
import { RecipePages } from './recipes/recipe-pages';
import styles from './menu.module.css';

/** The recipe being written when the cook went to another view, and the document it belongs to: half-written work is not lost. */
let left: { readonly openId: string; readonly page: RecipePage | null } | null = null;

/** What there is to eat and drink, how much of it, and who can have it. */
export function Menu() {
  const t = useSpeaker();
  const { plan, openId } = useDocument();
  const [open, setOpen] = useState<string | null>(null);
  const [page, setPage] = useState<RecipePage | null>(() => (left?.openId === openId ? left.page : null));
  const go = (next: RecipePage | null): void => {
    left = { openId, page: next?.kind === 'settle' ? next : null };
    setPage(next);
  };
  const { dishes, diets } = plan.menu;
  const nameOf = (id: string): string => dishes.find((d) => d.id === id)?.name ?? id;
  if (page !== null) return <RecipePages page={page} go={go} />;
  return (
    <ViewPage title={t('view.menu')} lead={t('view.menu.lead', { n: dishes.length })} actions={<Button onPress={() => go({ kind: 'choose' })}>{t('view.menu.add')}</Button>}>
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
                <th scope="col" className={styles['contains']}>{t('view.menu.contains')}</th>
              </tr>
            </thead>
            <tbody>
              {dishes.map((dish) => <DishRow key={dish.id} dish={dish} isOpen={open === dish.id} onToggle={() => setOpen(open === dish.id ? null : dish.id)} onEdit={() => go({ kind: 'edit', recipe: dish.recipe.id })} />)}
            </tbody>
          </table>
        </div>
      )}
      <PerHead />
      {diets.length > 0 && (
        <ViewSection title={t('view.menu.dietsTitle')}>
          <table className={table['table']}>
            <thead><tr><th scope="col">{t('view.guests.diets')}</th><th scope="col" className={table['n']}>{t('view.menu.people')}</th><th scope="col">{t('view.menu.canEat')}</th></tr></thead>
            <tbody>
              {diets.map((d) => (
                <tr key={d.diet}>
                  <th scope="row" className={styles['diet']}>{t(`diet.${d.diet}`)}</th>
                  <td className={table['n']}>{t.formats.number(d.people)}</td>
                  <td className={table['note']}>{t('view.menu.openOf', { people: d.people, n: d.open.length, all: dishes.filter((x) => x.servedAs !== 'cup').length })} {d.open.length === 0 ? <strong className={styles['none']}>{t('view.menu.noDish')}</strong> : t.formats.list(d.open.map(nameOf))}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ViewSection>
      )}
    </ViewPage>
  );
}
