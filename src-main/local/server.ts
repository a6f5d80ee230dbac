import { createServer } from 'node:http';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { Handle } from '../answer';
import { pageFile, safeHeaders } from '../pages';
import { HostProblem, problemOf } from '../problem';
import { bodyOf } from './body';
import { callRefusal, hostRefusal } from './gate';
import type { Refusal } from './gate';
import { handOverInput } from './hand-over';
import type { Handed } from './hand-over';
import { Pass, same } from './pass';

/** What the server needs to know. */
export interface ServerOptions {
  /** Folder of the built screens. */
  readonly pages: string;
  readonly handle: Handle;
  /** Called at each request that was let in. */
  readonly seen?: () => void;
  /** How a second start hands over a file: the secret it must know, and who takes the file and answers whether a window is there. */
  readonly handOver?: { readonly secret: string; readonly take: (path: string | null) => boolean };
}

/** A running local host. */
export interface LocalServer {
  readonly port: number;
  /** The address with the one-time code. */
  readonly startAddress: string;
  /** A new address of that kind; those before stay good. */
  newStartAddress(): string;
  stop(): Promise<void>;
}

/** Serves the screens and the calls on 127.0.0.1 at a free port, to the one window that holds the pass. */
export async function serveLocally(options: ServerOptions): Promise<LocalServer> {
  const pass = new Pass();
  let port = 0;
  const server = createServer((request, response) => {
    void answer(request, response, { ...options, pass, port }).catch((error: unknown) => {
      if (!response.headersSent) sendJson(response, 500, { ok: false, problem: problemOf(error) });
      else response.destroy();
    });
  });
  server.requestTimeout = 60_000;
  server.maxHeadersCount = 100;
  port = await listen(server);
  const startAt = (code: string): string => `http://127.0.0.1:${port}/?start=${code}`;
  return {
    port,
    startAddress: startAt(pass.newCode()),
    newStartAddress: () => startAt(pass.newCode()),
    stop: () => new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}

interface Setting extends ServerOptions {
  readonly pass: Pass;
  readonly port: number;
}

async function answer(request: IncomingMessage, response: ServerResponse, setting: Setting): Promise<void> {
  const { pass, port } = setting;
  const refusal = hostRefusal(request.headers, port);
  if (refusal) return refuse(response, refusal);
  const address = addressOf(request.url, port);
  if (address === null) return refuse(response, { status: 400, reason: 'host.gate.no-address' });
  if (address.pathname === '/hand-over') return handOver(request, response, setting);
  const code = address.pathname === '/' && request.method === 'GET' ? address.searchParams.get('start') : null;
  const admitted = pass.admits(request.headers.cookie, port);
  if (code !== null && pass.swap(code)) return letIn(request, response, pass.setCookie(port));
  if (!admitted) return refuse(response, { status: 403, reason: 'host.gate.closed' }, address.pathname);
  setting.seen?.();
  if (code !== null) return redirect(response);
  if (address.pathname.startsWith('/rpc/')) return call(request, response, address.pathname.slice('/rpc/'.length), setting);
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, { status: 405, reason: 'host.gate.only-reading' });
  const file = await pageFile(setting.pages, address.pathname);
  if (file === null) return refuse(response, { status: 404, reason: 'host.gate.no-address' });
  send(response, 200, file.kind, request.method === 'HEAD' ? '' : file.bytes);
}

async function call(request: IncomingMessage, response: ServerResponse, method: string, { handle, port }: Setting): Promise<void> {
  const refuseCall = (refusal: Refusal): void => refuse(response, refusal, request.url);
  if (request.method !== 'POST') return refuseCall({ status: 405, reason: 'host.gate.not-posted' });
  const refusal = callRefusal(request.headers, port);
  if (refusal) return refuseCall(refusal);
  const body = await bodyOf(request);
  if (body === null) return refuseCall({ status: 413, reason: 'host.gate.too-large' });
  const input = jsonOf(body);
  if (input === noJson) return refuseCall({ status: 400, reason: 'host.gate.not-json' });
  return sendJson(response, 200, await handle(method, input, goneSignal(response)));
}

/** Aborted when the window that asked goes before it is answered: closed, or drawn anew. */
function goneSignal(response: ServerResponse): AbortSignal {
  const gone = new AbortController();
  response.once('close', () => {
    if (!response.writableFinished) gone.abort();
  });
  return gone.signal;
}

const noJson = Symbol('no JSON');

function jsonOf(body: string): unknown {
  try {
    return body === '' ? undefined : JSON.parse(body);
  } catch {
    return noJson;
  }
}

/** A second start of the same person: it knows the secret of the lock. Pages send their origin and are turned away. */
async function handOver(request: IncomingMessage, response: ServerResponse, { handOver: door, pass, port }: Setting): Promise<void> {
  const known = door !== undefined && request.headers.origin === undefined && same(request.headers.authorization ?? '', `Bearer ${door.secret}`);
  if (!known || request.method !== 'POST') return refuse(response, { status: 403, reason: 'host.gate.closed' });
  const body = await bodyOf(request, 64 * 1024);
  const input = handOverInput.safeParse(jsonOf(body ?? ''));
  if (!input.success) return refuse(response, { status: 400, reason: 'host.gate.not-json' });
  const shown = door.take(input.data.path);
  return sendJson(response, 200, { address: `http://127.0.0.1:${port}/?start=${pass.newCode()}`, shown } satisfies Handed);
}

/** The address asked for; the path is kept as sent, so that escapes are judged and not resolved away. */
function addressOf(url: string | undefined, port: number): { pathname: string; searchParams: URLSearchParams } | null {
  const [path = '', query = ''] = (url ?? '').split('?', 2);
  if (!path.startsWith('/') || !URL.canParse(path, `http://127.0.0.1:${port}`)) return null;
  return { pathname: path, searchParams: new URLSearchParams(query) };
}

function send(response: ServerResponse, status: number, kind: string, body: string | Buffer): void {
  response.writeHead(status, { ...safeHeaders, 'content-type': kind }).end(body);
}

const sendJson = (response: ServerResponse, status: number, value: unknown): void => send(response, status, 'application/json; charset=utf-8', JSON.stringify(value));

/** A call is refused with a problem like any other answer, a page with its sentence. */
function refuse(response: ServerResponse, { status, reason }: Refusal, path = ''): void {
  const { problem } = HostProblem.of(reason);
  if (path.startsWith('/rpc/')) return sendJson(response, status, { ok: false, problem });
  return send(response, status, 'text/plain; charset=utf-8', `${[problem.message, problem.mend ?? ''].join(' ').trim()}\n`);
}

/**
 * The right code becomes the cookie. A browser does not send a strict cookie along a way that began on another page, such as the start page on the disk;
 * one more page of our own begins the way anew.
 */
function letIn(request: IncomingMessage, response: ServerResponse, cookie: string): void {
  const from = request.headers['sec-fetch-site'] ?? 'none';
  if (from === 'none' || from === 'same-origin') return redirect(response, cookie);
  response.writeHead(200, { ...safeHeaders, 'content-type': 'text/html; charset=utf-8', 'set-cookie': cookie }).end('<!doctype html><meta charset="utf-8"><title>Brimful</title><meta http-equiv="refresh" content="0;url=/">');
}

function redirect(response: ServerResponse, cookie?: string): void {
  response.writeHead(303, { ...safeHeaders, location: '/', ...(cookie === undefined ? {} : { 'set-cookie': cookie }) }).end();
}

function listen(server: Server): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const at = server.address();
      if (at === null || typeof at === 'string') reject(new Error('no port'));
      else resolve(at.port);
    });
  });
}
