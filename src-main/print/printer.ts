import { chromium } from 'playwright-core';
import type { Browser } from 'playwright-core';
import { quietFlags, rootFlags, userId } from '../browser';
import { HostProblem } from '../problem';

/** Turns complete HTML documents into PDFs. */
export interface Printer {
  pdf(html: string): Promise<Uint8Array>;
  close(): Promise<void>;
}

/** How a sheet becomes a PDF: the document's own paper size, colours as drawn, tags for screen readers, an outline. */
export const pdfOptions = { preferCSSPageSize: true, printBackground: true, tagged: true, outline: true } as const;

/** Starts the browser that prints. */
export type Launch = (program: string) => Promise<Browser>;

const launchQuietly: Launch = (program) => chromium.launch({
  executablePath: program,
  chromiumSandbox: userId() !== 0,
  args: [...quietFlags, ...rootFlags(userId())],
  handleSIGINT: false,
  handleSIGTERM: false,
});

/** A browser of the printer and how many sheets it has in hand. */
interface Press {
  readonly browser: Promise<Browser>;
  sheets: number;
}

/** A printer that starts its browser at the first sheet. `browser`: path of the program, or null when there is none. `launch`: a test hands in its own. */
export function openPrinter(browser: string | null, launch: Launch = launchQuietly): Printer {
  const presses = new Set<Press>();
  let running: Press | undefined;
  const start = (program: string): Press => {
    if (running !== undefined) return running;
    const press: Press = { browser: launch(program), sheets: 0 };
    presses.add(press);
    // A browser that ended is started anew for the next sheet.
    void press.browser.then((opened) => opened.on('disconnected', () => retire(press)), () => retire(press));
    running = press;
    return press;
  };
  const retire = (press: Press): void => {
    if (running === press) running = undefined;
  };
  const end = async (press: Press): Promise<void> => {
    presses.delete(press);
    await press.browser.then((open) => open.close()).catch(() => {});
  };
  return {
    pdf: async (html) => {
      if (browser === null) throw HostProblem.of('host.no-browser');
      const press = start(browser);
      press.sheets += 1;
      try {
        return await printOnce(await press.browser, html);
      } catch (error) {
        // It may be broken: the next sheet gets another one.
        retire(press);
        throw HostProblem.of('host.print-failed', { what: firstLine(error) });
      } finally {
        press.sheets -= 1;
        // Sheets it still has in hand are printed first.
        if (press !== running && press.sheets === 0) await end(press);
      }
    },
    close: async () => {
      running = undefined;
      await Promise.all([...presses].map(end));
    },
  };
}

/** A sheet is text and style only: no scripts run and nothing is fetched while it is printed. */
async function printOnce(browser: Browser, html: string): Promise<Uint8Array> {
  const context = await browser.newContext({ offline: true, javaScriptEnabled: false, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.setContent(html, { waitUntil: 'load', timeout: 20_000 });
    return await page.pdf(pdfOptions);
  } finally {
    await context.close();
  }
}

const firstLine = (error: unknown): string => (error instanceof Error ? error.message : String(error)).split('\n')[0] ?? '';
