import { expect, test as base } from '@playwright/test';
import type { Page } from '@playwright/test';
import { startHost } from './local-host';
import type { StartedHost } from './local-host';

/** The face under test. */
export interface App {
  readonly page: Page;
  readonly host: StartedHost;
  /** What the console and the page complained about so far. Must be empty at the end of each test. */
  readonly complaints: readonly string[];
}

/** Notes every error and warning of the console, every error of the page and every answer that failed. */
export function collectComplaints(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(`${message.type()}: ${message.text()} (${message.location().url})`);
  });
  page.on('pageerror', (error) => complaints.push(`page error: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  return complaints;
}

/** `app`: the face on a local host of its own with nothing saved yet. The browser is shared by the tests of a worker. */
export const test = base.extend<{ app: App }>({
  app: async ({ page }, run) => {
    const host = await startHost();
    const complaints = collectComplaints(page);
    try {
      await page.goto(host.address);
      await run({ page, host, complaints });
      expect(complaints, 'the console stays clean').toEqual([]);
    } finally {
      await host.stop();
    }
  },
});
export { expect };
