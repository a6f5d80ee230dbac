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
    expect(await page.locator('table th[scope="rowgroup"]').allTextContents()).toEqual(['Vegetables']);
    expect(await page.locator('td[data-column="ingredient"]').count()).toBeGreaterThan(1);
  });

  test('takes what is in the house off what to buy, as one step of undo', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    const buy = page.getByRole('row', { name: /Chickpea flour/ }).locator('td[data-column="buy"]');
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

  test('marks a line bought with one tick, in part, and left for later', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    const row = page.getByRole('row', { name: /^Green beans: all bought/ });
    await page.getByRole('checkbox', { name: 'Green beans: all bought' }).click();
    await expect(row.locator('td[data-column="buy"]')).toHaveText('–');
    await expect(row).toContainText('4.25 kg bought.');
    await page.getByRole('checkbox', { name: 'Green beans: all bought' }).click();
    await page.getByRole('button', { name: 'More Green beans', exact: true }).click();
    const sofar = page.getByRole('spinbutton', { name: 'Bought so far' });
    await sofar.fill('3');
    await sofar.press('Enter');
    await expect(row).toContainText('3 kg bought; 1.25 kg still to buy.');
    await page.getByRole('checkbox', { name: 'Leave for later' }).click();
    await expect(row).toContainText('Left for later.');
  });

  test('says what a substitution does before it is chosen, does it, and takes it back', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await page.getByRole('button', { name: 'More Sunflower oil, refined', exact: true }).click();
    await expect(page.getByRole('listitem').filter({ hasText: 'Peanut oil, refined adds peanuts to' })).toBeVisible();
    await page.getByRole('button', { name: 'Use Peanut oil, refined instead of Sunflower oil, refined' }).click();
    await expect(page.getByRole('row', { name: /Peanut oil/ })).toBeVisible();
    await page.getByRole('button', { name: 'More Peanut oil, refined', exact: true }).click();
    await page.getByRole('button', { name: 'Back to Sunflower oil, refined' }).click();
    await expect(page.getByRole('row', { name: /Sunflower oil/ })).toBeVisible();
    await expect(page.getByRole('row', { name: /Peanut oil/ })).toHaveCount(0);
  });

  test('takes a line of the cook\u2019s own and something to borrow', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await page.getByRole('button', { name: 'Add a line' }).click();
    const own = page.getByRole('group', { name: 'New line' });
    await own.getByLabel('Name').fill('Candles');
    await own.getByLabel('Name').press('Enter');
    await expect(page.getByRole('row', { name: /Candles/ })).toBeVisible();
    await page.getByRole('button', { name: 'Add something to borrow' }).click();
    const lent = page.getByRole('group', { name: 'Something to borrow' });
    await lent.getByLabel('From').fill('Hall');
    await lent.getByLabel('From').press('Enter');
    await lent.getByLabel('Returned').click();
    await expect(lent.getByLabel('Returned')).toBeChecked();
    await expectAccessible(page);
  });

  test('counts the household\u2019s own cups and does not buy them', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await expect(page.getByRole('row', { name: /Paper cups/ })).toBeVisible();
    await page.getByRole('checkbox', { name: 'Paper cups for hot drinks', exact: true }).click();
    await expect(page.getByRole('row', { name: /Paper cups/ })).toHaveCount(0);
    await expect(page.getByRole('button', { name: /Paper cups for hot drinks wanted/ })).toBeVisible();
  });

  test('splits the list and shows one shopper\u2019s', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await page.getByLabel('Fruit', { exact: true }).selectOption({ label: 'Cook' });
    await page.getByLabel('Whose list').selectOption({ label: 'Cook' });
    await expect(page.locator('table th[scope="rowgroup"]')).toHaveText(['Fruit']);
  });

  test('takes a price and never shows a total without what it leaves out', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await expect(page.locator('main')).toContainText('24 things have no price yet, so it will be more.');
    const price = page.getByRole('spinbutton', { name: 'Price of Carrots, for 1 kg' });
    await price.fill('1.50');
    await price.press('Enter');
    await expect(page.locator('main')).toContainText('23 things have no price yet, so it will be more.');
    await expect(page.getByRole('button', { name: /Cost of Carrots/ })).toContainText('€1.50');
  });

  test('copies the list as text', async ({ app: { page } }) => {
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    await page.getByRole('button', { name: 'Copy as text' }).click();
    await expect(page.getByText('Copied. Paste it into a message.')).toBeVisible();
    const text = await page.evaluate(() => navigator.clipboard.readText());
    expect(text).toContain('[ ] Carrots: ');
  });
});
