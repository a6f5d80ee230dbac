import { useLayoutEffect, useRef, useState } from 'react';
import { marginMm, paperMm, type Sheet } from '../../../shared/sheets';
import { useSpeaker } from '../../app/speak';
import styles from './sheets.module.css';

const pxPerMm = 96 / 25.4;
const mm = (n: number): string => `${n}mm`;

/**
 * The pages of a sheet in true proportion: the very elements that are printed, broken into columns of the paper's size.
 * Columns break like pages do, so rows stay whole here where they stay whole on paper.
 */
export function PagePicture({ sheet, scale }: { readonly sheet: Sheet; readonly scale: number }) {
  const t = useSpeaker();
  const flow = useRef<HTMLDivElement>(null);
  const [pages, setPages] = useState(1);
  const { width, height } = paperMm[sheet.paper];
  const { body } = sheet;
  useLayoutEffect(() => {
    // Another body breaks into another number of pages.
    if (body === null) return;
    const wide = flow.current?.scrollWidth ?? 0;
    setPages(Math.max(1, Math.round((wide / pxPerMm + 2 * marginMm.side) / width)));
  }, [body, width]);
  const numbers = Array.from({ length: pages }, (_, i) => i);
  return (
    <figure className={styles['picture']} aria-label={t('view.sheets.picture', { title: sheet.title, pages })}>
      <div
        className={styles['scaled']} style={{ width: `calc(${mm(width)} * ${pages * scale} + ${(pages - 1) * 12}px)`, height: `calc(${mm(height)} * ${scale})` }}
      >
        <div inert aria-hidden="true" style={{ transform: `scale(${scale})`, transformOrigin: '0 0', width: mm(width * pages), height: mm(height) }}>
          {numbers.map((i) => <div key={i} className={styles['paper']} style={{ left: mm(i * width), width: mm(width), height: mm(height) }} />)}
          <div
            ref={flow} className={styles['flow']}
            style={{ left: mm(marginMm.side), top: mm(marginMm.top), width: mm(width - 2 * marginMm.side), height: mm(height - marginMm.top - marginMm.bottom), columnWidth: mm(width - 2 * marginMm.side), columnGap: mm(2 * marginMm.side) }}
          >
            {body}
          </div>
          {numbers.filter((i) => i > 0).map((i) => <p key={i} className={styles['running']} style={{ left: mm(i * width + marginMm.side) }}>{sheet.margins.running}</p>)}
          {numbers.map((i) => (
            <div key={i} className={styles['foot']} style={{ left: mm(i * width + marginMm.side), width: mm(width - 2 * marginMm.side), top: mm(height - marginMm.bottom) }}>
              <span>{sheet.margins.headcount}</span><span>{sheet.margins.printed}</span><span>{sheet.margins.page} {i + 1} {sheet.margins.of} {pages}</span>
            </div>
          ))}
        </div>
      </div>
    </figure>
  );
}
