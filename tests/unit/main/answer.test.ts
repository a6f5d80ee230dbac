import { mkdir, mkdtemp, readFile, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { assert, asyncProperty, constantFrom, jsonValue } from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { allCalls, makeHandle, today } from '../../../src-main/answer';
import type { Handle, Shell } from '../../../src-main/answer';
import { openStore } from '../../../src-main/store';
import { eventFormat, newEvent, serialiseEvent } from '../../../shared/event';
import { contract, hostMethods } from '../../../shared/host';

let folder: string;
let handle: Handle;
const told: string[] = [];
const onePage = '%PDF-1.4\n1 0 obj <</Type /Pages /Kids [2 0 R]>> endobj\n2 0 obj <</Type /Page /Parent 1 0 R>> endobj';

const makeShell = (more: Partial<Shell> = {}): Shell => ({
  kind: 'test', version: '1.2.3', openPath: null, dialogs: null,
  ready: () => void told.push('ready'), setUnsaved: (unsaved) => void told.push(`unsaved ${unsaved}`), close: () => void told.push('close'),
  pdf: () => Promise.resolve(Buffer.from(onePage)), paper: () => Promise.resolve(false), ...more,
});
async function start(more: Partial<Shell> = {}): Promise<void> {
  const store = await openStore({ data: join(folder, 'data'), events: join(folder, 'events'), demos: join(folder, 'demos') });
  handle = makeHandle(allCalls(store, makeShell(more), () => new Date(2026, 11, 12, 18, 5)));
}
const value = async (method: string, input: unknown): Promise<unknown> => {
  const answer = await handle(method, input);
  if (!answer.ok) throw new Error(`${method}: ${answer.problem.code}: ${answer.problem.message}`);
  return answer.value;
};
const code = async (method: string, input: unknown): Promise<string> => {
  const answer = await handle(method, input);
  return answer.ok ? 'ok' : answer.problem.code;
};

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-answer-'));
  await start();
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe('the contract', () => {
  it('has one entry for every method name and no other', () => {
    expect(Object.keys(contract).sort()).toEqual([...hostMethods].sort());
  });
});

describe('the one door', () => {
  it.each(['nothing', '__proto__', 'constructor', 'toString', '', 7, null, undefined, {}])('knows no method %j', async (method) => {
    const answer = await handle(method, {});
    expect(answer).toMatchObject({ ok: false, problem: { code: 'unknown-method' } });
  });

  it('says at which field an input is wrong', async () => {
    const answer = await handle('events.save', { path: 3, text: '', expect: null });
    expect(answer).toMatchObject({ ok: false, problem: { code: 'bad-input' } });
    expect(JSON.stringify(answer)).toContain('path');
  });

  it('never throws, whatever is posted', async () => {
    const harmless = hostMethods.filter((method) => !['events.save', 'files.write', 'print.pdf'].includes(method));
    await assert(asyncProperty(constantFrom(...harmless), jsonValue(), async (method, input) => {
      const answer = await handle(method, input);
      expect(typeof answer.ok).toBe('boolean');
    }), { numRuns: 150 });
  });

  it('tells a fault of the program without its insides', async () => {
    await start({ pdf: () => Promise.reject(new TypeError('x is not a function')) });
    const answer = await handle('print.pdf', { html: '', name: 'a', path: null });
    expect(answer).toMatchObject({ ok: false, problem: { code: 'fault' } });
    expect(JSON.stringify(answer)).not.toContain(' at ');
  });
});

describe('calls about the program', () => {
  it('tells who answers and what day it is', async () => {
    expect(await value('app.info', {})).toEqual({
      host: 'test', version: '1.2.3', dialogs: false, today: '2026-12-12', now: 18 * 60 + 5, openPath: null, folder: join(folder, 'events'),
    });
    expect(today(new Date(2026, 0, 3, 0, 0))).toEqual({ today: '2026-01-03', now: 0 });
  });

  it('passes ready, unsaved and close on', async () => {
    told.length = 0;
    await value('app.ready', undefined);
    await value('app.setUnsaved', { unsaved: true });
    await value('app.close', {});
    expect(told).toEqual(['ready', 'unsaved true', 'close']);
  });

  it('changes only the settings it was given', async () => {
    await value('settings.set', { units: 'us' });
    expect(await value('settings.set', { theme: 'night' })).toMatchObject({ units: 'us', theme: 'night', clock: '24' });
    expect(await code('settings.set', { theme: 'purple' })).toBe('bad-input');
  });
});

describe('calls about events', () => {
  const text = serialiseEvent(newEvent({ id: 'lantern', title: 'Lantern evening', day: '2026-12-12' }));

  it('saves into a folder that is not there yet, opens, remembers, forgets', async () => {
    const { path, taken } = (await value('events.chooseSave', { name: 'Lantern: evening.brimful' })) as { path: string; taken: boolean };
    expect(path).toBe(join(folder, 'events', 'Lantern evening.brimful'));
    expect(taken).toBe(false);
    const saved = (await value('events.save', { path, text, expect: null })) as { modified: number };
    expect(await value('events.chooseSave', { name: 'Lantern evening' })).toMatchObject({ path, taken: true });
    expect(await value('events.open', { path })).toEqual({ path, text, modified: saved.modified });
    expect(await value('events.recent', {})).toEqual([{ path, title: 'Lantern evening', day: '2026-12-12', modified: saved.modified, exists: true }]);
    expect(await value('events.folder', {})).toMatchObject({ files: [{ path }] });
    await value('events.forget', { path });
    expect(await value('events.recent', {})).toEqual([]);
  });

  it('keeps what another program wrote', async () => {
    const path = join(folder, 'a.brimful');
    const { modified } = (await value('events.save', { path, text, expect: null })) as { modified: number };
    await new Promise((settle) => setTimeout(settle, 15));
    await writeFile(path, 'other');
    expect(await code('events.save', { path, text, expect: modified })).toBe('changed-outside');
    expect(await readFile(path, 'utf8')).toBe('other');
  });

  it.each([
    ['nothing', ''], ['half of it', text.slice(0, text.length / 2)], ['another kind of file', '{"format":"brimful-shelf/1","recipes":[]}'], ['a field that cannot be', text.replace('"2026-12-12"', '"soon"')],
  ])('writes no text over a good event that could not be opened again: %s', async (_name, bad) => {
    const path = join(folder, 'a.brimful');
    const { modified } = (await value('events.save', { path, text, expect: null })) as { modified: number };
    for (const seen of [modified, null]) {
      expect(await handle('events.save', { path, text: bad, expect: seen })).toMatchObject({ ok: false, problem: { code: 'no-event-text', message: expect.stringMatching(/nothing was written\. [A-Z].+\.$/) as string } });
    }
    expect(await readFile(path, 'utf8')).toBe(text);
  });

  it('says that a file was gone when it is written anew', async () => {
    const path = join(folder, 'a.brimful');
    const { modified, warning } = (await value('events.save', { path, text, expect: null })) as { modified: number; warning: unknown };
    expect(warning).toBeNull();
    await rm(path);
    expect(await value('events.save', { path, text, expect: modified })).toMatchObject({ warning: { code: 'was-gone', mend: expect.any(String) as string } });
    expect(await readFile(path, 'utf8')).toBe(text);
  });

  it('gives a problem with a remedy for a missing file', async () => {
    const answer = await handle('events.open', { path: join(folder, 'gone.brimful') });
    expect(answer).toMatchObject({ ok: false, problem: { code: 'no-file', mend: expect.stringContaining('Open it') as string } });
  });

  it('asks the native windows where there are some', async () => {
    const open = vi.fn<() => Promise<string | null>>(() => Promise.resolve('/x/a.brimful'));
    await start({ dialogs: { open, save: (suggested) => Promise.resolve(suggested) } });
    expect(await value('events.chooseOpen', {})).toEqual({ path: '/x/a.brimful' });
    expect(await value('events.chooseSave', { name: 'Sheet', extension: 'pdf' })).toEqual({ path: join(folder, 'events', 'Sheet.pdf'), taken: false });
  });

  it('has no open window without them', async () => {
    expect(await value('events.chooseOpen', {})).toEqual({ path: null });
  });

  it('keeps unsaved work aside', async () => {
    await value('recovery.keep', { id: 'one', path: '/x/one.brimful', modified: 12.5, text });
    expect(await value('recovery.list', {})).toMatchObject([{ id: 'one', title: 'Lantern evening', path: '/x/one.brimful' }]);
    expect(await value('recovery.read', { id: 'one' })).toEqual({ text, path: '/x/one.brimful', modified: 12.5 });
    await value('recovery.discard', { id: 'one' });
    expect(await code('recovery.read', { id: 'one' })).toBe('no-recovery');
    expect(await code('recovery.keep', { id: '../one', path: null, text })).toBe('bad-input');
  });
});

describe('calls about paper', () => {
  it('writes a PDF into the events folder and counts its pages', async () => {
    expect(await value('print.pdf', { html: '<p>x</p>', name: 'Fry list.pdf', path: null })).toEqual({ path: join(folder, 'events', 'Fry list.pdf'), pages: 1 });
    expect(await readFile(join(folder, 'events', 'Fry list.pdf'), 'latin1')).toBe(onePage);
  });

  it('writes no second sheet over the first when nobody chose a name', async () => {
    for (const path of ['Fry list.pdf', 'Fry list (2).pdf', 'Fry list (3).pdf']) {
      expect(await value('print.pdf', { html: '<p>x</p>', name: 'Fry list', path: null })).toMatchObject({ path: join(folder, 'events', path) });
    }
  });

  it('writes only documents', async () => {
    expect(await code('print.pdf', { html: '', name: 'a', path: join(folder, 'events', 'run.sh') })).toBe('wrong-ending');
    expect(await code('files.write', { path: join(folder, 'events', '.profile'), text: '' })).toBe('wrong-ending');
    expect(await code('files.write', { path: join(folder, 'events', 'feast.brimful'), text: '' })).toBe('wrong-ending');
  });

  it('writes only where the cook chose, or inside the events folder', async () => {
    const chosen = join(folder, 'elsewhere.csv');
    await start({ dialogs: { open: () => Promise.resolve(null), save: () => Promise.resolve(chosen) } });
    await mkdir(join(folder, 'events'));
    await symlink(folder, join(folder, 'events', 'way-out'));
    expect(await code('files.write', { path: chosen, text: 'a,b' })).toBe('not-chosen');
    expect(await code('print.pdf', { html: '', name: 'a', path: join(folder, 'a.pdf') })).toBe('not-chosen');
    expect(await code('files.write', { path: join(folder, 'events', '..', 'list.csv'), text: 'a,b' })).toBe('not-chosen');
    expect(await code('files.write', { path: join(folder, 'events', 'way-out', 'list.csv'), text: 'a,b' })).toBe('not-chosen');
    expect(await code('files.write', { path: join(folder, 'events', 'list.csv'), text: 'a,b' })).toBe('ok');
    await value('events.chooseSave', { name: 'x', extension: 'csv' });
    expect(await code('files.write', { path: chosen, text: 'a,b' })).toBe('ok');
    expect(await readdir(folder)).not.toContain('list.csv');
  });

  it('reads back a calendar it has written, and nothing else', async () => {
    const calendar = join(folder, 'events', 'feast.ics');
    await mkdir(join(folder, 'events'), { recursive: true });
    expect(await value('files.readCalendar', { path: calendar })).toEqual({ text: null });
    expect(await code('files.write', { path: calendar, text: 'BEGIN:VCALENDAR' })).toBe('ok');
    expect(await value('files.readCalendar', { path: calendar })).toEqual({ text: 'BEGIN:VCALENDAR' });
    await writeFile(join(folder, 'events', 'notes.txt'), 'a');
    expect(await code('files.readCalendar', { path: join(folder, 'events', 'notes.txt') })).toBe('wrong-ending');
    expect(await code('files.readCalendar', { path: join(folder, 'elsewhere.ics') })).toBe('not-chosen');
  });
});

describe('what the cook reads', () => {
  it('names the field of a wrong call in our own words', async () => {
    const answer = await handle('events.save', { path: 3, text: '', expect: null });
    expect(answer).toMatchObject({ ok: false, problem: { message: expect.stringContaining('events.save, path') as string, mend: expect.any(String) as string } });
    expect(JSON.stringify(answer)).not.toMatch(/expected|received|Invalid/i);
    expect(await handle('events.save', null)).toMatchObject({ ok: false, problem: { message: expect.stringContaining('events.save') as string } });
  });

  it('is no listing of checks when an answer goes wrong', async () => {
    await start({ version: 7 as never });
    const answer = await handle('app.info', {});
    expect(answer).toMatchObject({ ok: false, problem: { code: 'bad-answer' } });
    expect(JSON.stringify(answer)).not.toMatch(/expected|invalid_type/i);
  });
});

describe('an event file in a newer form', () => {
  const text = serialiseEvent(newEvent({ id: 'later', title: 'Later', day: '2026-12-12' }));
  const inForm = (form: number): string => JSON.stringify({ ...(JSON.parse(text) as object), format: `brimful-event/${form}`, fieldOfLater: 1 });
  const ours = Number(/\d+$/.exec(eventFormat)?.[0]);
  const [newer, older] = [inForm(99), inForm(ours)];
  it('is not written over in the older form, by no way', async () => {
    const path = join(folder, 'a.brimful');
    await writeFile(path, newer);
    expect(await code('events.save', { path, text: older, expect: null })).toBe('newer-format');
    expect(await readFile(path, 'utf8')).toBe(newer);
    expect(await code('events.save', { path, text: newer, expect: null })).toBe('ok');
    expect(await code('events.save', { path: join(folder, 'b.brimful'), text: older, expect: null })).toBe('ok');
  });

  it('is kept from that by the very next form already, and only by a newer one', async () => {
    const path = join(folder, 'a.brimful');
    await writeFile(path, inForm(ours + 1));
    expect(await code('events.save', { path, text: older, expect: null })).toBe('newer-format');
    expect(await code('events.save', { path, text: inForm(ours + 1), expect: null })).toBe('ok');
    await writeFile(path, older);
    expect(await code('events.save', { path, text: older.replace('Later', 'Now'), expect: null })).toBe('ok');
  });
});
