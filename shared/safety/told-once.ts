import type { Finding } from './types';

/** Rules whose finding leaves nothing to say for others about the same dish, flask or pot: the graver, or the one with the fuller remedy, speaks. */
const speaksFor: Readonly<Record<string, readonly string[]>> = {
  'HH-03': ['HH-01', 'HH-02'], 'CH-03': ['CH-01', 'CH-02'], 'PR-07': ['HH-01', 'HH-02'], 'PR-04': ['PR-07', 'HH-01', 'HH-02', 'HH-03'], 'PR-05b': ['CO-01'],
  'TC-01': ['BO-06'], 'TC-02': ['BO-06'], 'LO-02': ['LO-03'],
  'CD-10': ['ED-04', 'SC-04'], 'ED-04': ['SC-04'],
  'LF-01a': ['LF-06'], 'LF-01b': ['LF-06'], 'LF-04': ['LF-01a', 'LF-06'], 'LF-02': ['LF-07'], 'EL-02': ['EL-01'],
};
const keyOf = (rule: string, about: readonly string[]): string => `${rule} ${about[0] ?? ''}`;

/** Findings without those that another finding about the same thing tells already. */
export function toldOnce(findings: readonly Finding[]): readonly Finding[] {
  const told = new Set(findings.flatMap((f) => (speaksFor[f.rule] ?? []).map((rule) => keyOf(rule, f.about))));
  return told.size === 0 ? findings : findings.filter((f) => !told.has(keyOf(f.rule, f.about)));
}
