import { readFileSync } from 'node:fs';
import { expect, test } from './fixture';
import { goTo, openDemo } from './views-open';

const demoFile = 'assets/app/demo/lantern-evening.brimful';

for (const size of [{ width: 1440, height: 900 }, { width: 1024, height: 640 }]) {
  test(`at ${size.width} pixels the list of all changes lies over everything, and the strip stays low`, async ({ app: { page } }) => {
    await page.setViewportSize(size);
    await openDemo(page, 'Lantern Evening');
    const adults = page.locator('main header').getByRole('spinbutton', { name: 'Adults' });
    await adults.fill('90');
    await adults.press('Enter');
    const strip = page.locator('[data-change-strip]');
    expect((await strip.boundingBox())?.height).toBeLessThanOrEqual(68);
    await strip.getByRole('button', { name: /^all \d+ changes$/ }).click();
    const list = page.locator('[data-all-changes]');
    // Wherever the list is, the topmost thing is the list.
    const covered = await list.evaluate((ul) => {
      const { left, top, width, height } = ul.getBoundingClientRect();
      const under: string[] = [];
      for (let x = left + 8; x < left + width - 16; x += 24) for (let y = top + 4; y < top + height - 4; y += 12) {
        const hit = document.elementFromPoint(x, y);
        if (hit !== null && !ul.contains(hit)) under.push(hit.outerHTML.slice(0, 80));
      }
      return under;
    });
    expect(covered).toEqual([]);
    await expect(list).toContainText(/Batter: .* to .*kg/);
  });
}

test('an event file from anywhere is opened in the page; saving asks for its name', async ({ app: { page, host } }) => {
  await expect(page.getByText(host.eventsFolder)).toBeVisible();
  await page.locator('[data-own-file]').setInputFiles({ name: 'from-a-stick.brimful', mimeType: 'application/json', buffer: readFileSync(demoFile) });
  await page.getByRole('navigation').getByRole('button', { name: 'Board', exact: true }).waitFor();
  await expect(page).toHaveTitle(/Lantern Evening/);
  await page.keyboard.press('Control+s');
  await expect(page.getByLabel('Name of the file')).toHaveValue('Lantern Evening');
});

test('a file that is no event says so and leaves the start page as it is', async ({ app: { page } }) => {
  const chosen = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file…' }).first().press('Enter');
  await (await chosen).setFiles({ name: 'letter.brimful', mimeType: 'text/plain', buffer: Buffer.from('Dear all') });
  await expect(page.getByRole('alert')).toContainText('This event file cannot be opened.');
});

test('a new event says what comes next until there is something in each', async ({ app: { page } }) => {
  await page.getByRole('button', { name: 'New event' }).click();
  const next = page.locator('[data-what-next]');
  await expect(next).toContainText('Menu: choose the dishes and drinks.');
  await next.getByRole('button', { name: /^Menu:/ }).click();
  await expect(page.locator('main[data-view="menu"]')).toBeVisible();
});

test('at 1024 pixels the menu tells what each dish contains, and the day its whole clock, without a sideways scroll', async ({ app: { page } }) => {
  await page.setViewportSize({ width: 1024, height: 640 });
  await openDemo(page, 'Lantern Evening');
  await goTo(page, 'Menu');
  const here = page.locator('[data-contains-here]').first();
  await expect(here).toBeVisible();
  const right = await here.evaluate((p) => p.getBoundingClientRect().right);
  expect(right).toBeLessThanOrEqual(1024);
  await goTo(page, 'Day');
  const wide = await page.locator('main svg[role="img"]').first().evaluate((svg) => {
    const box = svg.parentElement?.parentElement;
    return box === null || box === undefined ? 999 : box.scrollWidth - box.clientWidth;
  });
  expect(wide).toBeLessThanOrEqual(0);
});

test('the first jobs are the first of all', async ({ app: { page } }) => {
  await openDemo(page, 'Lantern Evening');
  const first = await page.locator('section[aria-labelledby="next-title"] time').first().textContent();
  await goTo(page, 'Day');
  await expect(page.locator('main tbody tr td').first()).toHaveText(first ?? '');
});

test('Drinks says when the first round of each is begun', async ({ app: { page } }) => {
  await openDemo(page, 'Lantern Evening');
  await goTo(page, 'Drinks');
  await expect(page.locator('[data-first-start]').first()).toHaveText(/^(\w{3} )?\d\d:\d\d$/);
});
