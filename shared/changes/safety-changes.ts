import type { Finding, Level, SafetyPlan } from '../safety';
import type { Change } from './change';

const seriousness: Readonly<Record<Level, number>> = { stop: 3, warn: 2, caution: 1 };
const keyOf = (finding: Finding): string => [finding.rule, ...[...finding.about].sort()].join(' ');

/** Findings that came, went, or became more or less serious. */
export function safetyChanges(before: SafetyPlan, after: SafetyPlan): Change[] {
  const had = new Map(before.findings.map((f) => [keyOf(f), f]));
  const has = new Map(after.findings.map((f) => [keyOf(f), f]));
  const cameOrChanged = [...has].flatMap(([key, now]): Change[] => {
    const then = had.get(key);
    const { level, rule, title } = now;
    // Always larger than any amount: what is unsafe is told first.
    const size = 1 + seriousness[level];
    if (then === undefined) return [{ kind: 'safety', effect: 'new', message: { id: 'change.finding.new', params: { level, finding: title } }, before: null, after: level, about: rule, size }];
    if (then.level === level) return [];
    const worse = seriousness[level] > seriousness[then.level];
    return [{ kind: 'safety', effect: worse ? 'more' : 'fewer', message: { id: worse ? 'change.finding.worse' : 'change.finding.milder', params: { level, finding: title } }, before: then.level, after: level, about: rule, size: worse ? size : 1 }];
  });
  const went = [...had].filter(([key]) => !has.has(key)).map(([, then]): Change =>
    ({ kind: 'safety', effect: 'gone', message: { id: 'change.finding.gone', params: { finding: then.title } }, before: then.level, after: null, about: then.rule, size: 1 }));
  return [...cameOrChanged, ...went];
}
