import { defineConfig } from '@playwright/test';
import { findBrowser, quietFlags } from './src-main/browser';

const browser = findBrowser();

// The real face on the real local host, in the browser this computer has. `npm test` finds or installs one first.
export default defineConfig({
  testDir: 'tests/faces',
  outputDir: 'test-results',
  fullyParallel: true,
  workers: 2,
  retries: 0,
  forbidOnly: Boolean(process.env['CI']),
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: [['list']],
  use: {
    browserName: 'chromium',
    headless: true,
    viewport: { width: 1280, height: 860 },
    locale: 'en-GB',
    trace: 'retain-on-failure',
    screenshot: 'only-on-failure',
    launchOptions: { args: [...quietFlags], ...(browser === null ? {} : { executablePath: browser }) },
  },
});
