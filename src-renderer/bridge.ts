import { contract, type Answer, type CallInput, type CallOutput } from '../shared/host';
import type { DesktopBridge, HostMethod } from '../shared/host/methods';

declare global {
  interface Window {
    /** What the desktop host puts on the window. The local host has none: there the page posts to it. */
    readonly brimful?: DesktopBridge;
  }
}

async function send(method: HostMethod, input: unknown): Promise<unknown> {
  if (window.brimful !== undefined) return window.brimful.call(method, input);
  const response = await fetch(`/rpc/${method}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    credentials: 'same-origin',
    body: JSON.stringify(input),
  });
  return response.json();
}

const failed = (code: string, message: string): Answer<never> => ({ ok: false, problem: { code, message } });

/** Calls the host. Never throws: a host that is gone or answers nonsense is a problem like any other. */
export async function call<M extends HostMethod>(method: M, input: CallInput<M>): Promise<Answer<CallOutput<M>>> {
  let raw: unknown;
  try {
    raw = await send(method, input);
  } catch {
    return failed('shell.hostAway', 'host.away');
  }
  if (typeof raw !== 'object' || raw === null || !('ok' in raw)) return failed('shell.hostOdd', 'shell.hostOdd');
  if (raw.ok !== true) {
    const problem = 'problem' in raw ? raw.problem : undefined;
    return isProblem(problem) ? { ok: false, problem } : failed('shell.hostOdd', 'shell.hostOdd');
  }
  const parsed = contract[method].output.safeParse('value' in raw ? raw.value : undefined);
  return parsed.success ? { ok: true, value: parsed.data as CallOutput<M> } : failed('shell.hostOdd', 'shell.hostOdd');
}

function isProblem(value: unknown): value is { code: string; message: string; mend?: string } {
  return typeof value === 'object' && value !== null && 'code' in value && 'message' in value && typeof value.message === 'string';
}
