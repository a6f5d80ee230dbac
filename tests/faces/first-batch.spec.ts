import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

const entries = [['Batter, all pieces', '520'], ['Fried and drained', '495'], ['Put in to lift out', '4.5'], ['Oil before', '176'], ['Until the oil is back', '6']] as const;

test.describe('First batch', () => {
  test('tells what one batch showed with every working, what it would change, and is taken and undone as one step', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Frying');
    const batches = page.locator('main [data-figure-title="Batches"]').first();
    const before = await batches.getAttribute('data-figure-value');
    await page.getByRole('button', { name: 'Write down a batch' }).click();
    const card = page.getByRole('group', { name: /^First batch of/ });
    for (const [label, value] of entries) {
      await card.getByLabel(label, { exact: true }).fill(value);
      await card.getByLabel(label, { exact: true }).press('Enter');
    }
    await expect(page.getByText('If you plan with these figures:')).toBeVisible();
    await expect(page.getByText(/Frying: \d+ to \d+ batches/)).toBeVisible();
    expect(await openEveryWorking(page)).toBeGreaterThan(15);
    await expectAccessible(page);
    expect(await batches.getAttribute('data-figure-value')).toBe(before);
    await page.getByRole('button', { name: 'Plan with these figures' }).click();
    await expect(page.getByText('The plan uses these figures.')).toBeVisible();
    await expect(batches).not.toHaveAttribute('data-figure-value', before ?? '');
    await page.keyboard.press('Control+z');
    await expect(batches).toHaveAttribute('data-figure-value', before ?? '');
  });

  test('a precaution that is answered is checked', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Kitchen');
    await page.getByLabel('Line that children stay behind', { exact: true }).selectOption('no');
    await page.getByLabel('Address to tell', { exact: true }).fill('');
    await page.getByLabel('Address to tell', { exact: true }).press('Enter');
    await goTo(page, 'Board');
    await expect(page.getByText(/Children near the oil|no line is marked/).first()).toBeVisible();
  });
});
