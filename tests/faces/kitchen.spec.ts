import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

test.describe('Kitchen', () => {
  test.beforeEach(async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Kitchen');
  });

  test('every figure opens its working; the view is accessible', async ({ app: { page } }) => {
    expect(await openEveryWorking(page)).toBeGreaterThan(3);
    await expectAccessible(page);
  });

  test('more oil stands higher under the rim', async ({ app: { page } }) => {
    const rim = page.locator('[data-figure-title="Deep round pan: Rim above it"]');
    const before = Number(await rim.getAttribute('data-figure-value'));
    const oil = page.getByRole('group', { name: 'Deep round pan' }).getByRole('spinbutton', { name: 'Oil, cold' });
    await oil.fill('4');
    await oil.press('Enter');
    expect(Number(await rim.getAttribute('data-figure-value'))).toBeLessThan(before);
  });

  test('a burner in use is not taken out, and the reason is given', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'Take out: Big ring' }).click();
    await expect(page.getByRole('alert').first()).toContainText('Big ring is in use by Deep round pan');
    await expect(page.getByRole('group', { name: 'Big ring' })).toBeVisible();
  });

  test('a pot too small to be one is refused with its limit', async ({ app: { page } }) => {
    const holds = page.getByRole('group', { name: 'Large pot' }).getByRole('spinbutton', { name: 'Holds' });
    await holds.fill('0');
    await holds.press('Enter');
    await expect(page.getByRole('alert').first()).toContainText('Holds is 0. Enter 0.3 or more.');
  });

  test('a helper is added and appears on the board', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'Add a helper' }).click();
    await page.keyboard.press('Alt+1');
    await expect(page.getByRole('region', { name: 'Hands', exact: true }).getByText('Helper 5')).toBeVisible();
  });

  test('a burner measured with water gives what the water took up, and can be forgotten again', async ({ app: { page } }) => {
    const useful = page.locator('[data-figure-title="Big ring: Reaches the pan"]');
    const before = Number(await useful.getAttribute('data-figure-value'));
    await page.getByRole('button', { name: 'Measure it with water' }).first().click();
    const test = page.getByRole('group', { name: 'Measure it with water' });
    for (const [name, value] of [['Water', '3'], ['To the boil', '12']] as const) {
      await test.getByRole('spinbutton', { name, exact: true }).fill(value);
      await test.getByRole('spinbutton', { name, exact: true }).press('Enter');
    }
    const [fromC, potKg] = await Promise.all(['Before', 'Empty pot'].map((name) => test.getByRole('spinbutton', { name }).inputValue().then(Number)));
    // Sea level and sixty metres differ by a fifth of a degree.
    const watts = ((3 * 4.18 + (potKg ?? 0) * 0.49) * (100 - (fromC ?? 0)) * 1000) / 720;
    expect(Math.abs(Number(await useful.getAttribute('data-figure-value')) / watts - 1)).toBeLessThan(0.005);
    await test.getByRole('button', { name: 'Leave this measurement out' }).click();
    await expect.poll(async () => Number(await useful.getAttribute('data-figure-value'))).toBe(before);
  });

  test('a cylinder tells what the day draws from it once a burner names it', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'Add a gas cylinder' }).click();
    await page.getByRole('group', { name: 'Second ring' }).getByRole('combobox', { name: 'Kind' }).selectOption('bottled gas');
    await page.getByRole('group', { name: 'Second ring' }).getByRole('combobox', { name: 'Cylinder' }).selectOption('Cylinder 1');
    await expect(page.locator('[data-figure-title="Cylinder 1: The day takes"]')).toBeVisible();
    await expectAccessible(page);
  });
});
