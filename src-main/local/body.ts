import type { IncomingMessage } from 'node:http';
import { longestText } from '../../shared/host';

/** Most bytes one sign takes in JSON: a control sign is written \u0001. */
const mostBytesPerSign = 6;
/** Largest body of a call, in bytes: the longest text of the contract, however much of it is escaped, and room for the other fields. */
export const largestBodyBytes = mostBytesPerSign * longestText + 64 * 1024;

/** The body as text, or null when it is larger than allowed. */
export async function bodyOf(request: IncomingMessage, limit: number = largestBodyBytes): Promise<string | null> {
  if (Number(request.headers['content-length'] ?? 0) > limit) return null;
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    // What is too much is heard out and dropped, so that the answer can be read.
    if (size > limit) parts.length = 0;
    else parts.push(part);
  }
  if (size > limit) return null;
  return Buffer.concat(parts).toString('utf8');
}
