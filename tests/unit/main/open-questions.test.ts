import { describe, expect, it } from 'vitest';
import { printFindings } from '../../../src-main/command/findings';
import { formatsFor, type Event } from '../../../shared/event';
import { planText } from '../../../shared/exchange';
import { plan, type Plan } from '../../../shared/plan';
import { openQuestions } from '../../../shared/safety';
import { demo, type demoNames } from '../demo/demo';

type DemoName = (typeof demoNames)[number];

const numberIn = (text: string): number => Number(/(\d+) rules? could not be checked/.exec(text)?.[1] ?? 0);

/** An example as it is before anybody has answered what only the household knows. */
const unanswered = (name: DemoName): Event => ({ ...demo(name), precautions: {} });

function told(planned: Plan): { readonly checked: number; readonly planned: number } {
  const formats = formatsFor(planned.event.preferences, planned.event.day);
  const out: string[] = [];
  printFindings(planned, formats, { out: (line: string) => { out.push(line); }, err: () => undefined });
  return { checked: numberIn(out.join('\n')), planned: numberIn(planText(planned, formats)) };
}

describe('rules that could not be checked', () => {
  it.each(['lantern-evening', 'school-fair-stall', 'freezer-sunday'] as const)('check and plan tell one number: %s, its precautions not yet answered', (name) => {
    const planned = plan(unanswered(name));
    const numbers = told(planned);
    expect(numbers.checked).toBeGreaterThan(0);
    expect(numbers.checked).toBe(openQuestions(planned.safety).length);
    expect(numbers.planned).toBe(numbers.checked);
  });

  it('counts what an answer would settle, not what is judged nowhere', () => {
    const planned = plan(unanswered('lantern-evening'));
    const [first] = planned.safety.notChecked;
    if (first === undefined) throw new Error('expected an open rule');
    const more: Plan = { ...planned, safety: { ...planned.safety, notChecked: [...planned.safety.notChecked, { ...first, notYet: true }] } };
    expect(told(more)).toEqual(told(planned));
  });
});
