/** Rounds away what no sheet shows, so that floating-point noise never makes an old sheet look out of date. */
const settled = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(10)) + 0) : 'none');

/** A value as one text: keys in order, functions and missing fields left out. */
function canonical(value: unknown): string {
  if (typeof value === 'number') return settled(value);
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? '';
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  // Exact amounts (Big) know their own text.
  if ('toJSON' in value && typeof value.toJSON === 'function') return JSON.stringify(value) ?? '';
  const fields = Object.entries(value).filter(([, field]) => field !== undefined && typeof field !== 'function');
  return `{${fields.sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, field]) => `${JSON.stringify(key)}:${canonical(field)}`).join(',')}}`;
}

/** One half of the hash: multiply-and-fold over UTF-16 units, 32 bits (the constants are odd numbers with well-spread bits; from memory). */
function half(text: string, start: number, factor: number): number {
  let h = start;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), factor);
  h ^= h >>> 16;
  h = Math.imul(h, 0x85ebca6b);
  h ^= h >>> 13;
  return h >>> 0;
}

/**
 * Fingerprint of a value, 16 hexadecimal digits: equal contents give equal fingerprints whatever the order of fields; two sheets that differ
 * are told apart (64 bits). For recognising, not for secrets.
 */
export function fingerprint(value: unknown): string {
  const text = canonical(value);
  return [half(text, 0x811c9dc5, 0x01000193), half(text, 0x9e3779b9, 0x5bd1e995)].map((h) => h.toString(16).padStart(8, '0')).join('');
}
