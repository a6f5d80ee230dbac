import type { Page } from '@playwright/test';
import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { openDemo } from './views-open';
import { openEveryWorking } from './workings';

const figure = async (page: Page, title: string): Promise<number> => Number(await page.locator(`main [data-figure-title="${title}"]`).first().getAttribute('data-figure-value'));
/** The waves as numbers are folded until asked for. */
const showNumbers = (page: Page): Promise<void> => page.getByText('Waves as numbers').click();
const adults = (page: Page) => page.locator('main header').getByRole('spinbutton', { name: 'Adults' });

test.describe('Board', () => {
  test.beforeEach(async ({ app: { page } }) => openDemo(page, 'Lantern Evening'));

  test('has five lanes on one clock and is accessible', async ({ app: { page } }) => {
    for (const lane of ['Guests', 'Frying', 'Drinks', 'Meal', 'Hands']) await expect(page.getByRole('region', { name: lane, exact: true })).toBeVisible();
    const lefts = await page.locator('[data-lane] svg').evaluateAll((all) => all.map((svg) => [svg.getBoundingClientRect().left, svg.getBoundingClientRect().width].join()));
    expect(new Set(lefts).size).toBe(1);
    await expectAccessible(page);
  });

  test('every figure of the headline opens its working', async ({ app: { page } }) => {
    expect(await openEveryWorking(page)).toBeGreaterThan(8);
  });

  test('a typed headcount moves everything, says what changed, and is undone in one step', async ({ app: { page } }) => {
    const before = { batches: await figure(page, 'Batches'), pieces: await figure(page, 'Pieces to fry') };
    await adults(page).fill('90');
    await adults(page).press('Enter');
    expect(await figure(page, 'Pieces to fry')).toBeGreaterThan(before.pieces);
    expect(await figure(page, 'Batches')).toBeGreaterThanOrEqual(before.batches);
    await expect(page.locator('[data-batch]')).toHaveCount(await figure(page, 'Batches'));
    const strip = page.locator('[data-change-strip]');
    await expect(strip).toContainText('68 to 90 adults');
    await strip.getByRole('button', { name: /^all \d+ changes$/ }).click();
    expect(await page.locator('[data-all-changes] li').count()).toBeGreaterThan(3);
    await strip.getByRole('button', { name: 'Undo: 68 to 90 adults' }).click();
    expect(await figure(page, 'Pieces to fry')).toBe(before.pieces);
    await expect(strip).toContainText('Taken back: 68 to 90 adults');
    await expect(adults(page)).toHaveValue('68');
  });

  test('a headcount that is no number stays as typed, with the reason, and the figures are marked', async ({ app: { page } }) => {
    const before = await figure(page, 'Batches');
    await adults(page).fill('many');
    await adults(page).press('Enter');
    await expect(page.getByRole('alert')).toContainText('Adults is not a number. Enter one from 0 to 20,000.');
    await expect(adults(page)).toHaveValue('many');
    await expect(adults(page)).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('status').filter({ hasText: 'Not updated' })).toBeVisible();
    expect(await figure(page, 'Batches')).toBe(before);
    await adults(page).press('Escape');
    await expect(page.getByRole('alert')).toBeHidden();
    await expect(adults(page)).toHaveValue('68');
  });

  test('dragging a wave moves it by steps of 5 minutes, everything follows, and one undo takes it back', async ({ app: { page } }) => {
    await showNumbers(page);
    const block = page.locator('[data-wave="afternoon"] button');
    const box = await block.boundingBox();
    if (box === null) throw new Error('the wave is not drawn');
    const first = page.getByRole('group', { name: 'Afternoon' }).getByRole('textbox', { name: 'First arrive' });
    await expect(first).toHaveValue('14:15');
    const peak = await figure(page, 'Most people at once');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    for (let step = 1; step <= 20; step += 1) await page.mouse.move(box.x + box.width / 2 - step * 6, box.y + box.height / 2);
    await page.mouse.up();
    const moved = await first.inputValue();
    expect(moved).not.toBe('14:15');
    expect(Number(moved.split(':')[1]) % 5).toBe(0);
    expect(await figure(page, 'Most people at once')).not.toBe(peak);
    await expect(page.locator('[data-change-strip]')).toContainText(`Afternoon moved from 14:15 to ${moved}`);
    await page.keyboard.press('Control+z');
    await expect(first).toHaveValue('14:15');
    expect(await figure(page, 'Most people at once')).toBe(peak);
    await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
  });

  test('the edges of a wave change its window; the arrow keys move it', async ({ app: { page } }) => {
    await showNumbers(page);
    const group = page.getByRole('group', { name: 'Afternoon' });
    const edge = page.locator('[data-wave="afternoon"] [data-edge="to"]');
    const box = await edge.boundingBox();
    if (box === null) throw new Error('the edge is not drawn');
    await page.mouse.move(box.x + 4, box.y + 16);
    await page.mouse.down();
    await page.mouse.move(box.x + 64, box.y + 16, { steps: 5 });
    await page.mouse.up();
    await expect(group.getByRole('textbox', { name: 'First arrive' })).toHaveValue('14:15');
    await expect(group.getByRole('textbox', { name: 'Last arrive' })).not.toHaveValue('15:15');
    await page.keyboard.press('Control+z');
    await expect(group.getByRole('textbox', { name: 'Last arrive' })).toHaveValue('15:15');
    await page.locator('[data-wave="afternoon"] button').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect(group.getByRole('textbox', { name: 'First arrive' })).toHaveValue('14:25');
    await expect(group.getByRole('textbox', { name: 'Last arrive' })).toHaveValue('15:25');
  });

  test('a wave is typed as well: "1430" is half past two', async ({ app: { page } }) => {
    await showNumbers(page);
    const field = page.getByRole('group', { name: 'Afternoon' }).getByRole('textbox', { name: 'First arrive' });
    await field.fill('1430');
    await field.press('Tab');
    await expect(field).toHaveValue('14:30');
    await field.fill('half past');
    await field.press('Enter');
    await expect(page.getByRole('alert')).toContainText('First arrive is not a clock time. Enter one such as 14:30.');
  });

  test('what needs a look names what to do; the helpers have their rows', async ({ app: { page } }) => {
    const look = page.getByRole('region', { name: 'Needs a look' });
    await expect(look.getByRole('listitem').first()).toBeVisible();
    const hands = page.getByRole('region', { name: 'Hands', exact: true });
    for (const helper of ['Cook', 'Fryer', 'Tea', 'Runner']) await expect(hands.getByText(helper, { exact: true })).toBeVisible();
    expect(await hands.locator('[data-task]').count()).toBeGreaterThan(10);
  });

  test('controls are large enough for a finger: 32 pixels at least', async ({ app: { page } }) => {
    const small = await page.locator('button:visible, input:visible, select:visible, summary:visible').evaluateAll((all) => all
      .filter((e) => !e.closest('[aria-hidden]') && getComputedStyle(e).clipPath === 'none' && !(e instanceof HTMLInputElement && e.type === 'range'))
      .map((e) => ({ name: e.textContent.slice(0, 30) || e.id, box: e.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 31.5 || box.height < 31.5)
      .map(({ name, box }) => `${name} ${Math.round(box.width)} × ${Math.round(box.height)}`));
    expect(small).toEqual([]);
  });
});

test('a laptop screen shows all five lanes at once; also with the change strip', async ({ app: { page } }) => {
  for (const size of [{ width: 1440, height: 900 }, { width: 1280, height: 800 }]) {
    await page.setViewportSize(size);
    if (size.width === 1440) await openDemo(page, 'Lantern Evening');
    const children = page.locator('main header').getByRole('spinbutton', { name: 'Children' });
    for (const count of ['21', '26']) {
      await children.fill(count);
      await children.press('Enter');
      for (const lane of ['guests', 'frying', 'drinks', 'meal', 'hands']) await expect(page.locator(`[data-lane="${lane}"]`), `${lane}, ${size.width} wide, ${count} children`).toBeInViewport({ ratio: 0.99 });
    }
  }
});

test('a narrow, low window loses nothing', async ({ app: { page } }) => {
  await page.setViewportSize({ width: 1024, height: 640 });
  await openDemo(page, 'Lantern Evening');
  await expect(page.getByRole('button', { name: /things? needs? a look/ })).toBeVisible();
  const nav = page.getByRole('navigation').first();
  for (const view of ['Board', 'Sheets']) await expect(nav.getByRole('button', { name: view, exact: true })).toBeInViewport();
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wider).toBe(0);
  await expectAccessible(page);
});
