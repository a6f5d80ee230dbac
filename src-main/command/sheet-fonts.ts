import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const faces = [
  { family: 'Atkinson Hyperlegible Next Variable', weight: '200 800', file: '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2' },
  { family: 'Atkinson Hyperlegible Next Variable', weight: '200 800', file: '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-normal.woff2' },
];
const ranges = [
  'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+0304,U+0308,U+0329,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD',
  'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2150-218F,U+2C60-2C7F,U+A720-A7FF',
];

/** The face of the sheets inside the style sheet, so that a file looks the same wherever it is opened. Empty when the fonts are not installed. */
export async function sheetFonts(): Promise<string> {
  const require = createRequire(import.meta.url);
  const rules = await Promise.all(faces.map(async ({ family, weight, file }, at) => {
    try {
      const [scope = '', name = ''] = file.split('/');
      const folder = dirname(require.resolve(`${scope}/${name}/package.json`));
      const bytes = await readFile(join(folder, ...file.split('/').slice(2)));
      return `@font-face{font-family:'${family}';font-style:normal;font-weight:${weight};src:url(data:font/woff2;base64,${bytes.toString('base64')}) format('woff2');unicode-range:${ranges[at] ?? 'U+0-10FFFF'}}`;
    } catch {
      return '';
    }
  }));
  return rules.join('\n');
}
