// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { isWordId } from '../../../shared/words';
import { call } from '../../../src-renderer/bridge';

const asked = vi.fn<typeof fetch>();
const answers = (status: number, body: string): void => void asked.mockResolvedValue(new Response(body, { status }));
const keep = (text: string, leaving: boolean) => call('recovery.keep', { id: 'a', path: null, text }, { leaving });

beforeEach(() => {
  asked.mockReset();
  vi.stubGlobal('fetch', asked);
  Object.assign(window, { brimful: undefined });
});
afterEach(() => vi.unstubAllGlobals());

describe('a call over the local host', () => {
  it('hands a refusal on with its own sentence', async () => {
    const problem = { code: 'gate.too-large', message: 'Too much.', mend: 'Divide it.' };
    answers(413, JSON.stringify({ ok: false, problem }));
    expect(await call('recovery.list', {})).toEqual({ ok: false, problem });
  });

  it('tells an answer that is no answer from a host that is away', async () => {
    answers(502, 'bad gateway');
    expect(await call('recovery.list', {})).toMatchObject({ ok: false, problem: { code: 'shell.hostOdd' } });
    asked.mockRejectedValue(new TypeError('failed to fetch'));
    const away = await call('recovery.list', {});
    expect(away).toMatchObject({ ok: false, problem: { code: 'shell.hostAway' } });
    expect(!away.ok && isWordId(away.problem.message)).toBe(true);
  });

  it('outlives the page when the page is going away, as far as the browser promises that', async () => {
    answers(200, '{"ok":true,"value":{"done":true}}');
    await keep('x', false);
    await keep('x', true);
    await keep('x'.repeat(70_000), true);
    expect(asked.mock.calls.map(([, options]) => options?.keepalive)).toEqual([false, true, false]);
  });
});
