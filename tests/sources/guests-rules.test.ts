// Rules of the guests room against own arithmetic; the stored values of tests/sources/data/methods-checks.json are run by rules.test.ts.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { guestsRulesTable } from '../../shared/guests';
import { checksIn } from './rule-checks';

test('the check file holds checks for every rule of the room', () => {
  const checks = checksIn(JSON.parse(readFileSync('tests/sources/data/methods-checks.json', 'utf8'))).filter((c) => c.model in guestsRulesTable);
  expect(checks.length).toBeGreaterThanOrEqual(24);
  expect(new Set(checks.map((c) => c.model))).toEqual(new Set(Object.keys(guestsRulesTable)));
});

const survives = (x: number): number => (x <= 60 ? 1 : x >= 180 ? 0 : x <= 90 ? 1 - (x - 60) ** 2 / (120 * 30) : (180 - x) ** 2 / (120 * 90));

const presentBy = (t: number): number => {
  let sum = 0;
  for (let i = 0; i < 60_000; i += 1) {
    const since = t - (i + 0.5) / 1000;
    if (since > 0) sum += survives(since) / 1000;
  }
  return sum;
};

describe('triangular stays', () => {
  test('a triangular stay agrees with a fine sum over arrivals (own arithmetic)', () => {
    const times = [30, 75, 110, 200, 240];
    const out = guestsRulesTable['presence.expected']!({ waveSize: 60, windowFrom: 0, windowTo: 60, stay: 'tri', stayParam: [60, 90, 180], times });
    const values = out['values'] as number[];
    expect(values).toHaveLength(times.length);
    times.forEach((at, i) => expect(values[i], `at ${at}`).toBeCloseTo(presentBy(at), 5));
    // Some are there, and at the end nobody.
    expect(values[2]).toBeGreaterThan(10);
    expect(values.at(-1)).toBe(0);
  });
});
