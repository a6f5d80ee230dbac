import { describe, expect, it } from 'vitest';
import { printFindings } from '../../../src-main/command/findings';
import { formatsFor } from '../../../shared/event';
import { planText } from '../../../shared/exchange';
import { plan, type Plan } from '../../../shared/plan';
import { openQuestions } from '../../../shared/safety';
import { demo } from '../demo/demo';

const numberIn = (text: string): number => Number(/(\d+) rules? could not be checked/.exec(text)?.[1] ?? 0);

function told(planned: Plan): { readonly checked: number; readonly planned: number } {
  const formats = formatsFor(planned.event.preferences, planned.event.day);
  const out: string[] = [];
  printFindings(planned, formats, { out: (line: string) => { out.push(line); }, err: () => undefined });
  return { checked: numberIn(out.join('\n')), planned: numberIn(planText(planned, formats)) };
}

describe('rules that could not be checked', () => {
  it.each(['lantern-evening', 'school-fair-stall', 'freezer-sunday'] as const)('check and plan tell one number: %s', (name) => {
    const planned = plan(demo(name));
    const numbers = told(planned);
    expect(numbers.checked).toBe(openQuestions(planned.safety).length);
    expect(numbers.planned).toBe(numbers.checked);
  });

  it('counts what an answer would settle, not what is judged nowhere', () => {
    const planned = plan(demo('lantern-evening'));
    const [first] = planned.safety.notChecked;
    if (first === undefined) throw new Error('expected an open rule');
    const more: Plan = { ...planned, safety: { ...planned.safety, notChecked: [...planned.safety.notChecked, { ...first, notYet: true }] } };
    expect(told(more)).toEqual(told(planned));
  });
});
