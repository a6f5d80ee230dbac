import type { Plan } from '../../shared/plan';
import { openQuestions } from '../../shared/safety';
import { sayMessage } from '../../shared/words';
import type { Formats } from '../../shared/words';
import { exits } from './terminal';
import type { Terminal } from './terminal';
import { tell } from './words';

/** Prints what needs a look. */
export function printFindings(plan: Plan, formats: Formats, terminal: Terminal): void {
  const { findings } = plan.safety;
  if (findings.length === 0) terminal.out(tell('command.findings.none'));
  for (const { level, rule, message } of findings) {
    terminal.out(tell('command.finding', { level: tell(`command.level.${level}`), rule, message: sayMessage(formats, message) }));
  }
  const missing = openQuestions(plan.safety).length;
  if (missing > 0) terminal.out(tell('command.not-checked', { count: missing }));
}

/** 1 when something must not go on like this, else 0. */
export const exitOf = (plan: Plan): number => (plan.safety.findings.some((finding) => finding.level === 'stop') ? exits.stop : exits.ok);
