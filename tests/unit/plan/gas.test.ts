import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseEvent, type Event } from '../../../shared/event';
import { plan, type Plan } from '../../../shared/plan';
import { checklistsOf } from '../../../shared/sheets/checklists/points';

const load = (name: string): Event => {
  const parsed = parseEvent(readFileSync(new URL(`../../../assets/app/demo/${name}.brimful`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.event;
};
const demo = load('lantern-evening');
const kinds = ['gas', 'lpg', 'outdoorGas', 'induction'] as const;
const withBurners = (of: readonly (typeof kinds)[number][], cylinders: readonly number[]): Event => ({
  ...demo,
  kitchen: { ...demo.kitchen, cylinders: cylinders.map((gasKg, k) => ({ id: `c${k}`, gasKg, place: 'outdoor' as const })), burners: demo.kitchen.burners.map((b, k) => ({ ...b, kind: of[k % of.length] ?? 'gas' })) },
});
const gasLine = (p: Plan) => p.buying.lines.find((l) => l.ingredient === 'gas-bottle');
/** Everything the shopping trips of the day say they bring home. */
const brought = (p: Plan): number => p.day.tasks.flatMap((t) => (t.kind === 'shop' && 'params' in t.name && 'items' in t.name.params ? [t.name.params.items] : [])).reduce((a, b) => a + b, 0);

describe('bottled gas is told once', () => {
  it('the kitchen, the shopping list and the checklist have one figure', () => {
    const made = plan(withBurners(['lpg'], [11]));
    const wanted = made.day.gasNeed?.wantedKg;
    expect(wanted?.value).toBeGreaterThan(1);
    expect([gasLine(made)?.needFigure.value, gasLine(made)?.needFigure.working().rule]).toEqual([wanted?.value, 'gas.wanted']);
    expect(gasLine(made)?.need.amount.toNumber()).toBe(wanted?.value);
    const points = checklistsOf(made).flatMap((c) => c.points.map((point) => point.words));
    expect(points.filter((words) => words.id === 'sheets.check.gas')).toEqual([{ id: 'sheets.check.gas', params: { kg: wanted?.value } }]);
  });
  it('has no line where only town gas or current is used', () => {
    const made = plan(withBurners(['gas', 'induction'], []));
    expect([made.day.gasNeed, gasLine(made)]).toEqual([null, undefined]);
  });
  it('one figure for any kitchen, what is in the cylinders taken off, the trip to the shop knows of it', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 6 }), fc.array(fc.integer({ min: 1, max: 11 }), { maxLength: 2 }), (of, cylinders) => {
      const made = plan(withBurners(of, cylinders));
      const wanted = made.day.gasNeed?.wantedKg.value ?? 0;
      const line = gasLine(made);
      expect(line?.need.amount.toNumber() ?? 0).toBe(wanted);
      expect(wanted > cylinders.reduce((a, b) => a + b, 0)).toBe(line !== undefined && line.buy.amount.gt(0));
      expect(brought(made)).toBe(made.buying.lines.filter((l) => l.buy.amount.gt(0)).length);
      // The reserve: a fifth of what is in the cylinders is not counted on.
      expect(wanted * 0.8).toBeGreaterThanOrEqual((made.day.gasNeed?.usedKg.value ?? 0) - 1e-9);
    }), { numRuns: 25 });
  });
});
