import { expectAccessible } from './axe';
import { readFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, test } from './fixture';
import { startHost } from './local-host';
import { goTo, openDemo } from './views-open';
import { openEveryWorking } from './workings';

/** The day of a demo whose kitchen or helpers were changed in the file. */
async function withChanged(page: Page, change: (event: { people: unknown[]; kitchen: { pots: unknown[] }; [key: string]: unknown }) => void, look: () => Promise<void>): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'day-'));
  const event = JSON.parse(await readFile('assets/app/demo/school-fair-stall.brimful', 'utf8')) as Parameters<typeof change>[0];
  change(event);
  const file = join(folder, 'changed.brimful');
  await writeFile(file, JSON.stringify(event));
  const host = await startHost({ open: file });
  try {
    await page.goto(host.address);
    await page.getByRole('navigation').getByRole('button', { name: 'Board', exact: true }).waitFor();
    await goTo(page, 'Day');
    await look();
  } finally {
    await host.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

test.describe('Day', () => {
  test('puts every helper on the clock, with every working, and is accessible', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const picture = page.getByRole('img', { name: 'Everybody on the clock' });
    for (const name of ['Cook', 'Fryer', 'Tea', 'Runner']) await expect(picture.getByText(name, { exact: true })).toBeVisible();
    expect(await openEveryWorking(page)).toBe(4);
    await expectAccessible(page);
  });

  test('lists the jobs of one helper only', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const rows = page.getByRole('table', { name: 'Jobs' }).locator('tbody tr');
    const all = await rows.count();
    await page.getByLabel('Jobs of').selectOption({ label: 'Fryer' });
    const own = await rows.count();
    expect(own).toBeGreaterThan(5);
    expect(own).toBeLessThan(all);
    for (const who of await rows.locator('td:nth-child(4)').allTextContents()) expect(who).toContain('Fryer');
  });

  test('shows in the list the job that was pressed in the picture', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const block = page.locator('main svg [data-chosen="false"]').nth(3);
    await block.dispatchEvent('click');
    await expect(page.locator('main svg [data-chosen="true"]').first()).toBeAttached();
    await expect(page.getByRole('table', { name: 'Jobs' }).locator('tr[class*="chosen"]')).toHaveCount(1);
  });

  test('cuts no label: each stands whole inside its block', async ({ app: { page } }) => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const labels = await page.locator('main svg [data-chosen]:has(text)').evaluateAll((blocks) => blocks.map((g) => {
      const [rect, text] = [g.querySelector('rect'), g.querySelector('text')].map((e) => e?.getBoundingClientRect());
      return { left: (text?.left ?? 0) - (rect?.left ?? 0), right: (rect?.right ?? 0) - (text?.right ?? 0) };
    }));
    expect(labels.length).toBeGreaterThan(0);
    for (const { left, right } of labels) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeGreaterThanOrEqual(0);
    }
  });

  test('marks few jobs as what must not slip, the same as the list and the picture', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const rows = page.getByRole('table', { name: 'Jobs' }).locator('tbody tr');
    const marked = await rows.filter({ hasText: 'must not slip' }).count();
    expect(marked).toBeGreaterThan(0);
    expect(marked).toBeLessThan((await rows.count()) / 4);
    expect(await page.locator('main ul[class*="critical"] li').count()).toBe(marked);
    expect(await page.locator('main svg rect[class*="edge"]').count()).toBe(marked);
  });

  test('a job is dragged along the clock, is pinned there, and one undo takes it back', async ({ app: { page } }) => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const block = page.locator('main svg [data-task="set-up/tables"]').first();
    await block.scrollIntoViewIfNeeded();
    const before = await block.locator('title').textContent();
    const box = await block.boundingBox();
    if (box === null) throw new Error('the block is not drawn');
    await page.mouse.move(box.x + 12, box.y + 8);
    await page.mouse.down();
    await page.mouse.move(box.x + 60, box.y + 8, { steps: 6 });
    await page.mouse.up();
    await expect(block).toHaveAttribute('data-held', 'pinned');
    expect(await block.locator('title').textContent()).not.toBe(before);
    await expect(page.getByRole('region', { name: 'The chosen job' })).toContainText('pinned');
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    await expect(block).not.toHaveAttribute('data-held', 'pinned');
    expect(await block.locator('title').textContent()).toBe(before);
  });

  test('a job is dragged to another helper', async ({ app: { page } }) => {
    await page.setViewportSize({ width: 1440, height: 1000 });
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const block = page.locator('main svg [data-lane="runner"] [data-task="set-up/tables"]').first();
    await block.scrollIntoViewIfNeeded();
    const [from, to] = [await block.boundingBox(), await page.locator('main svg [data-lane="cook"]').boundingBox()];
    if (from === null || to === null) throw new Error('the lanes are not drawn');
    await page.mouse.move(from.x + 12, from.y + 8);
    await page.mouse.down();
    await page.mouse.move(from.x + 12, to.y + 12, { steps: 8 });
    await page.mouse.up();
    const panel = page.getByRole('region', { name: 'The chosen job' });
    await expect(panel.getByLabel('Given to')).toHaveValue('cook');
  });

  test('keys choose a job, move it by five minutes and give it to somebody else', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const block = page.locator('main svg [data-task="set-up/tables"]').first();
    await block.dispatchEvent('click');
    const panel = page.getByRole('region', { name: 'The chosen job' });
    const starts = await panel.getByLabel('Starts at').inputValue();
    await page.keyboard.press('ArrowRight');
    await expect(panel.getByLabel('Starts at')).not.toHaveValue(starts);
    await expect(block).toHaveAttribute('data-held', 'pinned');
    await page.keyboard.press('Shift+ArrowDown');
    await expect(panel.getByLabel('Given to')).not.toHaveValue('anybody');
    const title = await panel.getByRole('heading').textContent();
    await page.keyboard.press('ArrowDown');
    await expect(panel.getByRole('heading')).not.toHaveText(title ?? '');
    await expectAccessible(page);
  });

  test('a pin that cannot hold names what it clashes with, and is let go of', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    await page.locator('main svg [data-task="step/boil/rice"]').first().dispatchEvent('click');
    const panel = page.getByRole('region', { name: 'The chosen job' });
    await panel.getByLabel('Starts at').fill('12:15');
    await panel.getByLabel('Starts at').press('Enter');
    await expect(panel.getByRole('status').first()).toContainText('too late for');
    await panel.getByRole('button', { name: 'Let the plan choose the time' }).click();
    await expect(panel.getByRole('status')).toHaveCount(0);
  });

  test('a job of the cook\u2019s own is added, named and taken out; a job is switched off and on again', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    await page.getByRole('button', { name: 'Add a job' }).click();
    const panel = page.getByRole('region', { name: 'The chosen job' });
    await panel.getByLabel('Name of the job').fill('Fetch the ice');
    await panel.getByLabel('Name of the job').press('Enter');
    const rows = page.getByRole('table', { name: 'Jobs' });
    await expect(rows).toContainText('Fetch the ice');
    await panel.getByRole('button', { name: 'Take out' }).click();
    await expect(rows).not.toContainText('Fetch the ice');
    await page.locator('main svg [data-task="set-up/tables"]').first().dispatchEvent('click');
    await panel.getByRole('button', { name: 'Switch off' }).click();
    await expect(page.getByRole('region', { name: 'Switched off' })).toContainText('Set up tables');
    await page.getByRole('button', { name: /^Switch on again/ }).click();
    await expect(page.getByRole('region', { name: 'Switched off' })).toHaveCount(0);
  });

  test('lanes by thing show burners and pots; the work at the hot oil stands still', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    await page.getByLabel('Lanes', { exact: true }).selectOption('things');
    await expect(page.locator('main svg [data-lane-kind="thing"]').first()).toBeAttached();
    for (const name of ['Big ring', 'Large pot', 'Deep round pan']) await expect(page.getByRole('img', { name: 'Everybody on the clock' }).getByText(name, { exact: true })).toBeVisible();
    await page.locator('main svg [data-kind="watchOil"]').first().dispatchEvent('click');
    await expect(page.getByRole('region', { name: 'The chosen job' })).toContainText('keeps the minute of the fry plan');
    await expectAccessible(page);
  });

  test('a better day is offered in words, taken by one press, undone by one, and waved away; nothing below it moves', async ({ app: { page } }) => {
    await openDemo(page, 'School fair stall');
    await goTo(page, 'Day');
    const strip = page.locator('[data-better]');
    const picture = page.getByRole('img', { name: 'Everybody on the clock' });
    const place = async (): Promise<number> => (await picture.boundingBox())?.y ?? -1;
    await expect(strip).toHaveAttribute('data-better', 'looking');
    const before = await place();
    await expect(strip).toHaveAttribute('data-better', 'offer', { timeout: 30_000 });
    await expect(strip).toContainText(/A better day was found: .*finished food waits .* less/);
    expect(await place()).toBe(before);
    await strip.getByRole('button', { name: 'Leave it' }).click();
    await expect(strip).toHaveAttribute('data-better', 'away');
    expect(await place()).toBe(before);
    await strip.getByRole('button', { name: 'Show it again' }).click();
    const blocks = (): Promise<string[]> => page.locator('main svg [data-task] title').allTextContents();
    const drawn = await blocks();
    await strip.getByRole('button', { name: 'Take it' }).click();
    await expect.poll(blocks).not.toEqual(drawn);
    await expect(strip).toHaveAttribute('data-better', 'taken', { timeout: 30_000 });
    await expectAccessible(page);
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    await expect.poll(blocks).toEqual(drawn);
  });

  test('a day that cannot be done names what clashes and offers ways out; one press makes it fit, undo brings it back', async ({ page }) => {
    await withChanged(page, (event) => { event.people = event.people.slice(0, 2); }, async () => {
      const clash = page.getByRole('region', { name: 'Does not fit' });
      await expect(clash.getByRole('listitem').first()).toContainText(/\d\d:\d\d/);
      const ways = clash.getByRole('list', { name: 'Ways out' }).last();
      const press = ways.getByRole('button').first();
      await expect(press).toBeEnabled({ timeout: 45_000 });
      const list = ways.locator('xpath=..');
      expect(await list.getByRole('listitem').count()).toBeLessThanOrEqual(3);
      await expect(list.getByRole('listitem').first()).toContainText(/Then .*fits?/);
      const before = await page.locator('main svg [data-late="true"]').count();
      expect(before).toBeGreaterThan(0);
      await expectAccessible(page);
      await press.click();
      await expect.poll(() => page.locator('main svg [data-late="true"]').count()).toBeLessThan(before);
      await page.getByRole('button', { name: /^Undo/ }).first().click();
      await expect.poll(() => page.locator('main svg [data-late="true"]').count()).toBe(before);
    });
  });

  test('a press beside a thin block is meant for it', async ({ app: { page } }) => {
    await page.setViewportSize({ width: 1440, height: 1000 });
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const block = page.locator('main svg [data-lane="runner"] [data-task="set-up/tables"]').first();
    await block.scrollIntoViewIfNeeded();
    const box = await block.locator('rect').first().boundingBox();
    if (box === null) throw new Error('the block is not drawn');
    await page.mouse.click(box.x - 15, box.y + box.height / 2);
    await expect(block).toHaveAttribute('data-chosen', 'true');
    const keys = page.getByRole('button', { name: /^Arrow keys move/ });
    await expect(keys).toBeFocused();
    expect((await keys.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
  });

  test('each move by keys is told, also one that cannot be made, and the keyboard stays where it is', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    await page.locator('main svg [data-task="set-up/tables"]').first().dispatchEvent('click');
    const told = page.locator('main output[aria-live="polite"]').filter({ hasText: 'Set up tables' });
    const first = await told.textContent();
    await page.keyboard.press('ArrowRight');
    await expect(told).not.toHaveText(first ?? '');
    await expect(page.getByRole('button', { name: /^Arrow keys move/ })).toBeFocused();
    await page.locator('main svg [data-kind="watchOil"]').first().dispatchEvent('click');
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('alert')).toContainText('keeps the minute of the fry plan');
    await expect(page.getByRole('button', { name: /^Arrow keys move/ })).toBeFocused();
    await expectAccessible(page);
  });

  test('a printed page whose job has moved is named on Day and on the Board, with the minute on paper and the one it has now', async ({ app: { page } }) => {
    await page.addInitScript(() => { window.print = () => undefined; });
    await page.reload();
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Sheets');
    await page.getByRole('button', { name: 'Print Runner: jobs of the day' }).click();
    await goTo(page, 'Day');
    const stale = page.getByRole('region', { name: 'Pages out of date' });
    await expect(stale).toHaveCount(0);
    await page.locator('main svg [data-task="set-up/tables"]').first().dispatchEvent('click');
    const starts = page.getByRole('region', { name: 'The chosen job' }).getByLabel('Starts at');
    const was = await starts.inputValue();
    await starts.fill('08:20');
    await starts.press('Enter');
    await expect(stale).toContainText('Runner: page A is out of date');
    await expect(stale).toContainText(/printed at \d\d:\d\d, now \d\d:\d\d.* Print Runner's page again\./);
    expect(was).not.toBe('08:20');
    await goTo(page, 'Board');
    await expect(page.getByText('Runner: page A is out of date').first()).toBeVisible();
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    await goTo(page, 'Day');
    await expect(stale).toHaveCount(0);
  });

  test('is saved as a calendar; saved again after a change, its revisions are counted on', async ({ app: { page } }) => {
    await openDemo(page, 'Lantern Evening');
    await goTo(page, 'Day');
    const save = async (): Promise<string> => {
      await page.getByRole('button', { name: 'Save as a calendar' }).click();
      const said = page.locator('main output', { hasText: '.ics' });
      await expect(said).toBeVisible();
      return readFile(((await said.textContent()) ?? '').replace('Written to ', ''), 'utf8');
    };
    const first = await save();
    expect(first).toContain('BEGIN:VCALENDAR');
    expect(first).not.toContain('SEQUENCE:1');
    await goTo(page, 'Board');
    await page.locator('main header').getByRole('spinbutton', { name: 'Adults' }).fill('90');
    await page.keyboard.press('Enter');
    await goTo(page, 'Day');
    const second = await save();
    expect(second).toContain('SEQUENCE:1');
    expect(second).toContain('SEQUENCE:0');
  });
});
