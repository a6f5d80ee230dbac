import { execFileSync } from 'node:child_process';
import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';

/** Text of a PDF, a string per page, as laid out. */
const pagesOf = (path: string): string[] => execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' }).split('\f').slice(0, -1);
const infoOf = (path: string): string => execFileSync('pdfinfo', [path], { encoding: 'utf8' });

test.describe('Sheets', () => {
  test('shows every sheet as pages, and is accessible', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    const titles = await page.locator('[data-sheet-row] > div:first-child > h3').allTextContents();
    for (const part of ['Fry batches', 'Drinks rounds', 'Shopping list', 'Make ahead', 'Day plan', 'Cook: jobs of the day']) expect(titles.some((t) => t.startsWith(part)), part).toBe(true);
    await expectAccessible(page);
  });

  test('makes no sheet that has nothing to say', async ({ app: { page } }) => {
    await openDemo(page, 'Freezer Sunday');
    await goTo(page, 'Sheets');
    await expect(page.getByRole('heading', { name: 'Shopping list' }).first()).toBeVisible();
    expect((await page.locator('[data-sheet-row] > div:first-child > h3').allTextContents()).some((t) => t.startsWith('Fry batches'))).toBe(false);
  });

  for (const paper of ['A4', 'Letter'] as const) {
    test(`writes every sheet as a PDF on ${paper}: paper, page numbers, repeated heads, headcount, whole rows`, async ({ app: { page } }) => {
      test.setTimeout(300_000);
      await openDemo(page, 'Lantern Evening');
      await goTo(page, 'Sheets');
      await page.getByLabel('Paper', { exact: true }).selectOption({ label: paper });
      const rows = page.locator('[data-sheet-row]');
      const count = await rows.count();
      expect(count).toBeGreaterThan(8);
      for (let at = 0; at < count; at += 1) {
        const row = rows.nth(at);
        const title = (await row.locator('h3').first().textContent()) ?? '';
        const shown = Number(/(\d+) pages?$/.exec((await row.locator('figure').getAttribute('aria-label')) ?? '')?.[1]);
        await row.getByRole('button', { name: `PDF of ${title}` }).click();
        const said = page.locator('main output', { hasText: 'PDF made' });
        await expect(said).toContainText('.pdf', { timeout: 30_000 });
        const path = /PDF made: (.*\.pdf), /.exec((await said.textContent()) ?? '')?.[1] ?? '';
        const info = infoOf(path);
        expect(info).toMatch(paper === 'A4' ? /Page size:\s+59[45][.\d]* x 84[12][.\d]* pts/ : /Page size:\s+612 x 792 pts/);
        expect(info).toMatch(/Tagged:\s+yes/);
        const pages = pagesOf(path);
        expect(Math.abs(pages.length - shown), `${title}: the picture shows ${shown} pages, the PDF has ${pages.length}`).toBeLessThanOrEqual(1);
        pages.forEach((text, i) => {
          expect(text, title).toContain(`page ${i + 1} of ${pages.length}`);
          expect(text, title).toContain('68 adults and 21 children');
          expect(text, title).toMatch(/Version\s+A/);
        });
        const [head] = title.startsWith('Fry batches') ? ['Lift out'] : title.startsWith('Shopping') ? ['Needed'] : ['Done'];
        // Each page that holds rows holds their head again.
        for (const text of pages) if (/^\s*\d{1,2}\s+\d{1,2}:\d\d/m.test(text)) expect(text, title).toContain(head);
        await expect(row.locator('p').first()).toContainText('still matches the plan');
      }
    });
  }

  test('the fry sheet holds every batch and bowl once, each row whole, in figures that can be read from a metre away', async ({ app: { page } }) => {
    test.setTimeout(120_000);
    const { frying } = JSON.parse(execFileSync('node', ['src-main/command/bin.mjs', 'plan', 'assets/app/demo/lantern-evening.brimful', '--json'], { encoding: 'utf8', maxBuffer: 1e8 })) as { frying: { batches: { number: number; station: string; pieces: number; bowls: number[] }[] } };
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    for (const station of new Set(frying.batches.map((b) => b.station))) {
      const row = page.locator(`[data-sheet-row="fry-${station}"]`);
      await row.getByRole('button', { name: /^PDF of/ }).click();
      const said = page.locator('main output', { hasText: 'PDF made' });
      await expect(said).toContainText('fry-batches', { timeout: 30_000 });
      const path = /PDF made: (.*\.pdf), /.exec((await said.textContent()) ?? '')?.[1] ?? '';
      const rows = pagesOf(path).flatMap((text) => [...text.matchAll(/^ *(\d+) +(\d\d:\d\d) +(\d\d:\d\d) +(\d+) .* (\d\d:\d\d) *$/gm)].map((m) => `${m[1]} ${m[4]}`));
      const own = frying.batches.filter((b) => b.station === station);
      expect(rows).toEqual(own.map((b) => `${b.number} ${b.pieces}`));
      const bowls = new Set(own.flatMap((b) => b.bowls));
      expect([...pagesOf(path).join('').matchAll(/Bowl (\d+):/g)].map((m) => Number(m[1]))).toEqual([...bowls]);
      // Height of a word's box is its line at the size of its type: 28 points or more for a time of putting in.
      const boxes = execFileSync('pdftotext', ['-bbox', path, '-'], { encoding: 'utf8' });
      const tall = [...boxes.matchAll(/yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">\d\d:\d\d</g)].filter((m) => Number(m[2]) - Number(m[1]) >= 28);
      expect(tall.length).toBe(own.length);
    }
  });

  test('writes all sheets as one PDF, each with its own foot', async ({ app: { page } }) => {
    test.setTimeout(120_000);
    await openDemo(page, 'Freezer Sunday');
    await goTo(page, 'Sheets');
    await page.getByRole('button', { name: 'All sheets as one PDF' }).click();
    const said = page.locator('main output', { hasText: 'PDF made' });
    await expect(said).toContainText('.pdf', { timeout: 30_000 });
    const pages = pagesOf(/PDF made: (.*\.pdf), /.exec((await said.textContent()) ?? '')?.[1] ?? '');
    pages.forEach((text, i) => expect(text).toContain(`page ${i + 1} of ${pages.length}`));
    for (const title of ['Shopping list', 'Make ahead', 'Day plan', 'Cook: jobs of the day']) expect(pages.filter((text) => text.includes(title)).length, title).toBeGreaterThan(0);
  });

  test('puts the whole day on four pages for the wall, every row whole, every job told', async ({ app: { page } }) => {
    test.setTimeout(120_000);
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    for (const [id, most] of [['day', 4], ['helper-fryer', 2]] as const) {
      const row = page.locator(`[data-sheet-row="${id}"]`);
      await row.getByRole('button', { name: /^PDF of/ }).click();
      const said = page.locator('main output', { hasText: 'PDF made' });
      await expect(said).toContainText(id === 'day' ? 'day-a.pdf' : 'fryer', { timeout: 30_000 });
      const pages = pagesOf(/PDF made: (.*\.pdf), /.exec((await said.textContent()) ?? '')?.[1] ?? '');
      expect(pages.length, id).toBeLessThanOrEqual(most);
      // A row that is split starts its page without its time, or loses it.
      const starts = pages.flatMap((text) => [...text.matchAll(/^ *(\d\d:\d\d) +\d\d:\d\d/gm)].map((m) => m[1]));
      expect(starts.length).toBe(await row.locator('.tasks tbody tr').count());
      for (const text of pages) expect(text).toMatch(/Done +Start/);
    }
  });

  test('stands the tick boxes of a table in one line, and shows every row of the picture on one page', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    for (const id of ['day', 'helper-cook', 'helper-fryer', 'prep', 'shopping']) {
      const read = await page.locator(`[data-sheet-row="${id}"] .sheet`).evaluate((sheet) => {
        const papers = [...(sheet.parentElement?.parentElement?.querySelectorAll('[class*="paper"]') ?? [])].map((p) => p.getBoundingClientRect());
        const lefts = [...sheet.querySelectorAll('.tickcell .tick')].map((box) => {
          const { left, width } = box.getBoundingClientRect();
          const paper = papers.find((p) => p.left <= left && left + width <= p.right);
          return left - (paper?.left ?? 0);
        });
        const split = [...sheet.querySelectorAll('tbody tr')].filter((tr) => tr.getClientRects().length > 1 || [...tr.children].some((td) => td.getClientRects().length > 1)).length;
        return { lefts, split };
      });
      expect(read.lefts.length, id).toBeGreaterThan(3);
      expect(Math.max(...read.lefts) - Math.min(...read.lefts), id).toBeLessThan(0.5);
      expect(read.split, id).toBe(0);
    }
  });

  test('tells a paper that no longer matches, and offers the next letter', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    const row = page.locator('[data-sheet-row="shopping"]');
    await row.getByRole('button', { name: 'PDF of Shopping list' }).click();
    await expect(row).toContainText('version A');
    await expect(row).toContainText('still matches the plan');
    await goTo(page, 'Shopping');
    const field = page.getByRole('spinbutton', { name: 'Chickpea flour in the house' });
    await field.fill('50');
    await field.press('Enter');
    await goTo(page, 'Sheets');
    await expect(row).toContainText('no longer matches: print version B');
  });

  test('keeps allergies off the paper until asked for', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    const day = page.locator('[data-sheet-row="day"]');
    await expect(day).not.toContainText('Allergies to remember');
    await page.getByLabel('Print who is allergic to what on the day plan').check();
    await expect(day).toContainText('Allergies to remember');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(day).not.toContainText('Allergies to remember');
  });

  test('prints from the page where the host has no print window: only the sheet is on the paper', async ({ app: { page } }) => {
    await page.addInitScript(() => { window.print = () => { document.documentElement.dataset['printed'] = String(document.querySelectorAll('[data-print-root] .sheet').length); }; });
    await page.reload();
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    await page.getByRole('button', { name: 'Print Shopping list' }).click();
    await expect(page.locator('html')).toHaveAttribute('data-printed', '1');
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('#app')).toBeHidden();
    await expect(page.locator('[data-print-root]').getByRole('heading', { name: 'Shopping list' })).toBeVisible();
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await expect(page.locator('[data-print-root]')).toHaveCount(0);
  });
});
