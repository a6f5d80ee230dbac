import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expectAccessible } from './axe';
import { expect, test } from './fixture';
import { startHost } from './local-host';
import { openDemo } from './views-open';

const title = 'Lantern Evening';

test.describe('Shell', () => {
  test('the start page offers a new event and the examples, and is accessible', async ({ app: { page } }) => {
    await expect(page.getByRole('button', { name: 'New event' })).toBeVisible();
    await expect(page.locator('[data-demo]')).toHaveText([/^Lantern Evening.+/, /^School fair stall.+/, /^Freezer Sunday.+/]);
    await expectAccessible(page);
  });

  test('a new event begins at Guests and asks before unsaved work is lost', async ({ app: { page } }) => {
    await page.getByRole('button', { name: 'New event' }).click();
    await expect(page.locator('main[data-view="guests"]')).toBeVisible();
    await expect(page.getByText('Not saved yet')).toBeVisible();
    await page.keyboard.press('Alt+n');
    const ask = page.getByRole('dialog', { name: 'Save first?' });
    await expect(ask).toBeVisible();
    await ask.getByRole('button', { name: 'Cancel' }).click();
    await expect(ask).toBeHidden();
  });

  test('every view is reached by its key', async ({ app: { page } }) => {
    await openDemo(page, title);
    const ids = ['board', 'guests', 'menu', 'kitchen', 'shopping', 'prep', 'frying', 'drinks', 'day', 'sheets'];
    for (const [at, id] of ids.entries()) {
      await page.keyboard.press(`Alt+${(at + 1) % 10}`);
      await expect(page.locator(`main[data-view="${id}"]`)).toBeVisible();
    }
  });

  test('save under a name, open it again from the list, find the change in it', async ({ app: { page, host } }) => {
    await openDemo(page, title);
    const children = page.locator('main header').getByRole('spinbutton', { name: 'Children' });
    await children.fill('26');
    await children.press('Enter');
    await expect(page.getByText('Not saved yet')).toBeVisible();
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog', { name: 'Save as…' });
    await dialog.getByRole('textbox', { name: 'Name of the file' }).fill('Our evening');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(dialog).toBeHidden();
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    const [file = ''] = await readdir(host.eventsFolder);
    expect(JSON.parse(await readFile(join(host.eventsFolder, file), 'utf8'))).toMatchObject({ format: 'brimful-event/1', guests: { headcount: { children: 26 } } });

    await page.reload();
    await page.getByRole('button', { name: new RegExp(title) }).first().click();
    await expect(page.locator('main header').getByRole('spinbutton', { name: 'Children' })).toHaveValue('26');
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  });

  test('a file changed outside is not written over unasked', async ({ app: { page, host } }) => {
    await openDemo(page, title);
    const children = page.locator('main header').getByRole('spinbutton', { name: 'Children' });
    const changeTo = async (n: string): Promise<void> => { await children.fill(n); await children.press('Enter'); };
    await page.keyboard.press('Control+s');
    await page.getByRole('dialog', { name: 'Save as…' }).getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    const path = join(host.eventsFolder, (await readdir(host.eventsFolder)).find((name) => name.endsWith('.brimful')) ?? '');
    const byAnother = async (n: number): Promise<string> => {
      const event = JSON.parse(await readFile(path, 'utf8')) as { guests: { headcount: { children: number } } };
      event.guests.headcount.children = n;
      const text = JSON.stringify(event);
      await writeFile(path, text);
      return text;
    };
    const dialog = page.getByRole('dialog', { name: 'The file was changed outside' });

    await byAnother(31);
    await changeTo('26');
    await page.keyboard.press('Control+s');
    await expect(dialog).toBeVisible();
    await expectAccessible(page);
    await dialog.getByRole('button', { name: 'Write over it' }).click();
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    expect(JSON.parse(await readFile(path, 'utf8'))).toMatchObject({ guests: { headcount: { children: 26 } } });

    const theirs = await byAnother(32);
    await changeTo('27');
    await page.keyboard.press('Control+s');
    await dialog.getByRole('button', { name: 'Save as another file' }).click();
    const name = page.getByRole('dialog', { name: 'Save as…' });
    await name.getByRole('textbox').fill('Our own');
    await name.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    expect(await readFile(path, 'utf8')).toBe(theirs);
    expect(JSON.parse(await readFile(join(host.eventsFolder, 'Our own.brimful'), 'utf8'))).toMatchObject({ guests: { headcount: { children: 27 } } });
  });

  test('the other version of a file can be looked at; the own one is kept', async ({ app: { page, host } }) => {
    await openDemo(page, title);
    const children = page.locator('main header').getByRole('spinbutton', { name: 'Children' });
    await page.keyboard.press('Control+s');
    await page.getByRole('dialog', { name: 'Save as…' }).getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    const path = join(host.eventsFolder, (await readdir(host.eventsFolder)).find((name) => name.endsWith('.brimful')) ?? '');
    const event = JSON.parse(await readFile(path, 'utf8')) as { guests: { headcount: { children: number } } };
    event.guests.headcount.children = 33;
    await writeFile(path, JSON.stringify(event));
    await children.fill('28');
    await children.press('Enter');
    await page.keyboard.press('Control+s');
    await page.getByRole('dialog', { name: 'The file was changed outside' }).getByRole('button', { name: 'Look at the other one' }).click();
    await expect(children).toHaveValue('33');
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    await page.getByRole('button', { name: 'Event…' }).click();
    await page.getByRole('button', { name: /^Lantern Evening.*from / }).click();
    await expect(children).toHaveValue('28');
    await expect(page.getByText('Not saved yet')).toBeVisible();
  });

  test('a name already taken is said before it is written over', async ({ app: { page } }) => {
    await openDemo(page, title);
    for (const round of [1, 2]) {
      await page.keyboard.press('Control+Shift+s');
      const dialog = page.getByRole('dialog', { name: 'Save as…' });
      await dialog.getByRole('textbox').fill('Twice');
      await dialog.getByRole('button', { name: 'Save', exact: true }).click();
      if (round === 1) await expect(dialog).toBeHidden();
      else await expect(dialog.getByText('There is a file named “Twice” already.')).toBeVisible();
    }
  });

  test('undo and redo by key name their steps', async ({ app: { page } }) => {
    await openDemo(page, title);
    const adults = page.locator('main header').getByRole('spinbutton', { name: 'Adults' });
    await adults.fill('70');
    await adults.press('Enter');
    await expect(page.getByRole('button', { name: 'Undo', exact: true })).toHaveAttribute('title', 'Undo: 68 to 70 adults');
    await page.keyboard.press('Control+z');
    await expect(adults).toHaveValue('68');
    await expect(page.getByRole('button', { name: 'Redo', exact: true })).toHaveAttribute('title', 'Redo: 68 to 70 adults');
    await page.keyboard.press('Control+Shift+z');
    await expect(adults).toHaveValue('70');
  });

  test('the event panel is accessible and closes with Escape', async ({ app: { page } }) => {
    await openDemo(page, title);
    await page.getByRole('button', { name: 'Event…' }).click();
    await expect(page.getByRole('dialog', { name: 'Event' })).toBeVisible();
    await expectAccessible(page);
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toBeHidden();
  });

  test('units and clock follow the preferences at once', async ({ app: { page } }) => {
    await openDemo(page, title);
    await page.getByRole('button', { name: 'Event…' }).click();
    await page.getByRole('button', { name: 'Units, clock, paper…' }).click();
    await page.getByLabel('Clock', { exact: true }).selectOption('12');
    await page.keyboard.press('Escape');
    await expect(page.getByText(/11:00\sam to 7:00\spm/)).toBeVisible();
  });

  test('night colours are readable too', async ({ app: { page } }) => {
    await page.emulateMedia({ colorScheme: 'dark' });
    await openDemo(page, title);
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'night');
    await expectAccessible(page);
  });

  test('work not saved is kept aside and offered again', async ({ app: { page } }) => {
    await openDemo(page, title);
    const adults = page.locator('main header').getByRole('spinbutton', { name: 'Adults' });
    await adults.fill('77');
    await adults.press('Enter');
    await page.waitForResponse((response) => response.url().endsWith('/rpc/recovery.keep'));
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Kept aside when the program last closed without saving' })).toBeVisible();
    await page.getByRole('button', { name: new RegExp(`^${title}.*from `) }).first().click();
    await expect(adults).toHaveValue('77');
    await expect(page.getByText('Not saved yet')).toBeVisible();
  });
});

