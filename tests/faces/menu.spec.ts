import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

test.describe('Menu', () => {
  test.beforeEach(async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Menu');
  });

  test('every figure opens its working; the view is accessible', async ({ app: { page } }) => {
    expect(await openEveryWorking(page)).toBeGreaterThan(3);
    await expectAccessible(page);
  });

  test('a dish shows its recipe at the size of the event', async ({ app: { page } }) => {
    await page.locator('tr[data-dish="ginger-tea"] th button').click();
    await expect(page.getByRole('heading', { name: /^Recipe: Ginger tea, / })).toBeVisible();
    await expect(page.getByRole('cell', { name: 'Black tea, loose', exact: true })).toBeVisible();
    await expectAccessible(page);
  });

  test('fewer who take a dish means fewer portions', async ({ app: { page } }) => {
    const portions = page.locator('tr[data-dish="ginger-tea"] [data-figure-title="Ginger tea: Portions"]');
    const before = Number(await portions.getAttribute('data-figure-value'));
    const field = page.getByRole('spinbutton', { name: 'Ginger tea: Share who take it' });
    await field.fill('40');
    await field.press('Enter');
    expect(Number(await portions.getAttribute('data-figure-value'))).toBeLessThan(before);
  });

  test('a dish is taken off the menu and put on again', async ({ app: { page } }) => {
    await page.locator('tr[data-dish="rice"] th button').click();
    await page.getByRole('button', { name: 'Take off the menu' }).click();
    await expect(page.locator('tr[data-dish="rice"]')).toBeHidden();
    await page.getByRole('button', { name: 'Add a dish' }).click();
    await page.getByRole('button', { name: 'Put Boiled rice on the menu' }).first().click();
    await expect(page.locator('tr[data-dish="rice"]')).toBeVisible();
  });
});

test('food and drink for one adult are the same number as in their working; a rounded one says how it is shown', async ({ app: { page } }) => {
  await openDemo(page, 'Lantern Evening');
  await goTo(page, 'Menu');
  const panel = page.getByRole('complementary', { name: 'How this was worked out' });
  for (const name of ['Food for one adult', 'Drink for one adult']) {
    const button = page.locator(`button[data-figure-title^="${name}"]`);
    const shown = (await button.locator('span').nth(1).innerText()).trim();
    await button.click();
    await expect(panel.locator('p').first()).toHaveText(shown);
    await expect(panel.locator('[data-shown-as]')).toHaveCount(0);
  }
});

test('a new event takes a dish from the recipes that come with the program', async ({ app: { page } }) => {
  await page.getByRole('button', { name: 'New event' }).click();
  // The new event waits for the host's day; keys belong to it only once it is there.
  await expect(page.getByRole('heading', { name: 'Guests', exact: true }).first()).toBeVisible();
  await page.keyboard.press('Alt+3');
  await expect(page.getByRole('heading', { name: 'No dish yet' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Add a dish' }).click();
  await page.getByRole('button', { name: 'Put Ginger tea on the menu' }).click();
  await expect(page.locator('tr[data-dish="ginger-tea"]')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('heading', { name: 'No dish yet' })).toBeVisible();
});
