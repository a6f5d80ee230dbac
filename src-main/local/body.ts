import type { IncomingMessage } from 'node:http';

/** Largest body of a call, in bytes. */
export const largestBodyBytes = 8 * 1024 * 1024;

/** The body as text, or null when it is larger than allowed. */
export async function bodyOf(request: IncomingMessage, limit: number = largestBodyBytes): Promise<string | null> {
  if (Number(request.headers['content-length'] ?? 0) > limit) return null;
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > limit) return null;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}
