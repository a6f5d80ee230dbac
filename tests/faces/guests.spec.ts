import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

test.describe('Guests', () => {
  test.beforeEach(async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Guests');
  });

  test('every figure opens its working; the view is accessible', async ({ app: { page } }) => {
    expect(await openEveryWorking(page)).toBeGreaterThan(3);
    await expectAccessible(page);
  });

  test('an age band of a wave is typed; the totals follow', async ({ app: { page } }) => {
    const wave = page.getByRole('group', { name: 'Noon meal', exact: true });
    await wave.getByRole('spinbutton', { name: '4 to 6' }).fill('7');
    await wave.getByRole('spinbutton', { name: '4 to 6' }).press('Enter');
    await expect(page.getByText('68 adults and 26 children', { exact: false }).first()).toBeVisible();
  });

  test('stays out of order are explained beside the field and nothing is lost', async ({ app: { page } }) => {
    const field = page.getByRole('group', { name: 'Noon meal', exact: true }).getByRole('spinbutton', { name: 'Stay, shortest' });
    await field.fill('170');
    await field.press('Enter');
    await expect(page.getByRole('alert').first()).toContainText('shortest');
    await expect(field).toHaveValue('170');
    await expect(page.getByText('Not updated')).toBeVisible();
  });

  test('a wave is added and taken out', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'Add a wave' }).click();
    await expect(page.getByRole('group', { name: 'Wave 5' })).toBeVisible();
    await page.getByRole('button', { name: 'Take out: Wave 5' }).click();
    await expect(page.getByRole('group', { name: 'Wave 5' })).toBeHidden();
  });

  test('a diet says which dishes are open to it; an allergy, where it is', async ({ app: { page } }) => {
    await expect(page.getByText(/^open to them: /).first()).toBeVisible();
    await page.getByLabel('Add an allergy').selectOption({ label: 'Milk' });
    await expect(page.getByText(/^in Milk for tea and coffee/)).toBeVisible();
  });
});
