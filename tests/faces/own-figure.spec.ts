import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';

test.describe('A figure of the house', () => {
  test('is put in the place of the table by keyboard, moves the plan, is marked, undone and taken back', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Menu');
    const each = page.locator('[data-figure-title$=": For one adult"]').first();
    const before = Number(await each.getAttribute('data-figure-value'));
    await each.focus();
    await page.keyboard.press('Enter');
    const leaf = page.locator('[data-own^="appetite."]');
    const use = leaf.getByRole('button', { name: /^Use my own figure/ });
    await use.focus();
    await page.keyboard.press('Enter');
    const field = leaf.getByRole('spinbutton');
    await expect(leaf).toContainText('The table says');
    await expectAccessible(page);
    await field.focus();
    await field.fill('7');
    await page.keyboard.press('Enter');
    await expect(leaf).toContainText('Enter 1 or less');
    await field.fill('0.9');
    await page.keyboard.press('Enter');
    await expect(leaf.getByText('yours', { exact: true })).toBeVisible();
    await expect(leaf).toContainText('The table says');
    const mine = Number(await each.getAttribute('data-figure-value'));
    expect(mine).toBeLessThan(before);
    await leaf.getByRole('button', { name: /^Back to the table/ }).press('Enter');
    await expect(each).toHaveAttribute('data-figure-value', String(before));
    await page.keyboard.press('ControlOrMeta+z');
    await expect(each).toHaveAttribute('data-figure-value', String(mine));
    await page.keyboard.press('ControlOrMeta+z');
    await expect(each).toHaveAttribute('data-figure-value', String(before));
  });
});
