// Values of tests/sources/data/methods-checks.json; the source of each stands beside it in the file.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { guestsRulesTable } from '../../shared/guests';

interface Check {
  readonly id: string;
  readonly model: string;
  readonly inputs: Record<string, unknown>;
  readonly expected: Record<string, number | number[]>;
  readonly tolerance: { readonly abs?: number; readonly rel?: number };
}

const checks = (JSON.parse(readFileSync('tests/sources/data/methods-checks.json', 'utf8')) as Check[]).filter((c) => c.model in guestsRulesTable);

describe('attendance, turnout, stock and updating against stored values', () => {
  test('the file holds checks for every rule of the room', () => {
    expect(checks.length).toBeGreaterThanOrEqual(24);
    expect(new Set(checks.map((c) => c.model))).toEqual(new Set(Object.keys(guestsRulesTable)));
  });
  test.each(checks)('$id', (check) => {
    const out = guestsRulesTable[check.model]!(check.inputs);
    for (const [key, want] of Object.entries(check.expected)) {
      const got = out[key];
      expect(Object.keys(out)).toContain(key);
      const pairs = (Array.isArray(want) ? want : [want]).map((w, i) => [w, Array.isArray(got) ? got[i] : got] as const);
      for (const [w, g] of pairs) {
        const slack = check.tolerance.abs ?? (check.tolerance.rel ?? 0) * Math.abs(w);
        expect(Math.abs(Number(g) - w) <= slack + 1e-12 ? 'within' : `${key}: got ${String(g)}, expected ${w}`).toBe('within');
      }
    }
  });
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
    const out = guestsRulesTable['presence.expected']!({ waveSize: 60, windowFrom: 0, windowTo: 60, stay: 'tri', stayParam: [60, 90, 180], times: [30, 75, 110, 200, 240] });
    (out['values'] as number[]).forEach((v, i) => expect(v).toBeCloseTo(presentBy([30, 75, 110, 200, 240][i]!), 5));
  });
});
