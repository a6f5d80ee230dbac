import { readFile } from 'node:fs/promises';
import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

test.describe('Shopping', () => {
  test('shows every line with its working, is accessible', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    expect(await openEveryWorking(page)).toBeGreaterThan(20);
    await expectAccessible(page);
  });

  test('sorts by a column and back', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    const names = (): Promise<string[]> => page.locator('td[data-column="ingredient"] strong').allTextContents();
    const plain = await names();
    await page.getByRole('button', { name: 'Ingredient' }).click();
    await expect(page.getByRole('columnheader', { name: 'Ingredient' })).toHaveAttribute('aria-sort', 'ascending');
    expect(await names()).toEqual(plain.toSorted((a, b) => a.toLowerCase().localeCompare(b.toLowerCase(), 'en')));
    await page.getByRole('button', { name: 'Ingredient' }).click();
    await page.getByRole('button', { name: 'Ingredient' }).click();
    expect(await names()).toEqual(plain);
  });

  test('shows one section only', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await page.getByLabel('Show section').selectOption({ label: 'Vegetables' });
    const sections = await page.locator('td[data-column="section"]').allTextContents();
    expect(sections.length).toBeGreaterThan(1);
    expect(new Set(sections)).toEqual(new Set(['Vegetables']));
  });

  test('takes what is in the house off what to buy, as one step of undo', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    const row = page.getByRole('row').filter({ hasText: 'Chickpea flour' });
    const buy = row.locator('td[data-column="buy"]');
    const before = await buy.textContent();
    const field = page.getByRole('spinbutton', { name: 'Chickpea flour in the house' });
    await field.fill('50');
    await field.press('Enter');
    await expect(buy).toHaveText('–');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(buy).toHaveText(before ?? '');
  });

  test('fits a small window whole: no column is out of sight', async ({ app: { page } }) => {
    await page.setViewportSize({ width: 1024, height: 640 });
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    const table = page.getByRole('table', { name: 'What to buy' });
    await expect(table).toBeVisible();
    expect(await table.evaluate((t) => t.getBoundingClientRect().right - (t.parentElement?.getBoundingClientRect().right ?? 0))).toBeLessThanOrEqual(1);
  });

  test('explains a wrong entry beside its field and keeps the plan', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    const field = page.getByRole('spinbutton', { name: 'Chickpea flour in the house' });
    await field.fill('lots');
    await field.press('Enter');
    await expect(field).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('alert').first()).toContainText('Chickpea flour');
  });

  test('writes the list as a table', async ({ app: { page, host } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await page.getByRole('button', { name: 'Save as a table (CSV)' }).click();
    const said = page.locator('main output', { hasText: '.csv' });
    await expect(said).toBeVisible();
    const path = (await said.textContent())?.replace('Written to ', '') ?? '';
    expect(path.startsWith(host.eventsFolder)).toBe(true);
    expect(await readFile(path, 'utf8')).toContain('Chickpea flour');
  });
});
