import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

test.describe('Day', () => {
  test('puts every helper on the clock, with every working, and is accessible', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const picture = page.getByRole('img', { name: 'Everybody on the clock' });
    for (const name of ['Cook', 'Fryer', 'Tea', 'Runner']) await expect(picture.getByText(name, { exact: true })).toBeVisible();
    expect(await openEveryWorking(page)).toBe(4);
    await expectAccessible(page);
  });

  test('lists the jobs of one helper only', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const rows = page.getByRole('table', { name: 'Jobs' }).locator('tbody tr');
    const all = await rows.count();
    await page.getByLabel('Jobs of').selectOption({ label: 'Fryer' });
    const own = await rows.count();
    expect(own).toBeGreaterThan(5);
    expect(own).toBeLessThan(all);
    for (const who of await rows.locator('td:nth-child(4)').allTextContents()) expect(who).toContain('Fryer');
  });

  test('shows in the list the job that was pressed in the picture', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const block = page.locator('main svg [data-chosen="false"]').nth(3);
    await block.dispatchEvent('click');
    await expect(page.locator('main svg [data-chosen="true"]').first()).toBeAttached();
    await expect(page.getByRole('table', { name: 'Jobs' }).locator('tr[class*="chosen"]')).toHaveCount(1);
  });
});
