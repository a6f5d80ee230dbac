import type { Page } from '@playwright/test';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';

const adults = (page: Page) => page.locator('main header').getByRole('spinbutton', { name: 'Adults' });
const cause = (page: Page) => page.locator('[data-change-strip] strong');

async function setAdults(page: Page, count: string): Promise<void> {
  await adults(page).fill(count);
  await adults(page).press('Enter');
  await expect(cause(page)).toContainText(`to ${count} adults`);
}

test.describe('The keys of undo', () => {
  test('belong to a text while it is being typed, not to the event', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await setAdults(page, '50');
    await goTo(page, 'Menu');
    await page.getByRole('button', { name: 'Add a dish' }).click();
    const search = page.getByRole('searchbox').or(page.getByRole('textbox')).first();
    await search.pressSequentially('tea');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+y');
    await goTo(page, 'Board');
    await expect(adults(page)).toHaveValue('50');
    await page.locator('body').press('Control+z');
    await expect(adults(page)).toHaveValue('68');
  });

  test('leave the event alone while a panel is open', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await setAdults(page, '50');
    await page.keyboard.press('Control+Shift+s');
    const dialog = page.getByRole('dialog', { name: 'Save as…' });
    await expect(dialog).toBeVisible();
    await dialog.getByRole('button', { name: 'Save', exact: true }).focus();
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
    await expect(adults(page)).toHaveValue('50');
  });
});

test.describe('The keyboard', () => {
  test('stays in Shopping where it was after each entry, tick and press', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Shopping');
    const row = page.getByRole('row', { name: /Chickpea flour/ });
    const inHouse = row.locator('td[data-column="larder"] input');
    await inHouse.fill('1');
    await inHouse.press('Enter');
    await expect(cause(page)).toBeVisible();
    await expect(inHouse).toBeFocused();
    const tick = row.getByRole('checkbox');
    await tick.focus();
    await page.keyboard.press('Space');
    await expect(tick).toBeChecked();
    await expect(tick).toBeFocused();
    const more = row.locator('td[data-column="more"] button');
    await more.focus();
    await page.keyboard.press('Enter');
    await expect(more).toHaveAttribute('aria-expanded', 'true');
    await expect(more).toBeFocused();
  });
});

test.describe('Half-written work', () => {
  test('a recipe being written is there again after a look at another view', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Menu');
    await page.getByRole('button', { name: 'Add a dish' }).click();
    await page.getByRole('button', { name: 'Write a new recipe' }).or(page.getByRole('button', { name: /new recipe/i })).first().click();
    const name = page.getByRole('textbox', { name: 'Name' }).first();
    await name.fill('Carrot relish');
    await goTo(page, 'Shopping');
    await goTo(page, 'Menu');
    await expect(name).toHaveValue('Carrot relish');
  });

  test('what is changed while another event is on its way is asked about', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    const gate: { open?: () => void } = {};
    const held = new Promise<void>((resolve) => { gate.open = resolve; });
    await page.route('**/rpc/events.openDemo', async (route) => { await held; await route.continue(); });
    await page.keyboard.press('Control+o');
    await page.getByRole('dialog').getByRole('button', { name: 'School fair stall' }).click();
    await page.keyboard.press('Escape');
    await setAdults(page, '50');
    gate.open?.();
    await expect(page.getByRole('dialog')).toContainText(/not saved|unsaved/i);
    await expect(adults(page)).toHaveValue('50');
  });
});
