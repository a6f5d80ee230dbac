import { useCallback, useMemo, useState } from 'react';
import { namesOf } from '../../../shared/sheets';
import type { ShoppingLine } from '../../../shared/buying';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { DataTable } from '../../parts/data-table';
import { EmptyState } from '../../parts/empty-state';
import { FigureButton } from '../../parts/figure-button';
import { ViewPage, ViewSection } from '../../parts/view-page';
import { BorrowSection } from './borrow';
import { shoppingColumns } from './columns';
import { CopyButton } from './copy-button';
import { CsvButton } from './csv-button';
import { LinePanel } from './line-panel';
import { OwnLines } from './own-lines';
import { SplitSection } from './split';
import { OwnThings } from './things';

const numeric = ['need', 'buy', 'cost'];
const keyOf = (line: ShoppingLine): string => line.key;
const all = 'all';
const groupOf = (line: ShoppingLine): string => line.section;
const panelOf = (line: ShoppingLine) => <LinePanel line={line} />;

/** The known cost with what it leaves out: never a total that looks whole and is not. */
function Cost() {
  const t = useSpeaker();
  const { plan: { buying }, formats } = useDocument();
  if (buying.costFigure === null || buying.cost === null) return <>{t('view.shopping.noCost')}</>;
  return <>{t('view.shopping.costIs')} <FigureButton figure={buying.costFigure} title={t('view.shopping.costIs')}>{formats.money(buying.cost)}</FigureButton>{t('view.shopping.unpriced', { n: buying.unpriced })}</>;
}

/** The view Shopping: what to buy, from what is needed, what is in the house and what is bought already. */
export function Shopping() {
  const t = useSpeaker();
  const { plan, event, formats, readOnly } = useDocument();
  const [section, setSection] = useState(all);
  const [who, setShownWho] = useState(all);
  const [open, setOpen] = useState<string | null>(null);
  const names = useMemo(() => namesOf(plan, formats), [plan, formats]);
  const columns = useMemo(() => shoppingColumns({ t, names, day: event.day, readOnly, open, onOpen: setOpen }), [t, names, event.day, readOnly, open]);
  const { buying } = plan;
  const chooseSection = useCallback((value: string) => { setSection(value); return null; }, []);
  const chooseWho = useCallback((value: string) => { setShownWho(value); return null; }, []);
  const sections = buying.sections.filter((s) => buying.lines.some((l) => l.section === s));
  const shown = sections.includes(section) ? section : all;
  const whose = buying.shoppers.includes(who) ? who : all;
  const rows = useMemo(() => buying.lines.filter((l) => (shown === all || l.section === shown) && (whose === all || l.shopper === whose)), [buying.lines, shown, whose]);
  const toBuy = buying.lines.filter((l) => l.buy.amount.gt(0)).length;
  const nothing = buying.lines.length === 0 && buying.unknown.length === 0;
  return (
    <ViewPage
      title={t('view.shopping')}
      lead={nothing ? undefined : <>{t('view.shopping.lead', { n: toBuy })} <Cost /></>}
      actions={nothing ? undefined : <>
        <Choice label={t('view.shopping.show')} value={shown} onCommit={chooseSection} options={[{ value: all, text: t('view.shopping.allSections') }, ...sections.map((s) => ({ value: s, text: names.section(s) }))]} />
        {buying.shoppers.length > 0 && <Choice label={t('view.shopping.whose')} value={whose} onCommit={chooseWho} options={[{ value: all, text: t('view.shopping.everybody') }, ...buying.shoppers.map((s) => ({ value: s, text: s }))]} />}
        <CopyButton who={whose === all ? undefined : whose} />
        <CsvButton />
      </>}
    >
      {nothing
        ? <EmptyState title={t('view.shopping.emptyTitle')}>{t('view.shopping.empty')}</EmptyState>
        : <DataTable caption={t('view.shopping.table')} rows={rows} columns={columns} numeric={numeric} rowId={keyOf} only={null} groupOf={groupOf} groupName={names.section} detail={{ open, of: panelOf }} />}
      {plan.drinks.unbrewed.length > 0 && (
        <ViewSection title={t('view.shopping.unbrewedTitle')}>
          <ul>{plan.drinks.unbrewed.map((d) => <li key={d.drink}>{t('view.shopping.unbrewed', { drink: names.dish(d.drink), litres: d.litres })}</li>)}</ul>
        </ViewSection>
      )}
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
      <OwnLines />
      <BorrowSection />
      {!nothing && <OwnThings />}
      {!nothing && <SplitSection names={names} />}
    </ViewPage>
  );
}
