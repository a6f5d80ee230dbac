import { access, mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { runCommand } from '../../../src-main/command';
import { findBrowser } from '../../../src-main/browser';

const demo = 'assets/app/demo/lantern-evening.brimful';
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-command-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** A space that keeps number and unit on one line is a space to a reader. */
const plain = (lines: readonly string[]): string => lines.join('\n').replaceAll('\u00a0', ' ');

/** Runs a command as if typed. */
async function brimful(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommand(args, { out: (text) => out.push(text), err: (text) => err.push(text) });
  return { code, out: plain(out), err: plain(err) };
}
/** The demo with something changed, as a file. */
async function changed(name: string, edit: (event: Record<string, unknown>) => void): Promise<string> {
  const event = JSON.parse(await readFile(demo, 'utf8')) as Record<string, unknown>;
  edit(event);
  const path = join(folder, name);
  await writeFile(path, JSON.stringify(event));
  return path;
}

describe('help', () => {
  it.each(['plan', 'sheets', 'convert', 'check', 'compare', 'open'])('%s tells how it is used', async (name) => {
    const { code, out, err } = await brimful(name, '--help');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(new RegExp(`^Usage: brimful ${name} `));
    expect((await brimful('--help')).out).toContain(`\n  ${name} `);
  });

  it('is given for nothing and for an unknown command, as an error', async () => {
    expect(await brimful()).toMatchObject({ code: 2, out: '', err: expect.stringContaining('Usage: brimful') as string });
    expect(await brimful('bake')).toMatchObject({ code: 2, err: expect.stringContaining('There is no command "bake".') as string });
  });
});

describe('what cannot be used ends with 2 and says why', () => {
  it.each([
    [['plan'], 'Name the event file.'],
    [['plan', 'gone.brimful'], 'gone.brimful is not there.'],
    [['plan', demo, '--adults', 'many'], '--adults is a whole number from 0 to 20000, not "many".'],
    [['plan', demo, '--children=-1'], '--children is a whole number from 0 to 20000, not "-1".'],
    [['plan', demo, '--adults', '99999999'], '--adults is a whole number'],
    [['plan', demo, '--loud'], `Unknown option '--loud'.`],
    [['sheets', demo], 'Say with --out'],
    [['sheets', demo, '--out', 'x', '--paper', 'a3'], '--paper is a4 or letter, not "a3".'],
    [['sheets', demo, '--out', 'x', '--only', 'fry,menu'], 'There is no sheet "menu".'],
    [['plan', demo, '--adults', '-3'], '--adults is a whole number from 0 to 20000, not "-3".'],
    [['compare', demo], 'Name two event files.'],
    [['compare', demo, demo, 'third.brimful'], 'Leave "third.brimful" out: this takes 2 names.'],
    ...['check', 'plan', 'open'].map((name): [string[], string] => [[name, demo, 'second.brimful'], 'Leave "second.brimful" out: this takes one name.']),
    [['sheets', demo, 'second.brimful', '--out', 'x'], 'Leave "second.brimful" out'],
    [['export', demo, 'second.brimful', '--as', 'text'], 'Leave "second.brimful" out'],
    [['scale', 'a', 'b', '--factor', '2'], 'Leave "b" out'],
    [['open', 'gone.brimful'], 'gone.brimful is not there.'],
    [['convert', '2', 'cup'], 'Give an amount'],
    [['convert', 'two', 'cup', 'g'], '"two" is no amount.'],
    [['convert', '1/0', 'cup', 'g'], '"1/0" is no amount.'],
    [['convert', '1', 'cup', 'stone'], 'There is no unit "stone".'],
    [['convert', '1', 'cup', 'g'], 'depends on the food'],
    [['convert', '1', 'cup', 'g', '--of', 'flower'], 'The table has no food "flower".'],
    [['convert', '1', 'cup', 'g', '--of', 'flour'], 'chickpea flour'],
    [['convert', '1', 'clove', 'g', '--of', 'chickpea flour'], 'does not say what one clove of chickpea flour weighs'],
  ])('%j', async (args, sentence) => {
    const { code, out, err } = await brimful(...args);
    expect(err).toContain(sentence);
    expect({ code, out }).toEqual({ code: 2, out: '' });
  });

  it('names each field of a bad file', async () => {
    const path = await changed('bad.brimful', (event) => {
      event['opensAt'] = 'noon';
      event['day'] = '2026-02-30';
    });
    const { code, out, err } = await brimful('check', path);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/cannot be used:\n {2}\S.*\n {2}\S/);
    expect(err).toContain('opensAt');
    expect(err).toContain('day');
  });
});

