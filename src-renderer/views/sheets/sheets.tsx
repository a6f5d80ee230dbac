import { useMemo } from 'react';
import { setPreference } from '../../../shared/edit';
import { printsOf, sheetsOf, type Sheet } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { EmptyState } from '../../parts/empty-state';
import { Tick } from '../../parts/tick';
import { ViewPage } from '../../parts/view-page';
import { PagePicture } from './page-picture';
import { PrintRoot } from './print-root';
import { printedNow, printedThen } from './printed-now';
import { useSheetStyles } from './sheet-styles';
import { usePrinting, type Printing } from './use-printing';
import styles from './sheets.module.css';

const scale = 0.44;

/** The view Sheets: every page as it will be printed, and whether the papers on the wall still match the plan. */
export function Sheets() {
  const t = useSpeaker();
  const { plan, event, formats, edit, readOnly } = useDocument();
  const printing = usePrinting();
  useSheetStyles();
  const sheets = useMemo(() => sheetsOf(plan, formats, { paper: event.preferences.paper, printedAt: printedNow(formats).words }), [plan, formats, event.preferences.paper]);
  if (sheets.length === 0) return <ViewPage title={t('view.sheets')}><EmptyState title={t('view.sheets.emptyTitle')}>{t('view.sheets.empty')}</EmptyState></ViewPage>;
  const all = sheets.map((s) => s.id);
  const joint = `${event.title}, ${t('view.sheets.joint')}`;
  return (
    <ViewPage
      title={t('view.sheets')} lead={t('view.sheets.lead')}
      actions={<>
        <Choice label={t('view.sheets.paper')} value={event.preferences.paper} options={[{ value: 'a4', text: 'A4' }, { value: 'letter', text: 'Letter' }]}
          onCommit={(paper) => edit(setPreference(event, { paper }))} />
        <Button kind="primary" isDisabled={printing.busy} onPress={() => void printing.pdf(all, joint)}>{t('view.sheets.all')}</Button>
      </>}
    >
      <Said printing={printing} of={all.length === 1 ? '' : all.join(' ')} />
      {event.guests.allergies.length > 0 && !readOnly && (
        <Tick label={t('view.sheets.allergies')} checked={event.preferences.printAllergies} onChange={(printAllergies) => { edit(setPreference(event, { printAllergies })); }} />
      )}
      <ul className={styles['list']}>
        {sheets.map((sheet) => (
          <li key={sheet.id} data-sheet-row={sheet.id}>
            <div className={styles['bar']}>
              <h3>{sheet.title}</h3>
              <Standing sheet={sheet} />
              <Button isDisabled={printing.busy} label={t('view.sheets.printOf', { title: sheet.title })} onPress={() => void printing.paper([sheet.id], sheet.title)}>{t('view.sheets.print')}</Button>
              <Button isDisabled={printing.busy} label={t('view.sheets.pdfOf', { title: sheet.title })} onPress={() => void printing.pdf([sheet.id], sheet.title)}>{t('view.sheets.pdf')}</Button>
              <Said printing={printing} of={sheet.id} />
            </div>
            {/* A strip of pages scrolls sideways; the keyboard can reach it. */}
            {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
            <section className={styles['strip']} aria-label={sheet.title} tabIndex={0}><PagePicture sheet={sheet} scale={scale} /></section>
          </li>
        ))}
      </ul>
      {printing.onPage !== null && <PrintRoot sheets={printing.onPage} onDone={printing.done} />}
    </ViewPage>
  );
}

/** What becomes of the PDF, beside the button that was pressed for it. */
function Said({ printing, of }: { readonly printing: Printing; readonly of: string }) {
  const t = useSpeaker();
  return <output className={styles['written']}>{printing.pressed === of && (printing.busy ? t('view.sheets.working') : printing.written !== null && t('view.sheets.written', printing.written))}</output>;
}

/** Whether the last print of this sheet still says what the plan says. */
function Standing({ sheet }: { readonly sheet: Sheet }) {
  const t = useSpeaker();
  const { event } = useDocument();
  const last = printsOf(event, sheet).at(-1);
  if (last === undefined) return <p className={styles['state']}>{t('view.sheets.never')}</p>;
  const at = printedThen(t.formats, last.at);
  if (sheet.issued) return <p className={styles['state']}>{t('view.sheets.matches', { version: last.version, at })}</p>;
  return <p className={`${styles['state']} ${styles['stale']}`}><svg width="14" height="12" viewBox="0 0 14 12" aria-hidden="true"><path d="M1 11h12L7 1z" /></svg> {t('view.sheets.stale', { version: last.version, at, next: sheet.version })}</p>;
}
