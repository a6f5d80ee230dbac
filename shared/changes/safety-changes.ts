import type { Finding, Level, SafetyPlan } from '../safety';
import type { Change } from './change';

const seriousness: Readonly<Record<Level, number>> = { stop: 3, warn: 2, caution: 1 };
const keyOf = (finding: Finding): string => [finding.rule, ...[...finding.about].sort()].join(' ');

/** The finding a new one takes the place of: of the same rule, about partly the same things, and not there any more itself. To the cook it is the same one measured anew. */
const measuredAnew = (now: Finding, had: ReadonlyMap<string, Finding>, has: ReadonlyMap<string, Finding>): Finding | undefined =>
  [...had].find(([key, then]) => !has.has(key) && then.rule === now.rule && then.about.some((id) => now.about.includes(id)))?.[1];

/** Findings that came, went, or became more or less serious. */
export function safetyChanges(before: SafetyPlan, after: SafetyPlan): Change[] {
  const had = new Map(before.findings.map((f) => [keyOf(f), f]));
  const has = new Map(after.findings.map((f) => [keyOf(f), f]));
  const replaced = new Set<Finding>();
  const cameOrChanged = [...has].flatMap(([key, now]): Change[] => {
    const then = had.get(key) ?? measuredAnew(now, had, has);
    if (then !== undefined) replaced.add(then);
    const { level, rule, title } = now;
    // Always larger than any amount: what is unsafe is told first.
    const size = 1 + seriousness[level];
    if (then === undefined) return [{ kind: 'safety', effect: 'new', message: { id: 'change.finding.new', params: { level, finding: title } }, before: null, after: level, about: rule, size }];
    if (then.level === level) return [];
    const worse = seriousness[level] > seriousness[then.level];
    return [{ kind: 'safety', effect: worse ? 'more' : 'fewer', message: { id: worse ? 'change.finding.worse' : 'change.finding.milder', params: { level, finding: title } }, before: then.level, after: level, about: rule, size: worse ? size : 1 }];
  });
  const went = [...had].filter(([key, then]) => !has.has(key) && !replaced.has(then)).map(([, then]): Change =>
    ({ kind: 'safety', effect: 'gone', message: { id: 'change.finding.gone', params: { finding: then.title } }, before: then.level, after: null, about: then.rule, size: 1 }));
  return [...cameOrChanged, ...went];
}
