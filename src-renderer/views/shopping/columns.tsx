import { amountText, convert, type AmountText } from '../../../shared/measure';
import { wholeNeed, type ShoppingLine } from '../../../shared/buying';
import { shiftDay, type Names } from '../../../shared/sheets';
import type { Message } from '../../../shared/words';
import type { Speaker } from '../../app/speak';
import type { DataColumn } from '../../parts/data-table';
import { FigureButton } from '../../parts/figure-button';
import { NumberField } from '../../parts/number-field';
import styles from './shopping.module.css';

/** What the columns need besides the lines. */
export interface ColumnContext {
  readonly t: Speaker;
  readonly names: Names;
  /** The event's day. */
  readonly day: string;
  readonly readOnly: boolean;
  /** Takes how much of a line's ingredient is in the house, in the line's unit; null for none. */
  readonly setInHouse: (line: ShoppingLine, amount: number | null) => Message | null;
}

/** Grams, millilitres or pieces, so that amounts in different units sort by size. */
function size(line: ShoppingLine): number {
  const { unit } = line.buy;
  const base = unit === 'kg' || unit === 'oz' || unit === 'lb' ? convert(line.buy, 'g') : line.buy;
  return base.amount.toNumber();
}

const packWords = (line: ShoppingLine, t: Speaker): string =>
  t.formats.list(line.packs.map((p) => t('sheets.shopping.packs', { count: p.count, size: t.formats.amount(amountText(p.size)) }).replaceAll(' ', '\u00a0')));

/** Columns of the shopping table. */
export function shoppingColumns({ t, names, day, readOnly, setInHouse }: ColumnContext): readonly DataColumn<ShoppingLine>[] {
  const amount = (a: AmountText): string => t.formats.amount(a);
  return [
    { id: 'section', accessorFn: (l) => l.section, header: t('view.shopping.section'), cell: ({ row }) => names.section(row.original.section), sortFn: 'text', filterFn: 'equalsString' },
    { id: 'ingredient', accessorFn: (l) => l.name, header: t('view.shopping.ingredient'), cell: ({ row: { original: l } }) => <><strong>{l.name}</strong><span className={styles['for']}>{t.formats.list([...new Set(l.origins.map((o) => names.dish(o.dish)))])}</span></>, sortFn: 'text' },
    {
      id: 'need', accessorFn: (l) => l.needFigure.value, header: t('view.shopping.need'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => <FigureButton figure={l.needFigure} title={t('view.shopping.needOf', { ingredient: l.name })}>{amount(amountText(wholeNeed(l)))}</FigureButton>,
    },
    {
      id: 'larder', accessorFn: (l) => l.larder.amount.toNumber(), header: t('view.shopping.larder'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => (readOnly ? amount(amountText(l.larder)) : (
        <div className={styles['house']}>
          <NumberField
            label={t('view.shopping.larderOf', { ingredient: l.name })} bare value={l.larder.amount.gt(0) ? l.larder.amount.toNumber() : null} unit={t.loose(`unit.${l.larder.unit}`, { count: 2 })}
            min={0} max={1_000_000} decimals={3} onClear={() => setInHouse(l, null)} onCommit={(v) => setInHouse(l, v)}
          />
        </div>
      )),
    },
    {
      id: 'buy', accessorFn: size, header: t('view.shopping.buy'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => <><strong>{l.buy.amount.gt(0) ? amount(amountText(l.buy)) : '–'}</strong>{l.packs.length > 0 && <span className={styles['packs']}>{packWords(l, t)}</span>}</>,
    },
    {
      id: 'when', accessorFn: (l) => l.keepsDays ?? 9999, header: t('view.shopping.when'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => <div className={styles['when']}>{l.keepsDays === null || l.keepsDays > 14 ? t('view.shopping.anyDay') : t.formats.date(shiftDay(day, -l.keepsDays))}</div>,
    },
    { id: 'cost', accessorFn: (l) => Number(l.cost ?? 0), header: t('view.shopping.cost.head'), sortFn: 'basic', cell: ({ row: { original: l } }) => (l.cost === undefined ? '' : t.formats.money(l.cost)) },
  ];
}
