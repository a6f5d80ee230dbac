import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { sheetCss, sheetDocument, sheetPageCss, sheetsOf } from '../../../shared/sheets';
import { lanternPlan } from './lantern';

const sheets = (title: string, paper: 'a4' | 'letter' = 'a4') => {
  const plan = lanternPlan({ event: { title } });
  return sheetsOf(plan, formatsFor(plan.event.preferences, plan.event.day), { paper, printedAt: '9:05', version: 'C', replaces: 'B' });
};

describe('a sheet document', () => {
  it('is complete, in one language, without scripts or addresses to fetch', () => {
    const html = sheetDocument(sheets('Lantern Evening')[0]!, { lang: 'en-GB' });
    expect(html).toMatch(/^<!doctype html>\n<html lang="en-GB">/);
    expect(html).not.toMatch(/<script|https?:|url\(|<link/i);
    expect(html.match(/<h1>/g)).toHaveLength(1);
  });

  it('puts the fonts of the host before the styles', () => {
    const html = sheetDocument(sheets('A')[0]!, { css: '/* faces */', lang: 'en' });
    expect(html.indexOf('/* faces */')).toBeLessThan(html.indexOf('.sheet h1'));
  });

  it('carries the version letter large with its word, and the letter it replaces', () => {
    const html = sheetDocument(sheets('A')[0]!, { lang: 'en' });
    expect(html).toMatch(/<p class="word">Version<\/p>.*<strong>C<\/strong>/);
    expect(html).toContain('replaces version B');
  });

  it('asks for the paper by its measures', () => {
    expect(sheetPageCss(sheets('A', 'a4').slice(0, 1))).toContain('size: 210mm 297mm');
    expect(sheetPageCss(sheets('A', 'letter').slice(0, 1))).toContain('size: 215.9mm 279.4mm');
  });

  it('numbers pages and says who the plan is for at the foot', () => {
    const css = sheetPageCss(sheets('A').slice(0, 1));
    expect(css).toContain('"page " counter(page) " of " counter(pages)');
    expect(css).toContain('"68 adults and 21 children"');
    expect(css).toContain('@page :first');
  });

  it('gives each sheet of a joint document its own pages', () => {
    const all = sheets('A');
    const css = sheetPageCss(all);
    all.forEach((_, i) => expect(css).toContain(`@page sheet${i + 1} {`));
    expect(sheetDocument(all, { lang: 'en' })).toContain('data-page="sheet1"');
  });

  it('keeps any title inside its quotes and tags', () => {
    fc.assert(fc.property(fc.string({ minLength: 1, maxLength: 40, unit: fc.constantFrom('"', '\\', '<', '/', '}', '{', '\n', 'a', '&', ';', "'") }), (raw) => {
      const title = `x${raw}x`;
      const one = sheets(title).slice(0, 1);
      const html = sheetDocument(one, { lang: 'en' });
      expect(html.match(/<\/style>/g)).toHaveLength(1);
      const css = sheetPageCss(one).replaceAll(/"(?:[^"\\\n]|\\.)*"/g, '""');
      expect((css.match(/\{/g) ?? []).length).toBe((css.match(/\}/g) ?? []).length);
      expect(css).not.toMatch(/</);
    }), { numRuns: 60 });
  });
});

describe('the print stylesheet', () => {
  it('uses black and the one grey that passes 7:1, and the type sizes of the paper scale only', () => {
    const colours = new Set(sheetCss.match(/#[0-9a-f]{3,6}\b/gi));
    expect([...colours].sort()).toEqual(['#000', '#595959', '#bfbfbf', '#fff']);
    const sizes = new Set([...sheetCss.matchAll(/font-size: ([\d.]+)pt/g)].map((m) => Number(m[1])));
    for (const size of sizes) expect([9, 11, 14, 20, 28, 40]).toContain(size);
  });

  it('fills nothing but white', () => {
    expect([...sheetCss.matchAll(/background[^;]*;/g)].map((m) => m[0])).toEqual(['background: #fff;']);
  });

  it('repeats table heads and never splits rows', () => {
    expect(sheetCss).toContain('thead { display: table-header-group');
    expect(sheetCss).toMatch(/\.sheet tr \{ break-inside: avoid; \}/);
  });
});
