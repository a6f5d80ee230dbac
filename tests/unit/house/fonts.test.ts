import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as fontkit from 'fontkit';
import { describe, expect, it } from 'vitest';

const need = createRequire(import.meta.url);
const files = ['latin', 'latin-ext'].map((s) => need.resolve(`@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-${s}-wght-normal.woff2`));
const fonts = files.map((f) => fontkit.create(readFileSync(f))).filter((f): f is fontkit.Font => 'hasGlyphForCodePoint' in f);
const holds = (sign: string) => fonts.some((f) => f.hasGlyphForCodePoint(sign.codePointAt(0)!));

const root = new URL('../../../', import.meta.url);
/** Files whose text literals reach a person. */
function sources(folder: string): string[] {
  return readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' }).filter((f) => /\.tsx?$/.test(f)).map((f) => `${folder}${f}`);
}
/** Signs outside plain ASCII in the code of a file, comments left out. */
function signsOf(file: string): Set<string> {
  const code = readFileSync(new URL(file, root), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:])\/\/.*$/gm, '$1');
  return new Set(Array.from(code).filter((c) => c.charCodeAt(0) > 126));
}

describe('the shipped text face', () => {
  it('was read: letters are there, a rare sign is not', () => {
    expect(fonts.length).toBe(2);
    expect(holds('a')).toBe(true);
    expect(holds('☃')).toBe(false);
  });

  // Thirds and eighths are written with the fraction slash (1⁄3), which the face turns into a fraction; shapes (triangle, octagon) are drawn.
  it.each([...sources('shared/words/'), ...sources('shared/sheets/'), ...sources('src-renderer/'), ...sources('shared/measure/')])('holds every sign used in %s', (file) => {
    const missing = [...signsOf(file)].filter((sign) => !holds(sign));
    expect(missing).toEqual([]);
  });

  it('has figures of equal width when asked (tabular)', () => {
    for (const font of fonts.slice(0, 1)) {
      const widths = new Set(Array.from('0123456789', (d) => font.layout(d, ['tnum']).glyphs[0]?.advanceWidth));
      expect(widths.size).toBe(1);
    }
  });
});
