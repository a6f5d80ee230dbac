import { describe, expect, it } from 'vitest';
import { plan } from '../../../shared/plan';
import { demo, demoNames } from './demo';

describe.each(demoNames)('the plan of %s', (name) => {
  const p = plan(demo(name));

  it('serves everybody', () => {
    expect(p.frying.problems).toEqual([]);
    expect(p.frying.shortages).toEqual([]);
    for (const s of p.frying.served) expect(s.unmet.reduce((a, b) => a + b, 0)).toBe(0);
    expect(p.drinks.problems).toEqual([]);
    for (const t of p.drinks.totals) expect(t.unmetLitres).toBe(0);
  });

  it('buys everything from the table', () => {
    expect(p.buying.unknown).toEqual([]);
    expect(p.buying.lines.length).toBeGreaterThan(10);
  });

  it('finds somebody and something for every job', () => expect(p.day.overloads).toEqual([]));

  // "Few": the menus have two allergies, hot cups, a full pan and no hot drink without caffeine on purpose.
  it('has no finding that stops it, few of any kind, and every input the rules need', () => {
    expect(p.safety.findings.filter((f) => f.level === 'stop')).toEqual([]);
    expect(p.safety.findings.length).toBeLessThanOrEqual(8);
    expect(p.safety.notChecked.filter((n) => !n.notYet)).toEqual([]);
  });
});

describe('the Lantern Evening', () => {
  const p = plan(demo('lantern-evening'));
  const of = (id: string) => p.menu.dishes.find((d) => d.id === id);

  it('tells the guest with a sesame allergy what else there is', () => {
    const sesame = p.safety.findings.find((f) => f.rule === 'AL-01a' && f.about.includes('beans-sesame'));
    expect(sesame?.level).toBe('warn');
  });

  it('gives milk for the tea its own 30 ml, and the chutney its whole portion', () => {
    expect(of('chutney')?.perAdult.value).toBe(1);
    expect(of('milk-jug')?.total.amount.toNumber()).toBeCloseTo((of('milk-jug')?.portions.value ?? 0) * 0.03, 12);
  });

  it('feeds every diet', () => {
    expect(p.menu.diets.length).toBeGreaterThan(3);
    for (const d of p.menu.diets) expect(d.open.length).toBeGreaterThan(3);
  });

  it('uses the deep pan as it is: a caution for its rim, a warning for its fill', () => {
    expect(p.safety.findings.filter((f) => f.about.includes('deep-pan')).map((f) => f.rule)).toEqual(['DF-03a', 'DF-04a']);
  });
});
