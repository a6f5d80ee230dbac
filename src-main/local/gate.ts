import type { IncomingHttpHeaders } from 'node:http';

/** What a request is refused with: a status code and the reason for a person who reads it. */
export interface Refusal {
  readonly status: number;
  readonly reason: string;
}

/** Only requests that really meant this address: a foreign name pointed at 127.0.0.1 is turned away. */
export function hostRefusal(headers: IncomingHttpHeaders, port: number): Refusal | null {
  return headers.host === `127.0.0.1:${port}` ? null : { status: 421, reason: 'wrong host' };
}

/** A call must come from our own page: its origin, as JSON, which other pages cannot send here without asking first. */
export function callRefusal(headers: IncomingHttpHeaders, port: number): Refusal | null {
  if (headers.origin !== `http://127.0.0.1:${port}`) return { status: 403, reason: 'foreign origin' };
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin') return { status: 403, reason: 'foreign page' };
  if (headers['content-type']?.split(';')[0]?.trim().toLowerCase() !== 'application/json') return { status: 415, reason: 'calls are JSON' };
  return null;
}
