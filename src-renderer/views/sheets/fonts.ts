import latin from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url';
import latinExt from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-normal.woff2?url';
import { sheetFontCss } from '../../../shared/sheets';

async function base64(address: string): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(text);
}

let made: Promise<string> | null = null;

/** The text face inside the document, so that a PDF looks as on this screen and a kept HTML file needs nothing beside it. */
export function fontCss(): Promise<string> {
  made ??= Promise.all([base64(latin), base64(latinExt)]).then(([a, b]) => sheetFontCss({ latin: a, latinExt: b }));
  return made;
}