describe('convert', () => {
  it.each([
    [['2.5', 'cup', 'ml'], '2.5 cup = about 591.5 ml'],
    [['2', '1/2', 'lbs', 'g'], '2.5 lb = about 1134 g'],
    [['12345', 'g', 'g'], '12345 g = 12345 g'],
    [['12345', 'g', 'kg'], '12345 g = 12.345 kg'],
    [['123456789', 'g', 'g'], '123456789 g = 123456789 g'],
    [['12345', 'oz', 'g'], '12345 oz = about 349975 g'],
    [['1/3', 'cup', 'tsp'], '1/3 cup = 16 tsp'],
    [['2/3', 'cup', 'ml'], '2/3 cup = about 157.7 ml'],
    [['\u00bd', 'l', 'ml'], '0.5 L = 500 ml'],
    [['1\u00bd', 'kg', 'g'], '1.5 kg = 1500 g'],
    [['2,5', 'kg', 'g'], '2.5 kg = 2500 g'],
    [['1/2', 'l', 'ml'], '0.5 L = 500 ml'],
    [['3', 'TBSP', 'tsp'], '3 tbsp = 9 tsp'],
  ])('%j', async (args, answer) => {
    expect(await brimful('convert', ...args)).toEqual({ code: 0, out: answer, err: '' });
  });

  it('names the density and its source', async () => {
    const { code, out } = await brimful('convert', '1', 'cup', 'g', '--of', 'Chickpea  Flour');
    const [answer = '', source = ''] = out.split('\n');
    const density = Number(/density: ([\d.]+) g\/ml/.exec(source)?.[1]);
    expect(code).toBe(0);
    expect(answer).toMatch(/^1 cup of chickpea flour = about [\d.]+ g$/);
    // Four digits are said: off by at most half of the fourth.
    expect(Number(/= about ([\d.]+)/.exec(answer)?.[1])).toBeCloseTo(Number((236.5882365 * density).toPrecision(4)), 6);
    expect(source).toMatch(/g\/ml, \S/);
  });
});

describe('scale', () => {
  it('takes a recipe of the shelf by its short name or name, the household’s own before that of the program', async () => {
    vi.stubEnv('BRIMFUL_DATA_DIR', join(folder, 'household'));
    const scaled = async (name: string) => JSON.parse((await brimful('scale', name, '--portions', '80', '--json')).out) as { name: string; ingredients: { item: string }[] };
    const byId = await scaled('onion-fritters');
    expect(byId.ingredients.length).toBeGreaterThan(3);
    expect(await scaled(byId.name.toUpperCase())).toEqual(byId);
    const own = join(folder, 'fritters.json');
    await writeFile(own, JSON.stringify({ id: 'onion-fritters', name: 'Our fritters', role: 'friedSnack', yield: { amount: { amount: '1', unit: 'kg' }, portions: 8 }, ingredients: [{ ingredient: 'onion', amount: { amount: '500', unit: 'g' } }] }));
    expect((await brimful('shelf', 'import', own, '--keep', 'new')).code).toBe(0);
    expect(await scaled('onion-fritters')).toMatchObject({ name: 'Our fritters', ingredients: [{}] });
    // Taken off the household's shelf, a recipe of the program is still found by its name.
    await writeFile(join(folder, 'household', 'household.brimful-shelf'), '{"format":"brimful-shelf/1","recipes":[]}');
    expect(await scaled('onion-fritters')).toEqual(byId);
    const { code, err } = await brimful('scale', 'onion-fitters', '--portions', '80');
    vi.unstubAllEnvs();
    expect(code).toBe(2);
    expect(err).toMatch(/^There is no file \S+onion-fitters, and no recipe "onion-fitters" among yours or those that come with the program\. brimful shelf list/);
  });
});

