/** Runs checks of the format {id, model, inputs, expected, tolerance} against the project's own rules. */
import { drinksRulesTable } from '../../shared/drinks';
import { fryingRulesTable } from '../../shared/frying';
import { guestsRulesTable } from '../../shared/guests';
import { kitchenRulesTable } from '../../shared/kitchen';

type Outputs = Readonly<Record<string, unknown>>;
type Rule = (inputs: Readonly<Record<string, unknown>>) => Outputs;

const tables: Readonly<Record<string, Rule>> = { ...kitchenRulesTable, ...fryingRulesTable, ...drinksRulesTable, ...guestsRulesTable };

export interface Check {
  id: string;
  model: string;
  inputs: Record<string, unknown>;
  expected: Record<string, unknown>;
  tolerance: { rel?: number; abs?: number };
}
export interface Verdict {
  id: string;
  model: string;
  state: 'passed' | 'failed' | 'skipped';
  why: string;
}

/** A file's checks: a list, or an object with a list under `checks`. */
export function checksIn(parsed: unknown): Check[] {
  const list = Array.isArray(parsed) ? parsed : (parsed as { checks?: unknown } | null)?.checks;
  if (!Array.isArray(list)) throw new Error('not a list of checks {id, model, inputs, expected, tolerance}');
  return list as Check[];
}

export function runCheck(check: Check): Verdict {
  const verdict = (state: Verdict['state'], why: string): Verdict => ({ id: check.id, model: check.model, state, why });
  const rule = Object.hasOwn(tables, check.model) ? tables[check.model] : undefined;
  if (rule === undefined) return verdict('skipped', `no rule "${check.model}"`);
  let outputs: Outputs;
  try {
    outputs = rule(check.inputs);
  } catch (error) {
    return verdict('failed', error instanceof Error ? error.message : String(error));
  }
  const differences = Object.entries(check.expected).flatMap(([key, expected]) => compare(key, expected, outputs[key], check.tolerance ?? {}));
  return differences.length === 0 ? verdict('passed', '') : verdict('failed', differences.join('; '));
}

function compare(key: string, expected: unknown, found: unknown, tolerance: Check['tolerance']): string[] {
  if (Array.isArray(expected)) {
    if (!Array.isArray(found)) return [`${key}: expected a list, got ${String(found)}`];
    if (found.length !== expected.length) return [`${key}: expected ${expected.length} values, got ${found.length}`];
    return expected.flatMap((e, i) => compare(`${key}[${i}]`, e, found[i], tolerance));
  }
  if (typeof expected !== 'number') return expected === found ? [] : [`${key}: expected ${String(expected)}, got ${String(found)}`];
  if (typeof found !== 'number' || !Number.isFinite(found)) return [`${key}: expected ${expected}, got ${String(found)}`];
  const allowed = Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(expected));
  return Math.abs(found - expected) <= allowed ? [] : [`${key}: expected ${expected} within ${allowed}, got ${found}`];
}
