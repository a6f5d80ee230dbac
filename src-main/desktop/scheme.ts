import { protocol } from 'electron';
import { pageFile, safeHeaders } from '../pages';
import { tell } from '../problem';
import type { PrintShelf } from './print-shelf';

const printHeaders = {
  ...safeHeaders,
  'content-security-policy': `default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'`,
  'content-type': 'text/html; charset=utf-8',
};

/** Says, before the program is ready, that `app:` is a full and secure scheme. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true, bypassCSP: false } },
  ]);
}

/** Serves `app://main/…` from the built screens and `app://print/<id>` from the sheets waiting to be printed. */
export function serveScheme(pages: string, shelf: PrintShelf): void {
  protocol.handle('app', async (request) => {
    const address = new URL(request.url);
    if (request.method !== 'GET') return new Response(tell('host.gate.only-reading'), { status: 405, headers: safeHeaders });
    if (address.host === 'print') {
      const html = shelf.get(address.pathname.slice(1));
      return html === undefined ? gone() : new Response(html, { headers: printHeaders });
    }
    const file = address.host === 'main' ? await pageFile(pages, address.pathname) : null;
    if (file === null) return gone();
    return new Response(new Uint8Array(file.bytes), { headers: { ...safeHeaders, 'content-type': file.kind } });
  });
}

const gone = (): Response => new Response(tell('host.gate.no-address'), { status: 404, headers: safeHeaders });
