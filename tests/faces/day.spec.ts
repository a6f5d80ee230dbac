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

  test('cuts no label: each stands whole inside its block', async ({ app: { page } }) => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const labels = await page.locator('main svg [data-chosen]:has(text)').evaluateAll((blocks) => blocks.map((g) => {
      const [rect, text] = [g.querySelector('rect'), g.querySelector('text')].map((e) => e?.getBoundingClientRect());
      return { left: (text?.left ?? 0) - (rect?.left ?? 0), right: (rect?.right ?? 0) - (text?.right ?? 0) };
    }));
    expect(labels.length).toBeGreaterThan(0);
    for (const { left, right } of labels) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeGreaterThanOrEqual(0);
    }
  });

  test('marks few jobs as what must not slip, the same as the list and the picture', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const rows = page.getByRole('table', { name: 'Jobs' }).locator('tbody tr');
    const marked = await rows.filter({ hasText: 'must not slip' }).count();
    expect(marked).toBeGreaterThan(0);
    expect(marked).toBeLessThan((await rows.count()) / 4);
    expect(await page.locator('main ul[class*="critical"] li').count()).toBe(marked);
    expect(await page.locator('main svg rect[class*="edge"]').count()).toBe(marked);
  });
});
