import { createHash } from 'node:crypto';

const sum = (body: string): string => createHash('sha256').update(body).digest('hex');

/** A text of about so many kilobytes that carries its version and a checksum. */
export function numbered(version: number, kilobytes: number): string {
  const body = JSON.stringify({ title: `Version ${version}`, version, fill: `½${String(version % 10).repeat(kilobytes * 1024)}` });
  return `${sum(body)}\n${body}`;
}

/** The version of a text, or null when it is torn: cut short, mixed or empty. */
export function versionIn(text: string): number | null {
  const cut = text.indexOf('\n');
  const body = text.slice(cut + 1);
  if (cut < 0 || sum(body) !== text.slice(0, cut)) return null;
  return (JSON.parse(body) as { version: number }).version;
}
