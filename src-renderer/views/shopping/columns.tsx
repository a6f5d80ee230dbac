import { amountOf, amountText, convert, type AmountText } from '../../../shared/measure';
import { wholeNeed, type ShoppingLine } from '../../../shared/buying';
import { shiftDay, type Names } from '../../../shared/sheets';
import type { Speaker } from '../../app/speak';
import type { DataColumn } from '../../parts/data-table';
import { FigureButton } from '../../parts/figure-button';
import { NumberField } from '../../parts/number-field';
import { setAllBought, setInHouse, setPackPrice } from './act';
import styles from './shopping.module.css';

/** What the columns need besides the lines. */
export interface ColumnContext {
  readonly t: Speaker;
  readonly names: Names;
  /** The event's day. */
  readonly day: string;
  readonly readOnly: boolean;
  /** Key of the line whose panel is open. */
  readonly open: string | null;
  readonly onOpen: (key: string | null) => void;
}

/** Grams, millilitres or pieces, so that amounts in different units sort by size. */
function size(line: ShoppingLine): number {
  const { unit } = line.buy;
  const base = unit === 'kg' || unit === 'oz' || unit === 'lb' ? convert(line.buy, 'g') : line.buy;
  return base.amount.toNumber();
}

/** Packs by number and size; nothing for one single pack, which says the same as the amount. */
const packWords = (line: ShoppingLine, t: Speaker): string => (line.packs.length === 1 && line.packs[0]?.count === 1 ? '' : t.formats.list(line.packs.map((p) => t('sheets.shopping.packs', { count: p.count, size: t.formats.amountOf(amountText(p.size), line.ingredient) }).replaceAll(' ', '\u00a0'))));

const order = { open: 0, part: 1, later: 2, bought: 3, house: 4 } as const;

/** Dishes named under a line, those that use most first; the rest are counted. */
const mostNamed = 2;

function Name({ line, t, names }: { readonly line: ShoppingLine; readonly t: Speaker; readonly names: Names }) {
  const dishes = [...new Set(line.origins.toSorted((a, b) => b.amount.amount.cmp(a.amount.amount)).map((o) => names.dish(o.dish)))];
  const uses = t.formats.list(dishes.length > mostNamed + 1 ? [...dishes.slice(0, mostNamed), t('sheets.shopping.moreDishes', { n: dishes.length - mostNamed })] : dishes);
  const said = [
    ...(line.state === 'later' ? [t('view.shopping.leftForLater')] : []), ...(line.note === null ? [] : [t.message(line.note)]),
    ...(line.shopper === null ? [] : [t('buying.sheet.who', { who: line.shopper })]),
  ];
  return (
    <>
      <strong className={line.state === 'bought' ? styles['done'] : ''}>{line.name}</strong>
      <span className={styles['for']}>{line.kind === 'own' ? t('view.shopping.ownLine') : uses}</span>
      {said.map((text) => <span key={text} className={styles['said']}>{text}</span>)}
    </>
  );
}

/** When it may be bought at the earliest, or on which day the cook wants it. */
function whenWords(line: ShoppingLine, day: string, t: Speaker): string {
  if (line.when !== null) return t('buying.sheet.on', { day: t.formats.date(line.when) });
  return line.keepsDays === null || line.keepsDays > 14 ? t('view.shopping.anyDay') : t.formats.date(shiftDay(day, -line.keepsDays));
}

/** Gas bottles stand in Kitchen, and an own line is bought as it is written: neither has an amount in the house to enter here. */
const entersHouse = (line: ShoppingLine): boolean => line.kind !== 'own' && line.ingredient !== 'gas-bottle';

/** Columns of the shopping table. */
export function shoppingColumns({ t, names, day, readOnly, open, onOpen }: ColumnContext): readonly DataColumn<ShoppingLine>[] {
  const amount = (a: AmountText, line: ShoppingLine): string => t.formats.amountOf(a, line.ingredient);
  return [
    {
      id: 'bought', accessorFn: (l) => order[l.state], header: t('view.shopping.bought'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => (
        <input type="checkbox" className={styles['tick']} aria-label={t('view.shopping.boughtOf', { ingredient: l.name })} checked={l.state === 'bought'} disabled={readOnly || l.state === 'house'}
          onChange={(e) => { setAllBought(l, e.currentTarget.checked); }} />
      ),
    },
    { id: 'ingredient', accessorFn: (l) => l.name, header: t('view.shopping.ingredient'), cell: ({ row: { original: l } }) => <Name line={l} t={t} names={names} />, sortFn: 'text' },
    {
      id: 'need', accessorFn: (l) => l.needFigure.value, header: t('view.shopping.need'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => (
        <>
          <FigureButton figure={l.needFigure} title={t('view.shopping.needOf', { ingredient: l.name })}>{amount(amountText(wholeNeed(l)), l)}</FigureButton>
          {l.reserve !== undefined && <span className={styles['packs']}><FigureButton figure={l.reserve} title={t('view.shopping.reserveOf', { ingredient: l.name })}>{t('buying.reserve', { amount: amountText(amountOf(l.reserve.value, l.need.unit)) })}</FigureButton></span>}
        </>
      ),
    },
    {
      id: 'larder', accessorFn: (l) => l.larder.amount.toNumber(), header: t('view.shopping.larder'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => (readOnly || !entersHouse(l) ? (l.larder.amount.gt(0) ? amount(amountText(l.larder), l) : '') : (
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
      cell: ({ row: { original: l } }) => (l.buy.amount.gt(0)
        ? <><FigureButton figure={l.buyFigure} title={t('view.shopping.buyOf', { ingredient: l.name })}><strong>{amount(amountText(l.buy), l)}</strong></FigureButton><span className={styles['packs']}>{packWords(l, t)}</span></> : '–'),
    },
    { id: 'when', accessorFn: (l) => l.when ?? l.keepsDays ?? 9999, header: t('view.shopping.when'), sortFn: 'basic', cell: ({ row: { original: l } }) => <div className={styles['when']}>{whenWords(l, day, t)}</div> },
    {
      id: 'cost', accessorFn: (l) => Number(l.cost ?? 0), header: t('view.shopping.cost.head'), sortFn: 'basic',
      cell: ({ row: { original: l } }) => (
        <div className={styles['price']}>
          {!readOnly && (
            <NumberField label={t('view.shopping.priceOf', { ingredient: l.name, per: amount(amountText(l.price.per), l) })} bare value={l.price.price === null ? null : Number(l.price.price)} min={0} max={1_000_000} decimals={2}
              onClear={() => setPackPrice(l, null)} onCommit={(v) => setPackPrice(l, v)} />
          )}
          <span className={styles['for']}>{t('view.shopping.per', { per: amount(amountText(l.price.per), l) })}</span>
          {l.costFigure !== undefined && l.cost !== undefined && Number(l.cost) > 0 && <FigureButton figure={l.costFigure} title={t('view.shopping.costOf', { ingredient: l.name })}>{t.formats.money(l.cost)}</FigureButton>}
        </div>
      ),
    },
    {
      id: 'more', header: t('view.shopping.more'), enableSorting: false,
      cell: ({ row: { original: l } }) => (
        <button type="button" className={styles['more']} aria-expanded={open === l.key} onClick={() => onOpen(open === l.key ? null : l.key)}>
          {t(open === l.key ? 'view.shopping.less' : 'view.shopping.more')}<span className="unseen"> {l.name}</span>
        </button>
      ),
    },
  ];
}
