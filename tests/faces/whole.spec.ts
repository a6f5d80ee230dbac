import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expectAccessible, expectReadable } from './axe';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

const views = ['Board', 'Guests', 'Menu', 'Kitchen', 'Shopping', 'Frying', 'Drinks', 'Day', 'Sheets'] as const;
const demos = ['Lantern Evening', 'School fair stall', 'Freezer Sunday'] as const;

/** The figures of the headline by their names. */
const headline = (page: Page): Promise<Record<string, number>> =>
  page.locator('main header [data-figure-value]').evaluateAll((all) => Object.fromEntries(all.map((f) => [f instanceof HTMLElement ? (f.dataset['figureTitle'] ?? '') : '', Number(f.getAttribute('data-figure-value'))])));
const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });
const count = (page: Page, name: 'Adults' | 'Children') => page.locator('main header').getByRole('spinbutton', { name });

async function preference(page: Page, label: string, value: string): Promise<void> {
  await page.getByRole('button', { name: 'Event…' }).click();
  await page.getByRole('button', { name: 'Units, clock, paper…' }).click();
  await page.getByLabel(label, { exact: true }).selectOption(value);
  await page.keyboard.press('Escape');
}

for (const demo of demos) {
  test(`${demo}: every view opens, and every figure of it opens its working`, async ({ app: { page } }) => {
    test.setTimeout(120_000);
    await openDemo(page, demo);
    const opened: Record<string, number> = {};
    for (const view of views) {
      await goTo(page, view);
      await expect(page.getByText('This view could not be drawn')).toBeHidden();
      opened[view] = await openEveryWorking(page);
    }
    // The third demo has no guests and no frying: there is less to show, but never nothing.
    expect(opened['Shopping']).toBeGreaterThan(10);
    expect(opened['Menu']).toBeGreaterThan(5);
    if (demo !== 'Freezer Sunday') for (const view of ['Board', 'Guests', 'Kitchen', 'Frying', 'Drinks']) expect(opened[view], view).toBeGreaterThan(0);
  });
}

