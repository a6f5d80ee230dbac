import type { Event } from '../event';
import { safetyRule, safetyRuleTable, safetySource } from '../reference';
import type { Hit, Rule, SafetyInput, Subject } from './rule';
import { rules } from './rules';
import type { Finding, Level, NotChecked, SafetyPlan } from './types';

const order: Readonly<Record<Level, number>> = { stop: 0, warn: 1, caution: 2 };

function findingOf(rule: Rule, hit: Hit): Finding {
  const row = safetyRule(rule.id);
  return {
    rule: rule.id, level: rule.level, title: rule.title, message: hit.message, about: hit.about, source: safetySource(row),
    measured: { value: hit.value, unit: hit.unit },
    limit: hit.limit ?? { value: row.limit ?? 0, unit: row.unit === 'C' ? 'degC' : row.unit },
  };
}

/**
 * Judges an event against the safety rules: what it finds, what is in order, and what it could not check. Never silent: every rule of
 * the table is in at least one of the three lists. Guidance only; local rules and licensed practice come first.
 */
export function planSafety(event: Event, plans: SafetyInput): SafetyPlan {
  const subject: Subject = { event, ...plans };
  const findings: Finding[] = [];
  const notChecked: NotChecked[] = [];
  const inOrder: string[] = [];
  for (const { id } of safetyRuleTable) {
    const rule = rules.find((r) => r.id === id);
    if (rule === undefined) {
      notChecked.push({ rule: id, needs: { id: 'safety.notYet' }, notYet: true });
      continue;
    }
    const verdict = rule.judge(subject);
    for (const hit of verdict.hits) findings.push(findingOf(rule, hit));
    if (verdict.needs !== undefined) notChecked.push({ rule: id, needs: verdict.needs, notYet: false });
    else if (verdict.hits.length === 0) inOrder.push(id);
  }
  // Stable: within a level the order of the table is kept.
  findings.sort((a, b) => order[a.level] - order[b.level]);
  return { findings, notChecked, inOrder };
}
