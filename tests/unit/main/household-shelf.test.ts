import { utimesSync, writeFileSync } from 'node:fs';
import { mkdtemp, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { parseShelf, serialiseShelf } from '../../../shared/household';
import { shelfCalls } from '../../../src-main/answer/shelf-calls';
import { HouseholdShelf, openStore } from '../../../src-main/store';
import { runCommand } from '../../../src-main/command';

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
    const modified = await shelf.write(smaller, 'no-file');
    expect(await shelf.read()).toEqual({ text: smaller, from: shelf.path, modified });
  });

  it('keeps the version before as .bak', async () => {
    const shelf = new HouseholdShelf(folder);
    const first = await shelf.write('one', 'no-file');
    await shelf.write('two', first);
    expect(await readFile(`${shelf.path}.bak`, 'utf8')).toBe('one');
    expect(await readFile(shelf.path, 'utf8')).toBe('two');
  });

  it('writes nothing over what somebody else wrote since', async () => {
    const shelf = new HouseholdShelf(folder);
    const first = await shelf.write('one', 'no-file');
    await writeFile(shelf.path, 'theirs');
    for (const time of [first + 5000, first - 5000]) {
      await utimes(shelf.path, new Date(), new Date(time));
      await expect(shelf.write('two', first)).rejects.toMatchObject({ problem: { code: 'shelf-changed' } });
    }
    expect(await readFile(shelf.path, 'utf8')).toBe('theirs');
  });

  it('is not written over by the second of two windows that both saw none', async () => {
    const [one, two] = [new HouseholdShelf(folder), new HouseholdShelf(folder)];
    const outcomes = await Promise.allSettled([one.write('one', 'no-file'), two.write('two', 'no-file')]);
    expect(outcomes.map(({ status }) => status)).toEqual(['fulfilled', 'rejected']);
    expect(await readFile(one.path, 'utf8')).toBe('one');
  });

  it('that was removed is not brought back by one who saw it', async () => {
    const shelf = new HouseholdShelf(folder);
    const seen = await shelf.write('one', 'no-file');
    await rm(shelf.path);
    await expect(shelf.write('two', seen)).rejects.toMatchObject({ problem: { code: 'shelf-changed' } });
  });

  it('is not written when it could not be read again', async () => {
    const shelf = new HouseholdShelf(folder);
    const seen = await shelf.write('one', 'no-file');
    await expect(shelf.write(' '.repeat(8_000_001), seen)).rejects.toMatchObject({ problem: { code: 'shelf-too-large' } });
    expect(await readFile(shelf.path, 'utf8')).toBe('one');
    await shelf.write(' '.repeat(8_000_000), seen);
    expect((await shelf.read()).text).toHaveLength(8_000_000);
  });
});

it('answers the calls of the face from the data folder', async () => {
  const store = await openStore({ data: folder, events: folder, demos: folder });
  const calls = shelfCalls(store);
  const before = await calls['shelf.read']({});
  expect(before.modified).toBeNull();
  const { modified } = await calls['shelf.write']({ text: before.text, expect: before.modified });
  expect(await calls['shelf.read']({})).toEqual({ text: before.text, modified });
  // A window that saw no shelf writes over none.
  await expect(calls['shelf.write']({ text: before.text, expect: null })).rejects.toMatchObject({ problem: { code: 'shelf-changed' } });
  for (const text of ['', '{', '{"format":"brimful-shelf/1","recipes":[{}]}']) {
    await expect(calls['shelf.write']({ text, expect: modified }), text).rejects.toMatchObject({ problem: { code: 'no-shelf-text' } });
  }
  expect(await calls['shelf.read']({})).toEqual({ text: before.text, modified });
});

/** Runs a command; `between` at the first word it says on the side, which is after the shelf was read and before it is written. */
async function brimful(args: string[], between: () => void = () => {}): Promise<{ code: number; out: string; err: string }> {
  const [out, err]: [string[], string[]] = [[], []];
  const code = await runCommand(args, { out: (text) => out.push(text), err: (text) => { if (err.length === 0) between(); err.push(text); } });
  return { code, out: out.join('\n'), err: err.join('\n') };
}

describe('the command line and the household shelf', () => {
  it('keeps a recipe that the window put there between its reading and its writing, and says nothing was done', async () => {
    const path = join(folder, 'own.brimful-shelf');
    const starter = parsed((await new HouseholdShelf(folder).read()).text);
    await writeFile(path, serialiseShelf({ ...starter, recipes: starter.recipes.slice(0, 1) }));
    const theirs = serialiseShelf({ ...starter, recipes: starter.recipes.slice(0, 2) });
    // A recipe that does not say what it makes has its weight told, so something is said before the shelf is written.
    const foreign = join(folder, 'soup.json');
    await writeFile(foreign, JSON.stringify({ '@context': 'https://schema.org', '@type': 'Recipe', name: 'Plain dal', recipeIngredient: ['500 g red lentils'], recipeInstructions: ['Boil the lentils for 20 minutes.'] }));
    const write = (): void => {
      writeFileSync(path, theirs);
      utimesSync(path, new Date(), new Date(Date.now() + 5000));
    };
    const { code, out, err } = await brimful(['shelf', 'import', foreign, '--file', path, '--role', 'pulse', '--portions', '8'], write);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('changed by another window or program');
    expect(await readFile(path, 'utf8')).toBe(theirs);
  });
});
