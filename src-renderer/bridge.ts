import { contract, type Answer, type CallInput, type CallOutput } from '../shared/host';
import type { DesktopBridge, HostMethod } from '../shared/host/methods';

declare global {
  interface Window {
    /** What the desktop host puts on the window. The local host has none: there the page posts to it. */
    readonly brimful?: DesktopBridge;
  }
}

/** Largest body the browser promises to send after the page is gone, in bytes (the limit of `keepalive`, less room for others). */
const keepaliveBytes = 60_000;

function post(method: HostMethod, input: unknown, leaving: boolean): Promise<Response> {
  const body = JSON.stringify(input);
  return fetch(`/rpc/${method}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    credentials: 'same-origin',
    keepalive: leaving && new Blob([body]).size < keepaliveBytes,
    body,
  });
}

const failed = (code: string): Answer<never> => ({ ok: false, problem: { code, message: code } });

/** Calls the host. Never throws: a host that is gone or answers nonsense is a problem like any other. `leaving`: the page is going away. */
export async function call<M extends HostMethod>(method: M, input: CallInput<M>, { leaving = false }: { readonly leaving?: boolean } = {}): Promise<Answer<CallOutput<M>>> {
  let raw: unknown;
  let answered = false;
  try {
    if (window.brimful === undefined) {
      const response = await post(method, input, leaving);
      answered = true;
      raw = await response.json();
    } else {
      raw = await window.brimful.call(method, input);
    }
  } catch {
    return failed(answered ? 'shell.hostOdd' : 'shell.hostAway');
  }
  if (typeof raw !== 'object' || raw === null || !('ok' in raw)) return failed('shell.hostOdd');
  if (raw.ok !== true) {
    const problem = 'problem' in raw ? raw.problem : undefined;
    return isProblem(problem) ? { ok: false, problem } : failed('shell.hostOdd');
  }
  const parsed = contract[method].output.safeParse('value' in raw ? raw.value : undefined);
  return parsed.success ? { ok: true, value: parsed.data as CallOutput<M> } : failed('shell.hostOdd');
}

function isProblem(value: unknown): value is { code: string; message: string; mend?: string } {
  return typeof value === 'object' && value !== null && 'code' in value && 'message' in value && typeof value.message === 'string';
}