test('a file that is no event is refused in words; the start page stays', async ({ page }) => {
  const folder = await mkdtemp(join(tmpdir(), 'brimful-bad-'));
  const file = join(folder, 'broken.brimful');
  await writeFile(file, '{"format": "brimful-event/1", "title": "Broken"');
  const host = await startHost({ open: file });
  try {
    await page.goto(host.address);
    await expect(page.getByRole('alert')).toContainText('This event file cannot be opened.');
    await expect(page.getByRole('button', { name: 'New event' })).toBeVisible();
    await expect(page.getByRole('alert')).toContainText('Line 1: the file ends too early.');
    await expectAccessible(page);
  } finally {
    await host.stop();
    await rm(folder, { recursive: true, force: true });
  }
});

test('an event with wrong entries names each field and how to mend it', async ({ page }) => {
  const folder = await mkdtemp(join(tmpdir(), 'brimful-bad-'));
  const file = join(folder, 'wrong.brimful');
  const event = JSON.parse(await readFile('assets/app/demo/lantern-evening.brimful', 'utf8')) as { title?: string; kitchen: { pans: { depthMm: unknown }[] } };
  delete event.title;
  for (const pan of event.kitchen.pans) pan.depthMm = 'deep';
  await writeFile(file, JSON.stringify(event));
  const host = await startHost({ open: file });
  try {
    await page.goto(host.address);
    const said = page.getByRole('alert').getByRole('listitem');
    await expect(said).toHaveText([
      'Title: this is missing. Add it.',
      'Pan 1 (Deep round pan), depth: a number belongs here, not "deep". Write it with digits and without quotation marks.',
      'Pan 2 (Small straight pan), depth: a number belongs here, not "deep". Write it with digits and without quotation marks.',
    ]);
    await expectAccessible(page);
  } finally {
    await host.stop();
    await rm(folder, { recursive: true, force: true });
  }
});

test('a recent file that is gone says so and can be taken off the list', async ({ app: { page, host } }) => {
  await openDemo(page, title);
  await page.keyboard.press('Control+s');
  await page.getByRole('dialog', { name: 'Save as…' }).getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  await rm(host.eventsFolder, { recursive: true });
  await page.reload();
  const row = page.getByRole('button', { name: /^Lantern Evening.*Saturday 12 December, moved or deleted$/ });
  await expect(row).toBeDisabled();
  await page.getByRole('button', { name: `Take ${title} off this list` }).click();
  await expect(row).toBeHidden();
});

test('the page itself never scrolls; only what is in it does', async ({ app: { page } }) => {
  await openDemo(page, title);
  for (const key of ['Alt+1', 'Alt+2', 'Alt+4']) {
    await page.keyboard.press(key);
    await page.evaluate(() => document.querySelector('main :is(section, li):last-of-type')?.scrollIntoView());
    expect(await page.evaluate(() => [document.documentElement.scrollTop, document.documentElement.scrollHeight - window.innerHeight])).toEqual([0, 0]);
  }
});
