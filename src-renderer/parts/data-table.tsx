import { columnFilteringFeature, createFilteredRowModel, createSortedRowModel, filterFn_equalsString, rowSortingFeature, sortFn_basic, sortFn_text, tableFeatures, useTable, type ColumnDef, type RowData } from '@tanstack/react-table';
import { Fragment, type ReactNode } from 'react';
import { useSpeaker } from '../app/speak';
import styles from './table.module.css';

/** What every data table can do: sort by a column, show one value of a column only. */
export const dataTableFeatures = tableFeatures({
  rowSortingFeature, columnFilteringFeature,
  sortedRowModel: createSortedRowModel(), filteredRowModel: createFilteredRowModel(),
  sortFns: { text: sortFn_text, basic: sortFn_basic }, filterFns: { equalsString: filterFn_equalsString },
});
/** A column of a data table. */
export type DataColumn<Row extends RowData> = ColumnDef<typeof dataTableFeatures, Row>;

interface DataTableProps<Row extends RowData> {
  readonly caption: string;
  readonly rows: readonly Row[];
  /** Stable list of columns. */
  readonly columns: readonly DataColumn<Row>[];
  /** Ids of columns whose cells are numbers, set to the right. */
  readonly numeric: readonly string[];
  readonly rowId: (row: Row) => string;
  /** Show only rows with this value in this column. */
  readonly only: { readonly column: string; readonly value: string } | null;
  /** Group of a row, while the rows stand in their own order: a head with `groupName` of it stands above its first row. */
  readonly groupOf?: (row: Row) => string;
  readonly groupName?: (group: string) => string;
  /** More about one row, in a row of its own below it; `open` is that row's id. */
  readonly detail?: { readonly open: string | null; readonly of: (row: Row) => ReactNode };
}

function Direction({ up }: { readonly up: boolean }) {
  return <svg width="10" height="8" viewBox="0 0 10 8" aria-hidden="true" className={styles['direction']}><path d={up ? 'M1 7h8L5 1z' : 'M1 1h8L5 7z'} /></svg>;
}

/**
 * What a cell shows. A cell's function is called, not mounted as a component: it is a new one with each plan, and mounted anew the field
 * being typed in would lose the keyboard.
 */
const contentOf = (cell: unknown, context: unknown): ReactNode => (typeof cell === 'function' ? (cell as (context: unknown) => ReactNode)(context) : (cell as ReactNode));

/** A table whose columns sort by their head. */
export function DataTable<Row extends RowData>({ caption, rows, columns, numeric, rowId, only, groupOf, groupName, detail }: DataTableProps<Row>) {
  const t = useSpeaker();
  const table = useTable({
    features: dataTableFeatures, columns, data: rows, getRowId: rowId, enableMultiSort: false,
    state: { columnFilters: only === null ? [] : [{ id: only.column, value: only.value }] },
  });
  const shown = table.getRowModel().rows;
  const sorted = table.getHeaderGroups().some((group) => group.headers.some((header) => header.column.getIsSorted() !== false));
  return (
    <div className={styles['scroll']}>
      <table className={styles['table']}>
        <caption className="unseen">{caption}</caption>
        <thead>
          {table.getHeaderGroups().map((group) => (
            <tr key={group.id}>
              {group.headers.map((header) => {
                const sorted = header.column.getIsSorted();
                const name = String(header.column.columnDef.header);
                return (
                  <th key={header.id} scope="col" className={numeric.includes(header.id) ? styles['n'] : ''} aria-sort={sorted === false ? 'none' : sorted === 'asc' ? 'ascending' : 'descending'}>
                    {header.column.getCanSort() ? (
                      <button type="button" className={styles['sort']} title={t('view.shopping.sortBy', { column: name })} onClick={() => header.column.toggleSorting()}>
                        {name}{sorted !== false && <Direction up={sorted === 'asc'} />}
                      </button>
                    ) : <span className={styles['sort']}>{name}</span>}
                  </th>
                );
              })}
            </tr>
          ))}
        </thead>
        <tbody>
          {shown.map((row, at) => {
            const before = shown[at - 1];
            const group = groupOf === undefined || sorted ? null : groupOf(row.original);
            const begins = group !== null && (before === undefined || groupOf?.(before.original) !== group);
            return (
              <Fragment key={row.id}>
                {begins && <tr className={styles['group']}><th scope="rowgroup" colSpan={columns.length}>{groupName?.(group) ?? group}</th></tr>}
                <tr>
                  {row.getAllCells().map((cell) => (
                    // oxlint-disable-next-line jsx-a11y/control-has-associated-label -- the cell's control brings its own label
                    <td key={cell.id} data-column={cell.column.id} className={numeric.includes(cell.column.id) ? styles['n'] : ''}>{contentOf(cell.column.columnDef.cell, cell.getContext())}</td>
                  ))}
                </tr>
                {detail?.open === row.id && <tr><td colSpan={columns.length}>{detail.of(row.original)}</td></tr>}
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
