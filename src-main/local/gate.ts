import type { IncomingHttpHeaders } from 'node:http';
import type { HostWordId } from '../problem';

/** What a request is refused with: a status code and the sentence for a person who reads it. */
export interface Refusal {
  readonly status: number;
  readonly reason: Extract<HostWordId, `host.gate.${string}`>;
}

/** Only requests that really meant this address: a foreign name pointed at 127.0.0.1 is turned away. */
export function hostRefusal(headers: IncomingHttpHeaders, port: number): Refusal | null {
  return headers.host === `127.0.0.1:${port}` ? null : { status: 421, reason: 'host.gate.wrong-host' };
}

/** A call must come from our own page: its origin, as JSON, which other pages cannot send here without asking first. */
export function callRefusal(headers: IncomingHttpHeaders, port: number): Refusal | null {
  if (headers.origin !== `http://127.0.0.1:${port}`) return { status: 403, reason: 'host.gate.foreign' };
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin') return { status: 403, reason: 'host.gate.foreign' };
  if (headers['content-type']?.split(';')[0]?.trim().toLowerCase() !== 'application/json') return { status: 415, reason: 'host.gate.not-json' };
  return null;
}
