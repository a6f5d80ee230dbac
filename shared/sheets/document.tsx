import { renderToStaticMarkup } from 'react-dom/server';
import { cardsCss } from './cards/css-cards';
import { checklistsCss } from './checklists/css-checklists';
import { labelsCss } from './labels/css-labels';
import { frameCss } from './paper/css-frame';
import { tableCss } from './paper/css-tables';
import { pageCss, pageName } from './paper/page-css';
import type { Sheet } from './types';

/** The print stylesheet of all sheets, without page rules and fonts. One source for preview, print and PDF. */
export const sheetCss = `${frameCss}${tableCss}${labelsCss}${cardsCss}${checklistsCss}`;

/** Page rules for these sheets printed as one document: size, margins, head and foot of every page. */
export const sheetPageCss = (sheets: readonly Sheet[]): string => sheets.map((s, at) => pageCss(s, at, sheets.length === 1)).join('\n');

/** What a full document needs from its host: `css` is put before the sheet styles (font faces); `lang` is a language tag such as `en-GB`. */
export interface DocumentOptions {
  readonly css?: string;
  readonly lang: string;
}

/** A complete HTML document of one or several sheets, ready to be printed or kept. It has no script and fetches nothing. */
export function sheetDocument(sheets: Sheet | readonly Sheet[], options: DocumentOptions): string {
  const list = 'kind' in sheets ? [sheets] : sheets;
  const css = `${options.css ?? ''}\nhtml, body { margin: 0; padding: 0; background: #fff; }\n${sheetCss}\n${sheetPageCss(list)}`;
  const html = renderToStaticMarkup(
    <html lang={options.lang}>
      <head>
        <meta charSet="utf-8" />
        <title>{list.map((s) => s.title).join(', ')}</title>
        <style>{css}</style>
      </head>
      <body>
        {list.map((s, at) => <div key={s.id} data-page={list.length === 1 ? undefined : pageName(at)}>{s.body}</div>)}
      </body>
    </html>,
  );
  return `<!doctype html>\n${html}\n`;
}
