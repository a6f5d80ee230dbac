import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fingerprint } from '../../../shared/changes';

describe('fingerprint', () => {
  it('is sixteen hexadecimal digits, the same whatever the order of fields', () => {
    expect(fingerprint({ a: 1, b: [2, { c: 'x', d: null }] })).toBe(fingerprint({ b: [2, { d: null, c: 'x' }], a: 1 }));
    fc.assert(fc.property(fc.jsonValue(), (value) => { expect(fingerprint(value)).toMatch(/^[0-9a-f]{16}$/); }));
  });
  it('never changes between versions of the program: sheets printed last year are still recognised', () => {
    expect([fingerprint(null), fingerprint('fry'), fingerprint({ a: 1 })]).toMatchInlineSnapshot(`
      [
        "ce7985deb77fcc6f",
        "ee5c239087a3d2ee",
        "92a6bed4fb7f51ce",
      ]
    `);
  });
  it('leaves out workings, missing fields and floating-point noise', () => {
    expect(fingerprint({ value: 0.1 + 0.2, working: () => 1, note: undefined })).toBe(fingerprint({ value: 0.3 }));
    expect(fingerprint(-0)).toBe(fingerprint(0));
  });
  it('takes exact amounts as their text', () => {
    expect(fingerprint({ n: new Big('1.50') })).toBe(fingerprint({ n: new Big('1.5') }));
    expect(fingerprint({ n: new Big('1.5') })).not.toBe(fingerprint({ n: new Big('1.6') }));
  });
  it('tells values apart', () => {
    const seen = new Set(Array.from({ length: 20_000 }, (_, n) => fingerprint({ batch: n })));
    expect(seen.size).toBe(20_000);
    expect(fingerprint(['ab', 'c'])).not.toBe(fingerprint(['a', 'bc']));
    expect(fingerprint([1])).not.toBe(fingerprint(['1']));
  });
});
