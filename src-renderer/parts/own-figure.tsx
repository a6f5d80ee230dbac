import { useRef, useState } from 'react';
import { setHouseFigure } from '../../shared/edit';
import type { Origin } from '../../shared/figure';
import { tableValue } from '../../shared/household';
import { tableWords } from '../app/sources';
import { useDocument } from '../app/document';
import { useSpeaker } from '../app/speak';
import { documentStore } from '../app/store';
import { NumberField } from './number-field';
import styles from './own-figure.module.css';

/** Key of the house figure an input is or could be; null for what no household replaces. */
export const ownKey = (origin: Origin): string | null => (origin.kind === 'table' ? origin.row : origin.kind === 'house' ? (origin.row ?? null) : null);

interface OwnFigureProps { readonly origin: Origin; readonly name: string; readonly unit: string }

/** Under an input that comes from a table: the household's own value in its place, and the way back. */
export function OwnFigure({ origin, name, unit }: OwnFigureProps) {
  const key = ownKey(origin);
  const table = key === null ? null : tableValue(key, unit);
  return key === null || table === null ? null : <Own id={key} name={name} table={table} />;
}

const shownUnit: Readonly<Record<string, string>> = { degC: '°C', C: '°C' };

function Own({ id, name, table }: { readonly id: string; readonly name: string; readonly table: NonNullable<ReturnType<typeof tableValue>> }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const own = event.houseFigures.find((h) => h.figure === id);
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const close = (): null => {
    setOpen(false);
    button.current?.focus();
    return null;
  };
  // Leaving the field after Enter commits once more: that is no step to undo.
  const held = (value: number): boolean => documentStore.get()?.event.houseFigures.find((h) => h.figure === id)?.value === value;
  const unit = shownUnit[table.unit] ?? table.unit;
  const figure = (value: number): string => t.formats.figure(value, table.unit);
  const short = name.charAt(0).toLowerCase() + name.slice(1);
  return (
    <div className={styles['own']} data-own={id}>
      <span>
        {own !== undefined && <strong className={styles['badge']}>{t('own.badge')}</strong>}
        <button ref={button} type="button" className={styles['press']} aria-expanded={open} aria-label={t(own === undefined ? 'own.useOf' : 'own.changeOf', { name: short })} onClick={() => setOpen(!open)}>
          {t(own === undefined ? 'own.use' : 'own.change')}
        </button>
        {own !== undefined && (
          <button type="button" className={styles['press']} aria-label={t('own.backOf', { name: short })} onClick={() => { edit(setHouseFigure(event, id, null)); close(); }}>{t('own.back')}</button>
        )}
      </span>
      {own !== undefined && <span className={styles['note']}>{t('own.table', { value: figure(table.value), source: tableWords(table.source) })}</span>}
      {open && (
        <div className={styles['field']}>
          <NumberField label={t('own.value', { name: short })} value={own?.value ?? table.value} {...(unit === '' ? {} : { unit })} min={table.least} max={table.most}
            step={table.most > 20 ? 1 : 0.05} decimals={6}
            onCommit={(value) => held(value) ? close() : edit(setHouseFigure(event, id, { value, unit: own?.unit ?? (table.unit === 'pieces' ? 'piece' : table.unit), why: own?.why ?? t('own.why') })) ?? close()} />
          <span className={styles['note']}>{own === undefined && `${t('own.table', { value: figure(table.value), source: tableWords(table.source) })} `}{t('own.range', { least: figure(table.least), most: figure(table.most) })}</span>
        </div>
      )}
    </div>
  );
}
