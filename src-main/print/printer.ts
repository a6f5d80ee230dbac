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

/** A printer that starts its browser at the first sheet. `browser`: path of the program, or null when there is none. */
export function openPrinter(browser: string | null): Printer {
  let running: Promise<Browser> | undefined;
  const start = (): Promise<Browser> => {
    if (browser === null) throw HostProblem.of('host.no-browser');
    running ??= chromium.launch({
      executablePath: browser,
      chromiumSandbox: userId() !== 0,
      args: [...quietFlags, ...rootFlags(userId())],
      handleSIGINT: false,
      handleSIGTERM: false,
    }).then((opened) => {
      // A browser that ended is started anew for the next sheet.
      opened.on('disconnected', () => {
        running = undefined;
      });
      return opened;
    });
    return running;
  };
  return {
    pdf: async (html) => {
      try {
        return await printOnce(await start(), html);
      } catch (error) {
        if (error instanceof HostProblem) throw error;
        running = undefined;
        throw HostProblem.of('host.print-failed', { what: firstLine(error) });
      }
    },
    close: async () => {
      const open = await running?.catch(() => undefined);
      await open?.close();
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
