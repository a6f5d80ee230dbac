import { useEffect, useRef } from 'react';
import type { Figure, Origin, Term } from '../../shared/figure';
import { sourceTitle } from '../../shared/reference';
import { sourceWords } from '../app/sources';
import { useSpeaker, type Speaker } from '../app/speak';
import { useWorking, working } from '../app/working';
import { OwnFigure, ownKey } from './own-figure';
import { sumNumber, workingLine } from './sum-words';
import { OtherTables } from './other-tables';
import styles from './working-panel.module.css';

const labelOf = (t: Speaker, term: Term): string => ('text' in term.label ? term.label.text : t.loose(term.label.word, term.label.params));

function termValue(t: Speaker, term: Term): string {
  if (typeof term.value === 'number') return t.formats.figure(term.value, term.unit);
  return t('part.items', { n: term.value.length });
}

function follow(figure: Figure, path: readonly string[]): { readonly trail: readonly { readonly label: Term['label']; readonly figure: Figure }[] } {
  const trail: { label: Term['label']; figure: Figure }[] = [];
  let at = figure;
  for (const key of path) {
    const term = at.working().terms.find((x) => x.key === key);
    if (term?.figure === undefined) break;
    trail.push({ label: term.label, figure: term.figure });
    at = term.figure;
  }
  return { trail };
}

/** The side panel that shows how a figure was worked out: the rule, each input with its source, the sum in figures. */
export function WorkingPanel() {
  const t = useSpeaker();
  const open = useWorking();
  const heading = useRef<HTMLHeadingElement>(null);
  const place = open === null ? '' : `${open.owner} ${open.path.join(' ')}`;
  useEffect(() => { if (place !== '') heading.current?.focus(); }, [place]);
  const shows = open !== null;
  useEffect(() => {
    if (!shows) return undefined;
    const listen = (e: KeyboardEvent): void => { if (e.key === 'Escape' && !(e.target instanceof HTMLInputElement)) working.close(); };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [shows]);
  if (open === null) return null;
  const { trail } = follow(open.figure, open.path);
  const last = trail.at(-1);
  const figure = last?.figure ?? open.figure;
  const made = figure.working();
  const titles = [open.title, ...trail.map((step) => ('text' in step.label ? step.label.text : t.loose(step.label.word, step.label.params)))];
  const shown = t.formats.figure(figure.value, figure.unit);
  return (
    <aside
      className={styles['panel']} aria-label={t('part.working')}
      data-working={made.rule} data-figure-value={figure.value}
      data-sum={JSON.stringify({ sum: made.sum, values: Object.fromEntries(made.terms.map((x) => [x.key, x.value])) })}
    >
      <div className={styles['head']}>
        <nav aria-label={t('part.trail')}>
          {titles.slice(0, -1).map((title, at) => (
            <button key={`${at} ${title}`} type="button" className={styles['crumb']} onClick={() => working.backTo(at)}>{title} ›</button>
          ))}
        </nav>
        <button type="button" className={styles['close']} onClick={working.close} aria-label={t('part.closeWorking')}>×</button>
      </div>
      <h2 ref={heading} tabIndex={-1} className={styles['title']}>{titles.at(-1)}</h2>
      <p className={styles['value']}>{shown}</p>
      {trail.length === 0 && open.shownAs !== undefined && open.shownAs !== shown && <p className={styles['rule']} data-shown-as>{t('part.shownAs', { text: open.shownAs })}</p>}
      <p className={styles['rule']}>{t.loose(`rule.${made.rule}`)}</p>
      <p className={styles['sum']} data-sum-text>{workingLine(t, made, shown)}</p>
      <h3 className={styles['sub']}>{t('part.inputs')}</h3>
      <ul className={styles['terms']}>
        {made.terms.map((term) => (
          <li key={term.key} data-term={term.key} data-leaf={term.figure === undefined ? (term.origin?.kind ?? '') : undefined} {...tableData(term.origin)}>
            <span className={styles['label']}>{labelOf(t, term)}</span>
            {term.figure === undefined
              ? <span className={styles['amount']}>{termValue(t, term)}</span>
              : <button type="button" className={styles['deeper']} onClick={() => working.into(term.key)}><span className="unseen">{t('part.openInput', { name: labelOf(t, term) })} </span>{termValue(t, term)}</button>}
            {typeof term.value !== 'number' && <ListOf values={term.value} />}
            {term.origin !== undefined && <SourceLine origin={term.origin} />}
            {term.origin !== undefined && <OtherTables origin={term.origin} />}
            {term.origin !== undefined && term.figure === undefined && <OwnFigure key={ownKey(term.origin) ?? ''} origin={term.origin} name={labelOf(t, term)} unit={term.unit} />}
          </li>
        ))}
      </ul>
    </aside>
  );
}

/** The table an input is from, and whether we can name it: read by tests, which open every working. */
const tableData = (origin: Origin | undefined): { readonly 'data-source'?: string; readonly 'data-known'?: boolean } =>
  (origin?.kind === 'table' ? { 'data-source': origin.source, 'data-known': sourceTitle(origin.source) !== undefined } : {});

function ListOf({ values }: { readonly values: readonly number[] }) {
  const t = useSpeaker();
  const shown = values.slice(0, 60).map((v) => sumNumber(t, v)).join(', ');
  return <span className={styles['list']}>{values.length > 60 ? `${shown} …` : shown}</span>;
}

function SourceLine({ origin }: { readonly origin: Origin }) {
  const t = useSpeaker();
  return <span className={styles['source']}>{sourceWords(t, origin)}</span>;
}
