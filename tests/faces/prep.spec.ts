import { expectAccessible, expectReadable } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

for (const demo of ['Lantern Evening', 'Freezer Sunday'] as const) {
  test(`${demo}: every figure opens its working; day and night are accessible`, async ({ app: { page } }) => {
    await openDemo(page, demo);
    await goTo(page, 'Prep');
    expect(await openEveryWorking(page)).toBeGreaterThan(5);
    await expectAccessible(page);
    await page.evaluate(() => { document.documentElement.dataset['theme'] = 'night'; });
    await expectReadable(page);
  });
}

test('names where things are kept and until when', async ({ app: { page } }) => {
  await openDemo(page, 'Freezer Sunday');
  await goTo(page, 'Prep');
  await expect(page.getByRole('rowheader', { name: 'Kept in the freezer' }).first()).toBeVisible();
  await expect(page.getByRole('heading', { name: 'What to weigh and cut' })).toBeVisible();
});

test('shows the jobs of one helper only', async ({ app: { page } }) => {
  await openDemo(page, 'Lantern Evening');
  await goTo(page, 'Prep');
  const jobs = page.locator('main tr[data-job]');
  const all = await jobs.count();
  await page.getByLabel('Jobs of').selectOption({ label: 'Cook' });
  const own = await jobs.count();
  expect(own).toBeGreaterThan(0);
  expect(own).toBeLessThan(all);
  for (const who of await jobs.locator('td:nth-child(6)').allTextContents()) expect(who).toContain('Cook');
});

test('says what to do while nothing is made ahead', async ({ app: { page } }) => {
  await page.getByRole('button', { name: 'New event' }).click();
  await page.keyboard.press('Alt+6');
  await expect(page.getByRole('heading', { name: 'Nothing to make ahead yet' })).toBeVisible();
  await expectAccessible(page);
});
