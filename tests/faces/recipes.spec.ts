import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expectAccessible, expectReadable } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

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

test('a saved page becomes a dish and its shopping list is printed in at most 40 clicks and keystrokes', async ({ app: { page } }) => {
  await page.addInitScript(() => { window.print = () => { document.documentElement.dataset['printed'] = document.querySelector('[data-print-root]')?.textContent ?? ''; }; });
  await page.reload();
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
  await goTo(page, 'Sheets');
  await page.getByRole('button', { name: 'Print Shopping list' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-printed', /Shopping list.*Honey/s);
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

  test('lets a recipe be looked at before it is chosen, and adds it in one press without', async ({ app: { page } }) => {
    await page.getByLabel('Find by name or ingredient').fill('chai');
    await page.getByRole('button', { name: 'Look at Spiced milk tea' }).click();
    const look = page.locator('[data-look="spiced-milk-tea"]');
    await expect(look).toContainText('cardamom');
    await expectAccessible(page);
    await night(page, () => expectReadable(page));
    await page.getByRole('button', { name: 'Look at Spiced milk tea' }).click();
    await expect(look).toBeHidden();
    await page.getByRole('button', { name: 'Put Spiced milk tea on the menu' }).click();
    await expect(page.locator('tr[data-dish="spiced-milk-tea"]')).toBeVisible();
  });

  test('shows the minutes of each step, an estimate of what it makes, and the first thing missing', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'Paste a recipe' }).click();
    const many = Array.from({ length: 24 }, (_, at) => `Stir it well for ${at + 1} minutes`).join('\n');
    await page.getByLabel('Text of the recipe').fill(`Cellar stew\nServes 6\n2 kg onions, sliced\n1 kg potatoes\nMethod\nToast the cumin in the oil for 2 minutes\nChill for 30 minutes\n${many}`);
    await page.getByRole('button', { name: 'Read it' }).click();
    await expect(page.getByLabel('Step 1: Somebody busy')).toHaveValue('2');
    await expect(page.getByLabel('Step 2: By itself')).toHaveValue('30');
    await expect(page.getByLabel('Makes in all')).toHaveValue(/^3000 g/);
    await expect(page.getByText('Estimated from the ingredients')).toBeVisible();
    await page.getByLabel('Step 2: By itself').fill('45');
    await page.getByRole('button', { name: 'Put on the menu' }).click();
    await expect(page.getByLabel('Place in the meal')).toBeFocused();
    await expect(page.getByLabel('Place in the meal')).toBeInViewport();
    await page.getByRole('button', { name: 'Put on the menu' }).scrollIntoViewIfNeeded();
    await expect(page.getByText('Still missing: Place in the meal.')).toBeInViewport();
    await page.getByLabel('Place in the meal').selectOption({ label: 'Soups' });
    await page.getByRole('button', { name: 'Put on the menu' }).click();
    await page.getByRole('button', { name: 'Show Cellar stew' }).click();
    await page.getByRole('button', { name: 'Edit the recipe' }).click();
    await expect(page.getByLabel('Chill for 30 minutes: By itself')).toHaveValue('45');
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

  test('how an ingredient grows is told in words and opens', async ({ app: { page } }) => {
    const salt = page.locator('tr[data-line]').filter({ has: page.getByLabel('Salt, fine: Amount') });
    const more = salt.getByRole('button', { name: /^Salt, fine: With the size it grows/ });
    await more.click();
    await page.getByLabel('Salt, fine: With the size it grows').and(page.locator('select')).selectOption({ label: 'less than in step' });
    await page.getByLabel('To the power').fill('0.2');
    await page.getByLabel('To the power').press('Enter');
    await expect(page.getByRole('alert').filter({ hasText: '0.3' })).toBeVisible();
    await page.getByLabel('To the power').fill('0.8');
    await page.getByLabel('To the power').press('Enter');
    await page.getByLabel('to taste: the amount is a start').check();
    await expect(more).toContainText('less than in step (0.8); to taste; into each bowl');
    await expect(page.getByText('For ten times the size, 6.3 times as much goes in.')).toBeVisible();
    await expectAccessible(page);
    await page.keyboard.press('Control+z');
    await expect(more).not.toContainText('to taste');
  });

  test('rows move with the arrow keys, and the cursor stays in the row that moved', async ({ app: { page } }) => {
    const amount = page.getByLabel('Spinach: Amount');
    await amount.focus();
    await page.keyboard.press('Alt+ArrowUp');
    await expect(page.locator('tr[data-line="2"]').getByLabel('Spinach: Amount')).toBeFocused();
    await page.keyboard.press('Alt+ArrowDown');
    await page.keyboard.press('Alt+ArrowDown');
    await expect(page.locator('tr[data-line="4"]').getByLabel('Spinach: Amount')).toBeFocused();
    const steps = page.getByRole('table', { name: 'Steps' }).locator('tr[data-step]');
    const first = await steps.first().getAttribute('data-step');
    await steps.first().locator('input').first().focus();
    await page.keyboard.press('Alt+ArrowDown');
    await expect(steps.nth(1)).toHaveAttribute('data-step', String(first));
    await expect(steps.nth(1).locator('input').first()).toBeFocused();
  });

  test('a step says who, how many things, when it must be done and how its result keeps', async ({ app: { page } }) => {
    await page.getByRole('button', { name: /^Needs and order: Wash and dry/ }).click();
    await page.getByLabel('pot', { exact: true }).check();
    await page.getByLabel('How many: pot').fill('2');
    await page.getByLabel('How many: pot').press('Enter');
    await expect(page.locator('tr[data-step]').first()).toContainText('2 × pot');
    const latest = page.getByLabel('At the latest, before', { exact: true });
    await latest.fill('99999');
    await latest.press('Enter');
    await expect(page.getByRole('alert').filter({ hasText: 'At the latest, before' })).toBeVisible();
    await latest.fill('90');
    await latest.press('Enter');
    await page.getByLabel('Kept', { exact: true }).selectOption({ label: 'in the freezer' });
    await page.getByLabel('Keeps for: minutes, hours or days').selectOption({ label: 'days' });
    await page.getByLabel('Keeps for', { exact: true }).fill('30');
    await page.getByLabel('Keeps for', { exact: true }).press('Enter');
    await expect(page.getByLabel('Keeps for', { exact: true })).toHaveValue('30');
    await expectAccessible(page);
    await goTo(page, 'Prep');
    await expect(page.getByRole('rowheader', { name: 'Kept in the freezer' })).toBeVisible();
    await expect(page.getByText('Room in the freezer', { exact: true })).toBeVisible();
  });

  test('how it is fried can be changed, with the reason beside a number that does not do', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'How it is fried' }).click();
    const oil = page.getByLabel('Oil taken up, of its weight');
    await oil.fill('90');
    await oil.press('Enter');
    await expect(page.getByRole('alert').filter({ hasText: '40' })).toBeVisible();
    await oil.fill('12');
    await oil.press('Enter');
    await expect(page.getByLabel('In the oil', { exact: true })).toHaveValue('4');
    await page.getByLabel('In the oil', { exact: true }).fill('5');
    await page.getByLabel('In the oil', { exact: true }).press('Enter');
    await expect(page.getByText('25 g a piece, 5 min in oil of 177 °C, eaten within 20 min.')).toBeVisible();
    await expectAccessible(page);
    await night(page, () => expectReadable(page));
    await page.getByRole('button', { name: 'It is not fried' }).click();
    await expect(page.getByRole('button', { name: 'Say how it is fried' })).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(page.getByLabel('In the oil', { exact: true })).toHaveValue('5');
  });

  test('weights and ratios open their workings', async ({ app: { page } }) => {
    expect(await openEveryWorking(page)).toBeGreaterThan(20);
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

test('two recipes of one name on the shelf are told apart and joined', async ({ app: { page, host } }) => {
  // The file is written at the first keeping.
  const kept = async () => (JSON.parse(await readFile(join(host.dataFolder, 'household.brimful-shelf'), 'utf8').catch(() => '{"recipes":[]}')) as { recipes: { id: string; name: string }[] }).recipes;
  await openDemo(page, 'Lantern Evening');
  await goTo(page, 'Menu');
  await page.locator('tr[data-dish="ginger-tea"] th button').click();
  await page.getByRole('button', { name: 'Edit the recipe' }).click();
  await page.getByRole('button', { name: 'Duplicate' }).click();
  const name = page.getByLabel('Name', { exact: true });
  await name.fill('Cocoa');
  await name.press('Enter');
  await expect(page.getByText('Your shelf has another recipe of this name.')).toBeVisible();
  await page.getByRole('button', { name: 'Keep both on my shelf' }).click();
  await expect.poll(async () => (await kept()).filter((one) => one.name.startsWith('Cocoa')).map((one) => one.name)).toEqual(['Cocoa', 'Cocoa (2)']);
  const text = JSON.parse(await readFile(join(host.dataFolder, 'household.brimful-shelf'), 'utf8')) as { recipes: { name: string }[] };
  for (const one of text.recipes) if (one.name === 'Cocoa (2)') one.name = 'Cocoa';
  await writeFile(join(host.dataFolder, 'household.brimful-shelf'), JSON.stringify(text));
  await page.getByRole('button', { name: 'Back to the menu' }).click();
  await page.getByRole('button', { name: 'Add a dish' }).click();
  await expect(page.getByRole('heading', { name: 'Two of one name' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Keep the first: Cocoa' }).click();
  await expect(page.getByRole('heading', { name: 'Two of one name' })).toBeHidden();
  expect((await kept()).filter((one) => one.name.startsWith('Cocoa')).map((one) => one.id)).toEqual(['cocoa']);
});
