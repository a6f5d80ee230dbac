import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

test.describe('Drinks', () => {
  test('shows totals, flasks and rounds with every working, and is accessible', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Drinks');
    await expect(page.getByRole('img', { name: 'Tea flask: how full and how hot, by time' })).toBeVisible();
    expect(await openEveryWorking(page)).toBeGreaterThan(20);
    await expectAccessible(page);
  });

  test('says in degrees how a flask cools', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Drinks');
    await expect(page.locator('main [data-figure-title="Tea flask: In the first hour, when full"]')).toHaveText(/loses about \d+ degrees/);
    await expect(page.locator('main')).not.toContainText('nearer to the room');
  });

  test('has as many rows of rounds as the totals say', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Drinks');
    const totals = await page.locator('main [data-figure-title$=": Rounds"]').evaluateAll((all) => all.map((b) => Number((b as HTMLElement).dataset['figureValue'])));
    const rows = await page.getByRole('table', { name: 'Rounds', exact: true }).locator('tbody tr').count();
    expect(rows).toBe(totals.reduce((a, b) => a + b, 0));
  });

  test('says so when nothing is brewed', async ({ app: { page } }) => {
    await openDemo(page, 'Freezer Sunday');
    await goTo(page, 'Drinks');
    await expect(page.getByRole('heading', { name: 'No drinks are brewed' })).toBeVisible();
  });

  test('offers a quarter of a drink without caffeine, once, and takes it back', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Drinks');
    const offer = page.getByRole('button', { name: 'Offer a quarter of Filter coffee without caffeine' });
    await offer.click();
    await expect(page.getByRole('table', { name: 'How much of each' }).getByText('Filter coffee, no caffeine', { exact: true })).toBeVisible();
    await expect(offer).toBeHidden();
    await page.keyboard.press('Control+z');
    await expect(offer).toBeVisible();
  });
});
