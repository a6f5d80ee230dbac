import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { sheetFontCss, sheetFontFiles } from '../../shared/sheets';

const fontPackage = '@fontsource-variable/atkinson-hyperlegible-next';

/** The text face inside the style sheet, so that a file looks the same wherever it is opened. Empty when the fonts are not installed. */
export async function sheetFonts(): Promise<string> {
  try {
    const folder = join(dirname(createRequire(import.meta.url).resolve(`${fontPackage}/package.json`)), 'files');
    const [latin, latinExt] = await Promise.all([sheetFontFiles.latin, sheetFontFiles.latinExt].map((name) => readFile(join(folder, name), 'base64')));
    return latin === undefined || latinExt === undefined ? '' : sheetFontCss({ latin, latinExt });
  } catch {
    return '';
  }
}
