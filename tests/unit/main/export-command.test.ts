import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCommand } from '../../../src-main/command/run';

const file = 'assets/app/demo/lantern-evening.brimful';

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const told = { out: '', err: '' };
  const code = await runCommand(['export', file, ...args], { out: (text) => { told.out += `${text}\n`; }, err: (text) => { told.err += `${text}\n`; } });
  return { code, ...told };
}

test('a calendar ends each line with CR LF, the last one too', async () => {
  const { code, out } = await run('--as', 'calendar', '--helper', 'tea', '--remind', '5');
  expect(code).toBe(0);
  expect(out).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect(out.endsWith('END:VCALENDAR\r\n')).toBe(true);
  expect(out.replaceAll('\r\n', '')).not.toContain('\n');
  expect(out).toContain('TRIGGER:-PT5M');
});
test('a calendar written since the last one is the same file while nothing changed', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'calendar-'));
  const { out } = await run('--as', 'calendar');
  await writeFile(join(folder, 'last.ics'), out);
  expect((await run('--as', 'calendar', '--since', join(folder, 'last.ics'))).out).toBe(out);
  const other = out.replace('SUMMARY:', 'SUMMARY:Was ');
  await writeFile(join(folder, 'last.ics'), other);
  expect((await run('--as', 'calendar', '--since', join(folder, 'last.ics'))).out.match(/SEQUENCE:1/g)).toHaveLength(1);
  await rm(folder, { recursive: true });
});
test('a table and text hold fewer jobs for one helper than for all', async () => {
  for (const as of ['table', 'text']) {
    const [all, one] = [await run('--as', as), await run('--as', as, '--helper', 'Runner')];
    expect(one.code).toBe(0);
    expect(one.out.split('\n').length).toBeLessThan(all.out.split('\n').length);
  }
});
test.each([[[], '--as calendar'], [['--as', 'film'], '--as calendar'], [['--as', 'text', '--helper', 'Nobody'], 'no helper called Nobody'], [['--as', 'calendar', '--remind', '-3'], 'from 0 to 1440'], [['--as', 'calendar', '--since', file], 'is no calendar file'], [['--as', 'calendar', '--since', 'no-such.ics'], 'no-such.ics']])('%j is answered with what to do', async (args, says) => {
  const { code, err } = await run(...args);
  expect(code).toBe(2);
  expect(err).toContain(says);
});
