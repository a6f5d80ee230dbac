import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { checksIn, runCheck } from './rule-checks';

const read = (name: string) => checksIn(JSON.parse(readFileSync(fileURLToPath(new URL(`data/${name}`, import.meta.url)), 'utf8')));

describe.each(['frying-brewing-checks.json', 'methods-checks.json'])('%s', (name) => {
  const checks = read(name);
  it('holds checks', () => expect(checks.length).toBeGreaterThan(20));
  it.each(checks.map((c) => [c.id, c.model, c] as const))('%s %s', (_id, _model, check) => {
    const verdict = runCheck(check);
    expect(verdict.why).toBe('');
    expect(verdict.state).toBe('passed');
  });
});

describe('the runner itself', () => {
  const check = { id: 'x', model: 'pack.ratio', inputs: { n: 7 }, expected: { ratio: 3 }, tolerance: { abs: 0 } };
  it('fails a wrong value, a missing input and a missing output', () => {
    expect(runCheck({ ...check, expected: { ratio: 3.1 } }).state).toBe('failed');
    expect(runCheck({ ...check, inputs: {} }).why).toContain('needs the number "n"');
    expect(runCheck({ ...check, expected: { nothing: 1 } }).state).toBe('failed');
  });
  it('skips a rule it does not know', () => expect(runCheck({ ...check, model: 'no.such.rule' }).state).toBe('skipped'));
  it('compares lists element by element', () => {
    const batches = { id: 'y', model: 'fry.batches', inputs: { pans: 1, cycle: 6, panLoad: 10, hold: 10, demand: { 30: 20 } }, expected: { latestStarts: [18, 25] }, tolerance: { abs: 0 } };
    expect(runCheck(batches).why).toContain('latestStarts[1]');
  });
});
