import type { Step } from '../../../../shared/event';

/** Steps without one: what came after it comes after what was before it. */
export function withoutStep(steps: readonly Step[], id: string): Step[] {
  const gone = steps.find((step) => step.id === id);
  return steps.filter((step) => step.id !== id)
    .map((step) => (step.after.includes(id) ? { ...step, after: [...new Set([...step.after.filter((one) => one !== id), ...(gone?.after ?? [])])] } : step));
}
