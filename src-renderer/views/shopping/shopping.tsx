import { useCallback, useMemo, useState } from 'react';
import { setLarder } from '../../../shared/edit';
import { namesOf } from '../../../shared/sheets';
import type { ShoppingLine } from '../../../shared/buying';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { documentStore } from '../../app/store';
import { Choice } from '../../parts/choice';
import { DataTable } from '../../parts/data-table';
import { EmptyState } from '../../parts/empty-state';
import { ViewPage, ViewSection } from '../../parts/view-page';
import { shoppingColumns } from './columns';
import { CsvButton } from './csv-button';

const numeric = ['need', 'buy', 'cost'];
const idOf = (line: ShoppingLine): string => line.ingredient;
const everySection = 'all';

function setInHouse(line: ShoppingLine, amount: number | null) {
  const open = documentStore.get();
  if (open === null) return null;
  const value = amount === null || amount === 0 ? null : { amount: String(amount), unit: line.larder.unit };
  return documentStore.edit(setLarder(open.event, line.ingredient, value));
}

/** The view Shopping: what to buy, from what is needed and what is in the house. */
export function Shopping() {
  const t = useSpeaker();
  const { plan, event, formats, readOnly } = useDocument();
  const [section, setSection] = useState(everySection);
  const names = useMemo(() => namesOf(plan, formats), [plan, formats]);
  const columns = useMemo(() => shoppingColumns({ t, names, day: event.day, readOnly, setInHouse }), [t, names, event.day, readOnly]);
  const { buying } = plan;
  const choose = useCallback((value: string) => { setSection(value); return null; }, []);
  const sections = buying.sections.filter((s) => buying.lines.some((l) => l.section === s));
  const shown = sections.includes(section) ? section : everySection;
  const toBuy = buying.lines.filter((l) => l.buy.amount.gt(0)).length;
  if (buying.lines.length === 0 && buying.unknown.length === 0) {
    return <ViewPage title={t('view.shopping')}><EmptyState title={t('view.shopping.emptyTitle')}>{t('view.shopping.empty')}</EmptyState></ViewPage>;
  }
  return (
    <ViewPage
      title={t('view.shopping')}
      lead={<>{t('view.shopping.lead', { n: toBuy })} {buying.cost === null ? t('view.shopping.noCost') : t('view.shopping.cost', { cost: formats.money(buying.cost) })}</>}
      actions={<>
        <Choice label={t('view.shopping.show')} value={shown} onCommit={choose}
          options={[{ value: everySection, text: t('view.shopping.allSections') }, ...sections.map((s) => ({ value: s, text: names.section(s) }))]} />
        <CsvButton />
      </>}
    >
      <DataTable caption={t('view.shopping.table')} rows={buying.lines} columns={columns} numeric={numeric} rowId={idOf} only={shown === everySection ? null : { column: 'section', value: shown }} />
      {buying.notCounted.length > 0 && (
        <ViewSection title={t('view.shopping.notCountedTitle')}>
          <ul>{buying.notCounted.map((m, i) => <li key={i}>{t.message(m)}</li>)}</ul>
        </ViewSection>
      )}
      {buying.unknown.length > 0 && (
        <ViewSection title={t('view.shopping.unknownTitle')}>
          <ul>{buying.unknown.map((u) => <li key={u.ingredient}>{t('view.shopping.unknown', { ingredient: names.ingredient(u.ingredient), dishes: formats.list(u.dishes.map(names.dish)) })}</li>)}</ul>
        </ViewSection>
      )}
    </ViewPage>
  );
}
