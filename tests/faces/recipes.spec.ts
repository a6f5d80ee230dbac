import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expectAccessible, expectReadable } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';

const page04 = () => readFile('tests/sources/jsonld/04-page-two-scripts.html', 'utf8');

/** Counts what a hand does: presses of the pointer, keys, a paste as one, a choice from a list as two (open it, take one), Control with a letter as one. */
async function countActions(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    const counted = { actions: 0 };
    const add = (n: number) => () => { counted.actions += n; };
    addEventListener('pointerdown', add(1), true);
    addEventListener('paste', add(1), true);
    addEventListener('change', (e) => { if (e.target instanceof HTMLSelectElement) counted.actions += 2; }, true);
    addEventListener('keydown', (e) => { if (!(e.ctrlKey && e.key === 'v') && !['Control', 'Shift', 'Alt'].includes(e.key)) counted.actions += 1; }, true);
    Object.assign(window, { counted });
  });
  return () => page.evaluate(() => (window as unknown as { counted: { actions: number } }).counted.actions);
}

async function paste(page: Page, text: string): Promise<void> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.evaluate((words) => navigator.clipboard.writeText(words), text);
  await page.keyboard.press('Control+v');
}

async function night(page: Page, check: () => Promise<void>): Promise<void> {
  await page.evaluate(() => { document.documentElement.dataset['theme'] = 'night'; });
  await check();
  await page.evaluate(() => { document.documentElement.dataset['theme'] = 'day'; });
}

test('a saved page becomes a dish and is bought for in at most 40 clicks and keystrokes', async ({ app: { page } }) => {
  await openDemo(page, 'Lantern Evening');
  await goTo(page, 'Menu');
  const done = await countActions(page);
  await page.getByRole('button', { name: 'Add a dish' }).click();
  await page.getByRole('button', { name: 'Paste a recipe' }).click();
  await paste(page, await page04());
  await expect(page.getByRole('heading', { name: 'Ginger & lemon tea' })).toBeVisible();
  await expect(page.getByText('1 line is left to settle.')).toBeVisible();
  const amount = page.getByRole('group', { name: '1 (2-inch) piece fresh ginger' }).getByLabel('Amount');
  await amount.click();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('30 g');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Every line is settled.')).toBeVisible();
  await page.getByLabel('Place in the meal').selectOption({ label: 'Soups' });
  await page.getByRole('button', { name: 'Put on the menu' }).click();
  await expect(page.locator('tr[data-dish="ginger-lemon-tea"]')).toBeVisible();
  await goTo(page, 'Shopping');
  await expect(page.getByRole('row', { name: /Honey/ })).toBeVisible();
  const actions = await done();
  test.info().annotations.push({ type: 'clicks and keystrokes', description: String(actions) });
  expect(actions).toBeGreaterThan(8);
  expect(actions).toBeLessThanOrEqual(40);
});

test.describe('taking a recipe in', () => {
  test.beforeEach(async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Menu');
    await page.getByRole('button', { name: 'Add a dish' }).click();
  });

  test('shows the shelf by place in the meal and finds by typing; the recipe is copied and undone in one step', async ({ app: { page } }) => {
    await expect(page.getByRole('heading', { name: 'On your shelf' })).toBeVisible();
    for (const group of ['Fried snacks', 'Condiments', 'Hot drinks', 'Breads', 'Sweets', 'Preserves']) await expect(page.getByRole('heading', { name: group })).toBeVisible();
    await expectAccessible(page);
    await night(page, () => expectReadable(page));
    await page.getByLabel('Find by name or ingredient').fill('pumpkin soup');
    await expect(page.getByRole('status').filter({ hasText: '1 recipe' })).toBeVisible();
    await page.keyboard.press('Enter');
    await expect(page.locator('tr[data-dish^="pumpkin"]')).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(page.locator('tr[data-dish^="pumpkin"]')).toBeHidden();
  });

  test('asks for what a recipe does not say, beside each field, and drops no line', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'Paste a recipe' }).click();
    await expectAccessible(page);
    await page.getByLabel('Text of the recipe').fill('Cellar stew\nIngredients\n2 kg onions, sliced\nhalf a basket of moon roots\n1 kg potatoes\nMethod\nStew it all.');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.getByRole('button', { name: 'Put on the menu' }).click();
    for (const words of ['The place in the meal is not chosen', 'The number of portions is missing', 'not settled']) await expect(page.getByText(words)).toBeVisible();
    await expectAccessible(page);
    await night(page, () => expectReadable(page));
    await page.getByRole('button', { name: 'Leave out: half a basket of moon roots' }).click();
    await expect(page.getByText('left out')).toBeVisible();
    for (const more of await page.getByRole('button', { name: /^Settle this line/ }).all()) await more.click();
    await page.getByLabel('Place in the meal').selectOption({ label: 'Soups' });
    await page.getByLabel('Portions').fill('12');
    await page.getByRole('button', { name: 'Put on the menu' }).click();
    await expect(page.locator('tr[data-dish="cellar-stew"]')).toBeVisible();
  });

  test('says what to do with a text that is no recipe', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'Paste a recipe' }).click();
    await page.getByLabel('Text of the recipe').fill('<html><body>Nothing to eat.</body></html>');
    await page.getByRole('button', { name: 'Read it' }).click();
    await expect(page.getByRole('alert').filter({ hasText: 'There is no recipe in this text' })).toBeVisible();
  });

  test('a new recipe is written line by line', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'New recipe' }).click();
    await page.getByLabel('Name').fill('Potato mash');
    await page.getByLabel('Place in the meal').selectOption({ label: 'Plain things' });
    await page.getByLabel('Portions').fill('10');
    for (const line of ['2 kg potatoes, peeled', '10 g salt']) {
      await page.getByLabel(/^Another ingredient/).fill(line);
      await page.keyboard.press('Enter');
    }
    for (const more of await page.getByRole('button', { name: /^Settle this line/ }).all()) await more.click();
    await page.getByRole('button', { name: 'Put on the menu' }).click();
    await expect(page.locator('tr[data-dish="potato-mash"]')).toBeVisible();
  });
});