for (const half of [views.slice(0, 5), views.slice(5)]) {
  test(`no rule of access is broken by day or by night: ${half.join(', ')}`, async ({ app: { page } }) => {
    test.setTimeout(180_000);
    await openDemo(page, 'Lantern Evening');
    for (const view of half) {
      await goTo(page, view);
      await expectAccessible(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectReadable(page);
      await page.emulateMedia({ colorScheme: 'light' });
    }
  });
}

test.describe('one event from first guess to paper', () => {
  test.beforeEach(async ({ app: { page } }) => openDemo(page, 'Lantern Evening'));

  test('the headcount by slider, plus and field: every figure follows, each is one step with its name', async ({ app: { page } }) => {
    const start = await headline(page);
    const follow = async (step: string, change: () => Promise<void>): Promise<void> => {
      await change();
      // The figures follow within a few frames of the key.
      await expect(async () => {
        const now = await headline(page);
        for (const name of ['Most people at once', 'Pieces to fry', 'Batter', 'Ginger tea', 'Barley-lemon water']) expect(now[name], `${step}: ${name}`).not.toBe(start[name]);
      }).toPass({ timeout: 5000 });
      await expect(page.locator('[data-change-strip]')).toBeVisible();
      await expect(undo(page)).toHaveAttribute('title', /^Undo: 68 to \d+ adults$/);
      await page.keyboard.press('Control+z');
      await expect.poll(() => headline(page), { message: `${step}, undone` }).toEqual(start);
      await expect(undo(page)).toBeDisabled();
    };
    await follow('field', async () => {
      await count(page, 'Adults').fill('90');
      await count(page, 'Adults').press('Enter');
    });
    await follow('field by arrow', async () => {
      await count(page, 'Adults').press('Shift+ArrowUp');
    });
    await follow('slider', async () => {
      const slider = page.getByRole('slider', { name: 'Adults, slider' });
      await slider.focus();
      await page.keyboard.press('End');
    });
    await page.locator('main header').getByRole('button', { name: 'Adults: more' }).click();
    await expect(count(page, 'Adults')).toHaveValue('69');
    await expect(undo(page)).toHaveAttribute('title', 'Undo: 68 to 69 adults');
  });

  test('the slider dragged with the mouse is one step', async ({ app: { page } }) => {
    const box = await page.getByRole('group', { name: 'Children, slider' }).locator('[class*="thumb"]').boundingBox();
    if (box === null) throw new Error('the slider is not drawn');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + 60, box.y + box.height / 2, { steps: 12 });
    await page.mouse.up();
    await expect(count(page, 'Children')).not.toHaveValue('21');
    await page.keyboard.press('Control+z');
    await expect(count(page, 'Children')).toHaveValue('21');
    await expect(undo(page)).toBeDisabled();
  });

  test('a wave dragged is one step, and so are its arrow keys', async ({ app: { page } }) => {
    const block = page.locator('[data-wave="noon"] button, [data-wave="noon-meal"] button').first();
    const name = await block.getAttribute('aria-label');
    const box = await block.boundingBox();
    if (box === null) throw new Error('the wave is not drawn');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 90, box.y + box.height / 2, { steps: 15 });
    await page.mouse.up();
    await expect(block).not.toHaveAttribute('aria-label', name ?? '');
    await expect(undo(page)).toHaveAttribute('title', /^Undo: Noon meal moved from /);
    await page.keyboard.press('Control+z');
    await expect(block).toHaveAttribute('aria-label', name ?? '');
    await expect(undo(page)).toBeDisabled();
    await block.focus();
    for (let press = 0; press < 3; press += 1) await page.keyboard.press('ArrowRight');
    await expect(block).not.toHaveAttribute('aria-label', name ?? '');
    await page.keyboard.press('Control+z');
    await expect(block).toHaveAttribute('aria-label', name ?? '');
    await expect(undo(page)).toBeDisabled();
    await expect(page.getByRole('button', { name: 'Redo', exact: true })).toHaveAttribute('title', /^Redo: Noon meal moved from /);
  });

  test('saved, opened again and saved again the file holds the same bytes', async ({ app: { page, host } }) => {
    await count(page, 'Children').fill('26');
    await count(page, 'Children').press('Enter');
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog', { name: 'Save as…' });
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    const [file = ''] = await readdir(host.eventsFolder);
    const path = join(host.eventsFolder, file);
    const first = await readFile(path);
    await page.reload();
    await page.getByRole('button', { name: /^Lantern Evening.*December/ }).click();
    await expect(count(page, 'Children')).toHaveValue('26');
    await count(page, 'Children').fill('27');
    await count(page, 'Children').press('Enter');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+s');
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    expect((await readFile(path)).equals(first)).toBe(true);
  });

  test('a wrong entry is explained beside its field; the plan stays and says it is not updated', async ({ app: { page } }) => {
    const start = await headline(page);
    await count(page, 'Adults').fill('sixty');
    await count(page, 'Adults').press('Enter');
    await expect(page.getByRole('alert')).toContainText('Adults is not a number. Enter one from 0 to 20,000.');
    await expect(count(page, 'Adults')).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('status').filter({ hasText: 'Not updated' })).toContainText('1 entry does not fit. Figures are from the last entry that did.');
    expect(await headline(page)).toEqual(start);
    await expectAccessible(page);
    await count(page, 'Adults').press('Escape');
    await expect(page.getByText('Not updated')).toBeHidden();
    await expect(count(page, 'Adults')).toHaveValue('68');
  });

  test('US units and the 12-hour clock reach every view', async ({ app: { page } }) => {
    await preference(page, 'Units', 'us');
    await preference(page, 'Clock', '12');
    await expect(page.locator('[data-figure-title="Batter"]')).toContainText('lb');
    for (const view of views) {
      await goTo(page, view);
      expect(await page.locator('main').innerText(), view).not.toMatch(/\d\s?(?:kg|ml|mm)\b/);
    }
    await goTo(page, 'Kitchen');
    const pan = page.getByRole('group', { name: 'Deep round pan' });
    await expect(pan.getByRole('spinbutton', { name: 'Across the rim' })).toHaveValue('15.75');
    await pan.getByRole('spinbutton', { name: 'Across the rim' }).fill('16');
    await pan.getByRole('spinbutton', { name: 'Across the rim' }).press('Enter');
    await pan.getByRole('spinbutton', { name: 'Depth' }).fill('1');
    await pan.getByRole('spinbutton', { name: 'Depth' }).press('Escape');
    await preference(page, 'Units', 'metric');
    // 16 inches are 406.4 mm; the field shows whole millimetres, the event holds the exact length.
    await expect(pan.getByRole('spinbutton', { name: 'Across the rim' })).toHaveValue('406');
    await expect(pan.getByRole('spinbutton', { name: 'Depth' })).toHaveValue('140');
  });
});
