import { describe, expect, it } from 'vitest';
import { safetyRuleTable, safetyRule, safetySource } from '../../../shared/reference';
import { rules } from '../../../shared/safety/rules';
import { dish, judge, recipe } from './subject';

const sorted = (list: readonly string[]) => list.toSorted();

describe('the whole of safety', () => {
  it('answers all 143 rules of the table, each once', () => {
    expect(safetyRuleTable).toHaveLength(143);
    expect(sorted(rules.map((r) => r.id))).toEqual(sorted(safetyRuleTable.map((r) => r.id)));
  });

  it('accounts for every rule of the table exactly once when nothing is found', () => {
    const plan = judge({});
    expect(plan.findings).toEqual([]);
    expect(sorted([...plan.inOrder, ...plan.notChecked.map((n) => n.rule)])).toEqual(sorted(safetyRuleTable.map((r) => r.id)));
    expect(plan.notChecked.filter((n) => n.notYet).length).toBe(0);
  });

  it('accounts for every rule when something is found or missing', () => {
    const plan = judge({ dishes: [dish(recipe('a', ['kidney-beans-dry'])), dish(recipe('b', ['basmati-rice']))], holding: { a: { place: 'hot' } } });
    const seen = new Set([...plan.findings.map((f) => f.rule), ...plan.inOrder, ...plan.notChecked.map((n) => n.rule)]);
    expect(sorted([...seen])).toEqual(sorted(safetyRuleTable.map((r) => r.id)));
  });

  it('puts stops first', () => {
    const hot = dish(recipe('a', ['potato']));
    const beans = dish(recipe('b', ['sesame-seed']), { allergens: ['sesame'] });
    const plan = judge({ dishes: [hot, beans], holding: { a: { place: 'hot', temperatureC: 40 }, b: { place: 'cold', temperatureC: 4 } }, allergies: [{ allergen: 'sesame', people: 1, containing: ['b'], open: ['a'] }] });
    expect(plan.findings.map((f) => f.level)).toEqual(['stop', 'warn']);
  });

  it('has a source for every rule, each id once', () => {
    expect(new Set(safetyRuleTable.map((r) => r.id)).size).toBe(safetyRuleTable.length);
    for (const r of safetyRuleTable) expect(safetySource(r).length).toBeGreaterThan(5);
    expect(() => safetyRule('XX-99')).toThrow(RangeError);
  });

  it('holds the limits of the sources', () => {
    expect(safetyRule('HH-01').limit).toBe(57); // FDA Food Code 2022, 3-501.16(A)(1)
    expect(safetyRule('CH-01').limit).toBe(5); // FDA Food Code 2022, 3-501.16(A)(2)
    expect(safetyRule('TC-01').limit).toBe(2); // USDA
    expect(safetyRule('DF-03a').limit).toBeCloseTo(1 / 3, 12); // UK fire services, chip pan advice
    expect(safetyRule('SC-03').limit).toBe(71); // Abraham & Diller 2019
    expect(safetyRule('EL-01').limit).toBe(0.8); // NEC 210.20(A)
  });
});
