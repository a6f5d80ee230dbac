import { readFile, realpath } from 'node:fs/promises';
import { extname, resolve, sep } from 'node:path';

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
  '.brimful': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
};

/** A file of the built screens. */
export interface PageFile {
  readonly kind: string;
  readonly bytes: Buffer;
}

/** The file an address path stands for, or null: unknown, of no known kind, or outside the folder, also by way of a link. */
export async function pageFile(folder: string, addressPath: string): Promise<PageFile | null> {
  const inside = pathInside(folder, addressPath);
  if (inside === null) return null;
  const kind = kinds[extname(inside).toLowerCase()];
  if (kind === undefined) return null;
  try {
    const [real, root] = await Promise.all([realpath(inside), realpath(folder)]);
    if (!real.startsWith(root + sep)) return null;
    return { kind, bytes: await readFile(real) };
  } catch {
    return null;
  }
}

/** The disk path of an address path, or null when it would leave the folder or cannot be read. */
export function pathInside(folder: string, addressPath: string): string | null {
  let path: string;
  try {
    path = decodeURIComponent(addressPath);
  } catch {
    return null;
  }
  // A backslash is a separator on Windows; a zero byte or a drive letter has no business in an address.
  if (/[\\\0:]/.test(path) || path.split('/').includes('..')) return null;
  const root = resolve(folder);
  const full = resolve(root, `.${path.startsWith('/') ? path : `/${path}`}`);
  if (full === root) return resolve(root, 'index.html');
  return full.startsWith(root + sep) ? full : null;
}