describe('plan', () => {
  it('prints a page, and JSON that other programs can read', async () => {
    const page = await brimful('plan', demo);
    expect(page.out).toContain('68 adults');
    const { out, err } = await brimful('plan', demo, '--adults', '90', '--json');
    expect(err).toBe('');
    const json = JSON.parse(out) as { guests: { adults: number; children: number }; frying: { batches: unknown[] } };
    expect(json.guests).toMatchObject({ adults: 90 });
    const children = Number(/(\d+) children/.exec(page.out)?.[1]);
    expect(json.guests.children).toBe(children);
  });

  it('gives the same bytes each time', async () => {
    const [first, second] = [await brimful('plan', demo, '--json'), await brimful('plan', demo, '--json')];
    expect(first.out).toBe(second.out);
  });

  it('ends with 1 exactly when there is a finding of level stop', async () => {
    const files = (await readdir('assets/app/demo')).filter((name) => name.endsWith('.brimful')).map((name) => join('assets/app/demo', name));
    // Oil to the brim is a stop in every set of rules.
    const brimming = await changed('brimming.brimful', (event) => {
      for (const pan of (event['kitchen'] as { pans: { oilLitres: number }[] }).pans) pan.oilLitres *= 2.6;
    });
    for (const file of [...files, brimming]) {
      const { code, out } = await brimful('plan', file, '--json');
      const { findings } = (JSON.parse(out) as { safety: { findings: { level: string }[] } }).safety;
      const stops = findings.some(({ level }) => level === 'stop') ? 1 : 0;
      expect({ file, plan: code, check: (await brimful('check', file)).code }).toEqual({ file, plan: stops, check: stops });
    }
    expect((await brimful('check', brimming)).out).toMatch(/^STOP /m);
  });
});

describe('compare', () => {
  it('finds nothing between a file and itself', async () => {
    expect(await brimful('compare', demo, demo)).toEqual({ code: 0, out: 'Nothing changes that you would notice.', err: '' });
  });

  it('tells what more guests change', async () => {
    const more = await changed('more.brimful', (event) => {
      (event['guests'] as Record<string, unknown>)['headcount'] = { adults: 90, children: null };
    });
    const { code, out } = await brimful('compare', demo, more);
    expect(code).toBe(0);
    expect(out).toMatch(/^68 to 90 adults$/m);
    expect(out).toMatch(/^Frying: \d+ to \d+ batches$/m);
  });
});

describe('sheets', () => {
  it('writes web pages that need nothing else, and PDFs where there is a browser', async () => {
    const out = join(folder, 'sheets');
    const browser = findBrowser();
    const { code, err } = await brimful('sheets', demo, '--out', out, '--only', 'shopping, drinks', '--paper', 'letter');
    const names = (await readdir(out)).sort();
    const pages = names.filter((name) => name.endsWith('.html'));
    expect(pages).toHaveLength(2);
    for (const name of pages) {
      const html = await readFile(join(out, name), 'utf8');
      expect(html).toMatch(/^<!doctype html>/i);
      expect(html).toContain('data:font/woff2;base64,');
      expect(html).not.toMatch(/(src|href)="(?!data:|#)|url\((?!data:)|<script/);
      expect(html).toMatch(/size:\s*(letter|215\.9mm)/i);
    }
    expect({ code, pdfs: names.filter((name) => name.endsWith('.pdf')).length, err: err !== '' })
      .toEqual(browser === null ? { code: 3, pdfs: 0, err: true } : { code: 0, pdfs: 2, err: false });
  }, 60_000);

  it('still writes the web pages where there is no browser, and ends with 3', async () => {
    vi.stubEnv('BRIMFUL_BROWSER', 'none');
    const out = join(folder, 'without');
    const { code, err } = await brimful('sheets', demo, '--out', out, '--only', 'shopping');
    vi.unstubAllEnvs();
    expect(code).toBe(3);
    expect(err).toContain('BRIMFUL_BROWSER');
    expect((await readdir(out)).map((name) => name.split('.').at(-1))).toEqual(['html']);
  });

  it('leaves nothing behind when the input is bad', async () => {
    await brimful('sheets', 'gone.brimful', '--out', join(folder, 'never'));
    await expect(access(join(folder, 'never'))).rejects.toThrow('ENOENT');
  });
});
