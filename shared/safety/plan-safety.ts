import type { Event } from '../event';
import { safetyRule, safetyRuleTable, safetySource } from '../reference';
import type { Hit, Rule, SafetyInput, Subject, Verdict } from './rule';
import { rules } from './rules';
import { behindVerdict } from './rules/behind';
import { toldOnce } from './told-once';
import type { Finding, Level, NotChecked, SafetyPlan } from './types';

const order: Readonly<Record<Level, number>> = { stop: 0, warn: 1, caution: 2 };
const ruleOf: ReadonlyMap<string, Rule> = new Map(rules.map((r) => [r.id, r]));

function findingOf(rule: Rule, hit: Hit): Finding {
  const row = safetyRule(rule.id);
  return {
    rule: rule.id, level: rule.level, title: rule.title, message: hit.message, about: hit.about, source: safetySource(row),
    measured: { value: hit.value, unit: hit.unit }, ...(hit.figure === undefined ? {} : { figure: hit.figure }),
    limit: hit.limit ?? { value: row.limit ?? 0, unit: row.unit === 'C' ? 'degC' : row.unit },
  };
}

/**
 * Judges an event against the safety rules: what it finds, what is in order, and what it could not check. Never silent: every rule of
 * the table is in at least one of the three lists. What another finding about the same thing tells already is not found twice; its rule then
 * stands with those in order, as a rule behind another does. Guidance only; local rules and licensed practice come first.
 */
export function planSafety(event: Event, plans: SafetyInput): SafetyPlan {
  const subject: Subject = { event, ...plans };
  const reached = new Map<Rule, Verdict>();
  const verdictOf = (rule: Rule): Verdict => {
    const known = reached.get(rule);
    if (known !== undefined) return known;
    const verdict = rule.judge(subject);
    reached.set(rule, verdict);
    return verdict;
  };
  const all: Finding[] = [];
  const notChecked: NotChecked[] = [];
  for (const { id } of safetyRuleTable) {
    const rule = ruleOf.get(id);
    if (rule === undefined) {
      notChecked.push({ rule: id, needs: { id: 'safety.notYet' }, notYet: true });
      continue;
    }
    const verdict = rule.behind === undefined ? verdictOf(rule) : behindVerdict(verdictOf(rule.behind));
    for (const hit of verdict.hits) all.push(findingOf(rule, hit));
    if (verdict.needs !== undefined) notChecked.push({ rule: id, needs: verdict.needs, notYet: false });
  }
  // Stable: within a level the order of the table is kept.
  const findings = toldOnce(all).toSorted((a, b) => order[a.level] - order[b.level]);
  const spoken = new Set([...findings, ...notChecked].map((x) => x.rule));
  return { findings, notChecked, inOrder: safetyRuleTable.map((r) => r.id).filter((id) => !spoken.has(id)) };
}
