import type { Browser } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { findBrowser } from '../../../src-main/browser';
import { openPrinter, pagesOf } from '../../../src-main/print';

/** A sheet of so many pages with a script and a picture that must come to nothing. */
const html = (pages: number) => `<!doctype html><html lang="en"><title>t</title><style>@page{size:A4}p+p{break-before:page}</style><body>${'<p>sheet</p>'.repeat(pages)}<script>document.body.innerHTML='<p>a</p><p>b</p><p>c</p><p>d</p><p>e</p><p>f</p>'</script><img src="http://127.0.0.1:9/x.png" alt=""></body></html>`;

describe('counting pages', () => {
  it('counts pages and not the tree they hang on', () => {
    expect(pagesOf(Buffer.from('<</Type /Pages /Count 2>> <</Type /Page /x>> <</Type/Page>> <</Type /PageLabel>>'))).toBe(2);
    expect(pagesOf(new Uint8Array())).toBe(0);
  });
});

describe('a printer without a browser', () => {
  it('says what to install', async () => {
    await expect(openPrinter(null).pdf('<p>x</p>')).rejects.toMatchObject({ problem: { code: 'no-browser' } });
  });
  it('says so when the program is no browser', async () => {
    const printer = openPrinter(process.execPath);
    await expect(printer.pdf('<p>x</p>')).rejects.toMatchObject({ problem: { code: 'print-failed' } });
    await printer.close();
  }, 60_000);
});

/** A browser that prints what `print` answers, and counts how often it was closed. */
function fakeBrowser(print: (html: string) => Promise<Buffer>): { browser: Browser; closed: () => number } {
  let [closed, html] = [0, ''];
  const page = { setContent: (given: string) => { html = given; return Promise.resolve(); }, pdf: () => print(html) };
  const browser = {
    on: () => browser,
    close: () => { closed += 1; return Promise.resolve(); },
    newContext: () => Promise.resolve({ newPage: () => Promise.resolve(page), close: () => Promise.resolve() }),
  } as unknown as Browser;
  return { browser, closed: () => closed };
}

describe('a printer whose sheets fail', () => {
  it('ends the browser of each failed sheet, and starts another for the next', async () => {
    const made = Array.from({ length: 3 }, (_, n) => fakeBrowser(() => (n < 2 ? Promise.reject(new Error('crashed')) : Promise.resolve(Buffer.from('%PDF')))));
    let launched = 0;
    const printer = openPrinter('/a/browser', () => Promise.resolve(made[launched++]?.browser as Browser));
    for (let sheet = 0; sheet < 2; sheet += 1) await expect(printer.pdf('x')).rejects.toMatchObject({ problem: { code: 'print-failed' } });
    expect(Buffer.from(await printer.pdf('x')).toString()).toBe('%PDF');
    expect([launched, made.map(({ closed }) => closed())]).toEqual([3, [1, 1, 0]]);
    await printer.close();
    expect(made.map(({ closed }) => closed())).toEqual([1, 1, 1]);
  });

  it('lets sheets that are being printed come to their end first', async () => {
    const slow = new AbortController();
    const { browser, closed } = fakeBrowser((html) => (html === 'bad' ? Promise.reject(new Error('bad')) : new Promise((resolve) => { slow.signal.addEventListener('abort', () => resolve(Buffer.from('%PDF'))); })));
    const printer = openPrinter('/a/browser', () => Promise.resolve(browser));
    const first = printer.pdf('good');
    // One after the other: the fake has one page.
    await new Promise((resolve) => { setTimeout(resolve, 10); });
    await expect(printer.pdf('bad')).rejects.toMatchObject({ problem: { code: 'print-failed' } });
    expect(closed()).toBe(0);
    slow.abort();
    expect(Buffer.from(await first).toString()).toBe('%PDF');
    expect(closed()).toBe(1);
  });
});

describe.runIf(findBrowser() !== null)('a printer with a browser', () => {
  it('prints on the paper the sheet asks for, page by page, runs no script and fetches nothing', async () => {
    const printer = openPrinter(findBrowser());
    const [one, three] = await Promise.all([printer.pdf(html(1)), printer.pdf(html(3))]);
    await printer.close();
    expect(Buffer.from(one.subarray(0, 5)).toString()).toBe('%PDF-');
    expect([pagesOf(one), pagesOf(three)]).toEqual([1, 3]);
    expect(Buffer.from(one).toString('latin1')).toMatch(/\/MediaBox\s*\[0 0 59[45]\S* 84[12]/);
    expect(Buffer.from(one).toString('latin1')).toContain('/StructTreeRoot');
  }, 60_000);
});
