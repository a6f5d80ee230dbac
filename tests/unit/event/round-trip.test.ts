import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hasWritingPlace, parseEvent, serialiseEvent, type Event } from '../../../shared/event';
import { hasFieldName } from '../../../shared/words/catalogue/fields';
import { arbitraryEvent } from './arbitrary-event';

const reread = (event: Event): Event => {
  const read = parseEvent(serialiseEvent(event));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.event;
};
/** The same value with the fields of every group in another order. */
const shuffled = (value: unknown): unknown => Array.isArray(value) ? value.map(shuffled)
  : typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).toReversed().map(([k, v]) => [k, shuffled(v)])) : value;
const unknownNames = new Set(['x-mine', 'zebra', 'Äpfel', 'constructor', 'toString', 'prototype', 'x y', '1']);
function knownKeys(value: unknown, into: Set<string>): void {
  if (Array.isArray(value)) for (const item of value) knownKeys(item, into);
  else if (typeof value === 'object' && value !== null) for (const [key, item] of Object.entries(value)) {
    if (unknownNames.has(key)) continue;
    into.add(key);
    knownKeys(item, into);
  }
}

describe('writing and reading an event', () => {
  it('gives an equal event, unknown fields at every level included', () => {
    fc.assert(fc.property(arbitraryEvent, (event) => { expect(reread(event)).toEqual(event); }), { numRuns: 400 });
  });
  it('gives the same bytes again, whatever order the fields were in', () => {
    fc.assert(fc.property(arbitraryEvent, (event) => {
      const bytes = serialiseEvent(event);
      expect(serialiseEvent(reread(event))).toBe(bytes);
      const other = parseEvent(JSON.stringify(shuffled(event)));
      if (!other.ok) throw new Error(JSON.stringify(other.problems));
      expect(serialiseEvent(other.event)).toBe(bytes);
    }), { numRuns: 200 });
  });
  it('is readable: format first, two spaces, a line end at the end', () => {
    fc.assert(fc.property(arbitraryEvent, (event) => {
      const text = serialiseEvent(event);
      expect(text.endsWith('}\n')).toBe(true);
      const known = text.split('\n').filter((line) => /^ {2}"/.test(line));
      // A key that looks like a number comes first in any JavaScript object.
      expect(known.filter((line) => !line.startsWith('  "1"'))[0]).toBe('  "format": "brimful-event/1",');
    }), { numRuns: 30 });
  });
  it('has a place and a name for every field of the schema', () => {
    const keys = new Set<string>();
    for (const event of fc.sample(arbitraryEvent, { numRuns: 300, seed: 7 })) knownKeys(event, keys);
    for (const inUnknown of ['a', 'b']) keys.delete(inUnknown);
    expect(keys.size).toBeGreaterThan(150);
    expect([...keys].filter((key) => !hasWritingPlace(key))).toEqual([]);
    expect([...keys].filter((key) => !hasFieldName(key))).toEqual([]);
  });
});
