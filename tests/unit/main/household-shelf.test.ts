import { mkdtemp, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { parseShelf, serialiseShelf } from '../../../shared/household';
import { shelfCalls } from '../../../src-main/answer/shelf-calls';
import { HouseholdShelf, openStore } from '../../../src-main/store';

let folder = '';
beforeEach(async () => { folder = await mkdtemp(join(tmpdir(), 'brimful-shelf-')); });
afterEach(() => rm(folder, { recursive: true, force: true }));

const parsed = (text: string) => {
  const read = parseShelf(text);
  if (!read.ok) throw new Error('expected a shelf');
  return read.shelf;
};

describe('the household shelf', () => {
  it('reads as the shelf that comes with the program until there is one, and writes nothing by being read', async () => {
    const shelf = new HouseholdShelf(folder);
    const { text, modified, from } = await shelf.read();
    expect(modified).toBeNull();
    expect(from).toContain('starter.brimful-shelf');
    expect(parsed(text).recipes.length).toBeGreaterThanOrEqual(48);
    await expect(stat(shelf.path)).rejects.toThrow('ENOENT');
  });

  it('is written whole into a folder that is not there yet, and read from there afterwards', async () => {
    const shelf = new HouseholdShelf(join(folder, 'deep', 'data'));
    const starter = parsed((await shelf.read()).text);
    const smaller = serialiseShelf({ ...starter, recipes: starter.recipes.slice(0, 2) });
    const modified = await shelf.write(smaller, null);
    expect(await shelf.read()).toEqual({ text: smaller, from: shelf.path, modified });
  });

  it('keeps the version before as .bak', async () => {
    const shelf = new HouseholdShelf(folder);
    const first = await shelf.write('one', null);
    await shelf.write('two', first);
    expect(await readFile(`${shelf.path}.bak`, 'utf8')).toBe('one');
    expect(await readFile(shelf.path, 'utf8')).toBe('two');
  });

  it('writes nothing over what somebody else wrote since', async () => {
    const shelf = new HouseholdShelf(folder);
    const first = await shelf.write('one', null);
    await writeFile(shelf.path, 'theirs');
    await utimes(shelf.path, new Date(), new Date(first + 5000));
    await expect(shelf.write('two', first)).rejects.toMatchObject({ problem: { code: 'changed-outside' } });
    expect(await readFile(shelf.path, 'utf8')).toBe('theirs');
  });
});

it('answers the calls of the face from the data folder', async () => {
  const store = await openStore({ data: folder, events: folder, demos: folder });
  const calls = shelfCalls(store);
  const before = await calls['shelf.read']({});
  expect(before.modified).toBeNull();
  const { modified } = await calls['shelf.write']({ text: before.text, expect: before.modified });
  expect(await calls['shelf.read']({})).toEqual({ text: before.text, modified });
});
