import type { Paper, Sheet } from '../types';

const sizes: Readonly<Record<Paper, string>> = { a4: '210mm 297mm', letter: '215.9mm 279.4mm' };

/** Page size in millimetres. A4 after ISO 216; Letter 8.5 × 11 inch (definition). */
export const paperMm: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

/** Margins of every sheet in millimetres: 12 outside to hold with wet hands; 15 below, where the foot stands. */
export const marginMm = { top: 12, side: 12, bottom: 15 } as const;

/** A text as a CSS string: quotes, backslashes and line ends escaped, so that a title can never end the rule. */
export const cssString = (text: string): string =>
  `"${text.replaceAll(/["\\<\n\r\f]/g, (c) => `\\${(c.codePointAt(0) ?? 0).toString(16)} `)}"`;

const box = (name: string, content: string): string => `@${name} { content: ${content}; vertical-align: middle; white-space: nowrap; }`;

/** Name of the page rules of a sheet, from its place in the document. */
export const pageName = (at: number): string => `sheet${at + 1}`;

/**
 * Page rules of one sheet: size, margins, the foot (headcount, printed at, page n of m) and from the second page on a running head with the version.
 * `alone`: the document holds this sheet only, so that the first page (which has the full head) needs no running head.
 */
export function pageCss(sheet: Sheet, at: number, alone: boolean): string {
  const { margins } = sheet;
  const type = "font-family: 'Atkinson Hyperlegible Next Variable', 'Atkinson Hyperlegible Next', sans-serif; font-size: 9pt; color: #000;";
  const rules = [
    `size: ${sizes[sheet.paper]};`,
    `margin: ${marginMm.top}mm ${marginMm.side}mm ${marginMm.bottom}mm;`,
    type,
    box('bottom-left', cssString(margins.headcount)),
    box('bottom-center', cssString(margins.printed)),
    box('bottom-right', `${cssString(`${margins.page} `)} counter(page) ${cssString(` ${margins.of} `)} counter(pages)`),
    box('top-left', cssString(margins.running)),
  ].join(' ');
  const name = alone ? '' : pageName(at);
  const first = alone ? '@page :first { @top-left { content: none; } }' : '';
  const use = alone ? '' : `[data-page="${name}"] { page: ${name}; break-before: page; }`;
  return `@page ${name} { ${rules} }\n${first}${use}`;
}
