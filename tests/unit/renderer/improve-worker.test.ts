// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answer } from '../../../src-renderer/app/improve-worker';

const event = readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8');

test('the worker answers with moves that can be sent, or with nothing better', () => {
  const said = answer({ event, startNumber: 7, budget: 12 });
  expect(said.startNumber).toBe(7);
  expect(structuredClone(said)).toEqual(said);
  expect(answer({ event, startNumber: 7, budget: 12 })).toEqual(said);
});

test('a text that is no event has nothing better', () => {
  expect(answer({ event: '{', startNumber: 1, budget: 5 })).toEqual({ startNumber: 1, better: null });
});
