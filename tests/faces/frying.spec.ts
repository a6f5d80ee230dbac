import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

test.describe('Frying', () => {
  test('says what limits each pan, with every working, and is accessible', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Frying');
    await expect(page.getByText(/limited by /).first()).toBeVisible();
    expect(await openEveryWorking(page)).toBeGreaterThan(15);
    await expectAccessible(page);
  });

  test('lists as many batches and bowls as the figures at the top say', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Frying');
    const figure = async (title: string): Promise<number> => Number(await page.locator(`main [data-figure-title="${title}"]`).first().getAttribute('data-figure-value'));
    const table = page.getByRole('table', { name: 'Batches and bowls' });
    const bowls = await table.locator('tr[data-kind="bowl"]').count();
    expect(bowls).toBe(await figure('Bowls of batter'));
    expect((await table.locator('tbody tr').count()) - bowls).toBe(await figure('Batches'));
  });

  test('draws what is lifted out between what is wanted and what stays fresh', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Frying');
    await expect(page.getByRole('img', { name: /lifted out, wanted, and the most that stays fresh/ }).first()).toBeVisible();
  });

  test('offers a fresher plan with what it saves; choosing it changes the plan, and undo takes it back', async ({ app: { page } }) => {
    await openDemo(page, 'School fair stall');
    await goTo(page, 'Frying');
    const batches = async (): Promise<number> => Number(await page.locator('main [data-figure-title="Batches"]').first().getAttribute('data-figure-value'));
    const before = await batches();
    await page.getByRole('button', { name: 'Fry Onion fritters freshest in 22 batches' }).click();
    await expect(page.getByText('Fried freshest, with one batch more than the fewest.')).toBeVisible();
    expect(await batches()).toBe(before + 1);
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    await expect(page.getByText('Fried freshest, with one batch more than the fewest.')).toBeHidden();
    expect(await batches()).toBe(before);
  });

  test('draws the oil of each pan over the day, with its batches', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Frying');
    await expect(page.getByRole('img', { name: /Deep round pan: temperature of the oil/ })).toBeVisible();
    await expect(page.getByRole('img', { name: /Small straight pan: temperature of the oil/ })).toBeVisible();
  });

  test('says so when nothing is fried', async ({ app: { page } }) => {
    await openDemo(page, 'Freezer Sunday');
    await goTo(page, 'Frying');
    await expect(page.getByRole('heading', { name: 'Nothing is fried' })).toBeVisible();
    await expectAccessible(page);
  });
});
