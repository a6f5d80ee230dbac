import table from './safety-rules.json';

/** One published or habitual safety limit. `limit` is null where the rule is yes or no; `seen` is false for habit and memory. */
export interface SafetyRule {
  readonly id: string;
  readonly topic: string;
  readonly limit: number | null;
  readonly unit: string;
  readonly source: string;
  readonly section: string;
  readonly url: string;
  readonly seen: boolean;
}
/** Temperature range in °C at which fresh oil of a kind begins to smoke. */
export interface SmokePoint {
  readonly oil: string;
  readonly lowC: number;
  readonly highC: number;
  readonly source: string;
}

/** All safety rules, in the order of the table; one level each (rules with two levels stand as `a` and `b`). */
export const safetyRuleTable: readonly SafetyRule[] = table.rules;
/** Smoke points of fresh oils. */
export const smokePoints: readonly SmokePoint[] = table.smokePoints;

const byId: ReadonlyMap<string, SafetyRule> = new Map(safetyRuleTable.map((r) => [r.id, r]));

/** A safety rule by id. @throws RangeError when the table has no such rule (a programming fault). */
export function safetyRule(id: string): SafetyRule {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`no safety rule "${id}"`);
  return found;
}

/** Source of a safety rule in one line: body and section. */
export const safetySource = (rule: SafetyRule): string => (rule.section === '' ? rule.source : `${rule.source}, ${rule.section}`);
