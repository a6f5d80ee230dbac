import { createServer } from 'node:http';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { Handle } from '../answer';
import { pageFile, safeHeaders } from '../pages';
import { HostProblem, problemOf, tell } from '../problem';
import { bodyOf } from './body';
import { callRefusal, hostRefusal } from './gate';
import { Pass } from './pass';

/** What the server needs to know. */
export interface ServerOptions {
  /** Folder of the built screens. */
  readonly pages: string;
  readonly handle: Handle;
  /** Called at each request that was let in. */
  readonly seen?: () => void;
}

/** A running local host. */
export interface LocalServer {
  readonly port: number;
  /** The address with the one-time code. */
  readonly startAddress: string;
  stop(): Promise<void>;
}

/** Serves the screens and the calls on 127.0.0.1 at a free port, to the one window that holds the pass. */
export async function serveLocally(options: ServerOptions): Promise<LocalServer> {
  const pass = new Pass();
  let port = 0;
  const server = createServer((request, response) => {
    void answer(request, response, { ...options, pass, port }).catch((error: unknown) => {
      if (!response.headersSent) send(response, 500, 'application/json', JSON.stringify({ ok: false, problem: problemOf(error) }));
      else response.destroy();
    });
  });
  server.requestTimeout = 60_000;
  server.maxHeadersCount = 100;
  port = await listen(server);
  return {
    port,
    startAddress: `http://127.0.0.1:${port}/?start=${pass.startCode}`,
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
  if (refusal) return refuse(response, refusal.status, refusal.reason);
  const address = addressOf(request.url, port);
  if (address === null) return refuse(response, 400, 'no such address');
  const code = address.pathname === '/' && request.method === 'GET' ? address.searchParams.get('start') : null;
  const admitted = pass.admits(request.headers.cookie, port);
  if (code !== null && pass.swap(code)) return redirect(response, pass.setCookie(port));
  if (!admitted) return refuse(response, 403, `${tell('host.gate.closed')} ${tell('host.gate.closed.mend')}`);
  setting.seen?.();
  if (code !== null) return redirect(response);
  if (address.pathname.startsWith('/rpc/')) return call(request, response, address.pathname.slice('/rpc/'.length), setting);
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405, 'only reading');
  const file = await pageFile(setting.pages, address.pathname);
  if (file === null) return refuse(response, 404, 'not here');
  send(response, 200, file.kind, request.method === 'HEAD' ? '' : file.bytes);
}

async function call(request: IncomingMessage, response: ServerResponse, method: string, { handle, port }: Setting): Promise<void> {
  if (request.method !== 'POST') return refuse(response, 405, 'calls are posted');
  const refusal = callRefusal(request.headers, port);
  if (refusal) return refuse(response, refusal.status, refusal.reason);
  const body = await bodyOf(request);
  if (body === null) {
    response.setHeader('connection', 'close');
    return refuse(response, 413, 'larger than 8 MB');
  }
  let input: unknown;
  try {
    input = body === '' ? undefined : JSON.parse(body);
  } catch {
    const { problem } = HostProblem.of('host.bad-input', { where: 'the top', what: 'not JSON' });
    return send(response, 400, 'application/json', JSON.stringify({ ok: false, problem }));
  }
  return send(response, 200, 'application/json', JSON.stringify(await handle(method, input)));
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

const refuse = (response: ServerResponse, status: number, reason: string): void => send(response, status, 'text/plain; charset=utf-8', `${reason}\n`);

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
