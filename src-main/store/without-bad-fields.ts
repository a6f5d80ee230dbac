import type * as z from 'zod';

/** A value without those of its fields, or items of its list, in which something is wrong: the others stand. */
export function withoutBadFields(raw: unknown, issues: readonly z.core.$ZodIssue[]): unknown {
  const bad = new Set(issues.map((issue) => String(issue.path[0])));
  if (Array.isArray(raw)) return raw.filter((_item, at) => !bad.has(String(at)));
  if (typeof raw !== 'object' || raw === null) return raw;
  return Object.fromEntries(Object.entries(raw).filter(([name]) => !bad.has(name)));
}