test.describe('the recipe page', () => {
  test.beforeEach(async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Menu');
    await page.locator('tr[data-dish] th button').first().click();
    await page.getByRole('button', { name: 'Edit the recipe' }).click();
  });

  test('an ingredient is changed and undone; the mass check follows; day and night are accessible', async ({ app: { page } }) => {
    await expectAccessible(page);
    await night(page, () => expectReadable(page));
    const flour = page.getByLabel('Chickpea flour: Amount');
    const mass = page.locator('[data-verdict]');
    await expect(mass).toHaveAttribute('data-verdict', 'fits');
    await flour.fill('100 g');
    await flour.press('Enter');
    await expect(mass).toHaveAttribute('data-verdict', 'more');
    await expect(mass).toContainText('but the yield says');
    await page.getByRole('heading', { name: 'Ingredients' }).click();
    await page.keyboard.press('Control+z');
    await expect(flour).toHaveValue('1000 g');
    await expect(mass).toHaveAttribute('data-verdict', 'fits');
  });

  test('a wrong amount stays as typed with the reason beside it', async ({ app: { page } }) => {
    const flour = page.getByLabel('Chickpea flour: Amount');
    await flour.fill('a lot');
    await flour.press('Enter');
    await expect(page.getByText('is “a lot”, which is no amount')).toBeVisible();
    await expect(flour).toHaveValue('a lot');
    await expect(flour).toHaveAttribute('aria-invalid', 'true');
  });

  test('lines are added, put in order and taken out; the ratio follows', async ({ app: { page } }) => {
    const rows = page.getByRole('table', { name: 'Ingredients' }).locator('tbody tr');
    const before = await rows.count();
    await page.getByLabel(/^Another ingredient/).fill('500 g chickpea flour');
    await page.keyboard.press('Enter');
    await expect(rows).toHaveCount(before + 1);
    await page.getByRole('button', { name: 'Down: Chickpea flour' }).first().click();
    await expect(rows.nth(1).locator('select').first()).toHaveValue('chickpea-flour');
    await expect(page.locator('[data-ratio="water"]')).toContainText('53 %');
    await page.getByRole('button', { name: 'Remove: Chickpea flour' }).last().click();
    await expect(rows).toHaveCount(before);
    await expect(page.locator('[data-ratio="water"]')).toContainText('80 %');
  });

  test('steps are added, told what they need and follow, and taken out', async ({ app: { page } }) => {
    const steps = page.getByRole('table', { name: 'Steps' }).locator('tbody tr[data-step]');
    const before = await steps.count();
    await page.getByRole('button', { name: 'Add a step' }).click();
    await expect(steps).toHaveCount(before + 1);
    await page.getByLabel('oven').check();
    await expect(steps.last()).toContainText('oven');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Remove: New step' }).click();
    await expect(steps).toHaveCount(before);
  });

  test('a recipe in use stays; its duplicate goes; it is kept on the shelf of the household', async ({ app: { page, host } }) => {
    await page.getByRole('button', { name: 'Take the recipe out' }).click();
    await expect(page.getByRole('alert').filter({ hasText: 'is in use by' })).toBeVisible();
    await page.getByRole('button', { name: 'Duplicate' }).click();
    await expect(page.getByRole('heading', { name: 'Spring-onion and spinach fritters, second way' })).toBeVisible();
    await page.getByRole('button', { name: 'Keep on my shelf' }).click();
    await expect(page.getByText('On your shelf, as it is here')).toBeVisible();
    const kept = JSON.parse(await readFile(join(host.dataFolder, 'household.brimful-shelf'), 'utf8')) as { recipes: { name: string }[] };
    expect(kept.recipes.length).toBeGreaterThan(48);
    expect(kept.recipes.at(-1)?.name).toContain('second way');
    await page.getByRole('button', { name: 'Take the recipe out' }).click();
    await expect(page.getByRole('heading', { name: 'Menu' })).toBeVisible();
  });
});
