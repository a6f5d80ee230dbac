import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Dialog, Page } from '@playwright/test';
import { expect, test } from './fixture';
import { openDemo } from './views-open';

const title = 'Lantern Evening';
const children = (page: Page) => page.locator('main header').getByRole('spinbutton', { name: 'Children' });

async function change(page: Page, count: string): Promise<void> {
  await children(page).fill(count);
  await children(page).press('Enter');
  await expect(page.getByText('Not saved yet')).toBeVisible();
}

async function saveAs(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+Shift+s');
  const dialog = page.getByRole('dialog', { name: 'Save as…' });
  await dialog.getByRole('textbox').fill(name);
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(dialog).toBeHidden();
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
}

/** Leaves the page; answers whether the browser asked before. */
async function leave(page: Page): Promise<boolean> {
  let asked = false;
  const answer = (dialog: Dialog): void => {
    asked = dialog.type() === 'beforeunload';
    void dialog.accept();
  };
  page.on('dialog', answer);
  await page.reload();
  page.off('dialog', answer);
  return asked;
}

test.describe('Saving', () => {
  test('the window asks before it closes with unsaved changes, and only then; what was left behind is offered', async ({ app: { page } }) => {
    await openDemo(page, title);
    expect(await leave(page)).toBe(false);
    await openDemo(page, title);
    await change(page, '29');
    // At once: the second of rest has not passed.
    expect(await leave(page)).toBe(true);
    await page.getByRole('button', { name: /^Lantern Evening.*from / }).click();
    await expect(children(page)).toHaveValue('29');
    await expect(page.getByText('Not saved yet')).toBeVisible();
  });

  test('undo back to what is saved lets the kept copy go', async ({ app: { page, host } }) => {
    const copies = () => readdir(join(host.dataFolder, 'recovery')).then((names) => names.filter((name) => name.endsWith('.json')), () => []);
    await openDemo(page, title);
    await saveAs(page, 'Feast');
    await change(page, '29');
    await expect.poll(copies).toHaveLength(1);
    await page.keyboard.press('Control+z');
    await expect.poll(copies).toHaveLength(0);
    expect(await leave(page)).toBe(false);
  });

  test('kept work does not write over a file that was changed meanwhile', async ({ app: { page, host } }) => {
    await openDemo(page, title);
    await saveAs(page, 'Feast');
    await change(page, '29');
    await leave(page);
    const path = join(host.eventsFolder, 'Feast.brimful');
    const theirs = (await readFile(path, 'utf8')).replace('"title": "Lantern Evening"', '"title": "Their evening"');
    await writeFile(path, theirs);
    await page.getByRole('button', { name: /^Lantern Evening.*from / }).click();
    // Keys belong to the document only once it is there.
    await expect(page.getByRole('button', { name: 'Save', exact: true })).toBeVisible();
    await page.keyboard.press('Control+s');
    await expect(page.getByRole('dialog', { name: 'The file was changed outside' })).toBeVisible();
    expect(await readFile(path, 'utf8')).toBe(theirs);
  });

  test('two quick saves are no change from outside, and a change in between is saved', async ({ app: { page, host } }) => {
    await openDemo(page, title);
    await saveAs(page, 'Feast');
    const path = join(host.eventsFolder, 'Feast.brimful');
    const { guests: { headcount: { children: unchanged } } } = JSON.parse(await readFile(path, 'utf8')) as { guests: { headcount: { children: number | null } } };
    await change(page, '29');
    await page.keyboard.press('Control+s');
    await page.keyboard.press('Control+s');
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    await expect(page.getByRole('dialog')).toHaveCount(0);
    const saved = JSON.parse(await readFile(path, 'utf8')) as { guests: { headcount: { children: number | null } } };
    const before = JSON.parse(await readFile(`${path}.bak`, 'utf8')) as typeof saved;
    expect([before.guests.headcount.children, saved.guests.headcount.children]).toEqual([unchanged, 29]);
  });

  test('an event of a newer program is offered under another name and keeps its own file', async ({ app: { page, host } }) => {
    await openDemo(page, title);
    await saveAs(page, 'Feast');
    const path = join(host.eventsFolder, 'Feast.brimful');
    const newer = (await readFile(path, 'utf8')).replace('brimful-event/1', 'brimful-event/2');
    await writeFile(path, newer);
    await page.reload();
    await page.getByRole('button', { name: title }).first().click();
    await expect(page.getByText('A newer version of this program wrote this event.')).toBeVisible();
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog', { name: 'Save as…' });
    await expect(dialog.getByRole('textbox')).toHaveValue('Lantern Evening copy');
    await dialog.getByRole('textbox').fill('Feast');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(dialog.getByText('was written by a newer version')).toBeVisible();
    expect(await readFile(path, 'utf8')).toBe(newer);
    await dialog.getByRole('textbox').fill('Feast in the older form');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(dialog).toBeHidden();
    expect(await readFile(path, 'utf8')).toBe(newer);
  });

  test('work that cannot be kept aside is said calmly, and no longer once it can', async ({ app }) => {
    const { page } = app;
    let broken = true;
    await page.route('**/rpc/recovery.keep', (route) => (broken ? route.fulfill({ json: { ok: false, problem: { code: 'full', message: 'There is no room left on the disk.' } } }) : route.continue()));
    await openDemo(page, title);
    await change(page, '29');
    const note = page.getByText('Unsaved work could not be kept aside just now.');
    await expect(note).toBeVisible();
    broken = false;
    await expect(note).toBeHidden({ timeout: 15_000 });
  });
});
