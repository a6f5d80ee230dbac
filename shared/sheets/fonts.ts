/** Name of the text face, as the style sheets name it. */
export const sheetFace = 'Atkinson Hyperlegible Next Variable';

/** Files of the text face in the package `@fontsource-variable/atkinson-hyperlegible-next`, folder `files`. The second holds ⅓ ⅔ and arrows. */
export const sheetFontFiles = {
  latin: 'atkinson-hyperlegible-next-latin-wght-normal.woff2',
  latinExt: 'atkinson-hyperlegible-next-latin-ext-wght-normal.woff2',
} as const;

const face = (data: string, range: string): string =>
  `@font-face { font-family: '${sheetFace}'; font-weight: 200 800; font-style: normal; src: url(data:font/woff2;base64,${data}) format('woff2'); unicode-range: ${range}; }`;

/** Font rules with the files inside, for `DocumentOptions.css`. Each value is the base64 text of one file of `sheetFontFiles`. */
export function sheetFontCss(base64: { readonly latin: string; readonly latinExt: string }): string {
  // The extended file first: where both hold a sign, the later rule is asked first.
  return [face(base64.latinExt, 'U+0100-02FF,U+1E00-1EFF,U+2020,U+2070-209F,U+20A0-20AB,U+20AD-20C0,U+2113,U+2150-218F,U+2190-22FF'), face(base64.latin, 'U+0000-00FF,U+0131,U+0152-0153,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122,U+2212,U+2215')].join('\n');
}
